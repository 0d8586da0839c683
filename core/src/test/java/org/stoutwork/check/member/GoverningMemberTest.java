package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.service.Sway;
import org.stoutwork.working.Pad;

class GoverningMemberTest {

  static Stream<BenchSketch> benches() {
    return Stream.of(
        Benches.ordinary(),
        Benches.ordinary().wood("D40").basis(BasisChoice.PARTIAL_FACTORS),
        Benches.ordinary()
            .everyEndFrame(f -> f.legs(l -> l.along(mm(37)).across(mm(33))))
            .height(mm(1010)));
  }

  /** The quick search passes over most combinations; the slow one looks at all of them. */
  @ParameterizedTest
  @MethodSource("benches")
  void the_quick_search_finds_what_looking_at_everything_finds(BenchSketch sketch) {
    Inquiry inquiry = new Inquiry(Benches.complete(sketch), Benches.TABLES);
    MemberStrength strength =
        new MemberStrength(inquiry, Sway.all(inquiry).stream().map(Sway.Found::racking).toList());
    assertTrue(strength.groups().size() >= 10);
    strength
        .groups()
        .forEach(
            (name, members) -> {
              for (boolean bending : new boolean[] {true, false}) {
                double slow = everything(strength, members, bending);
                assertTrue(slow > 0, name);
                assertEquals(slow, strength.worst(members, bending).use(), 0, name);
              }
            });
  }

  private static double everything(
      MemberStrength strength, List<Integer> members, boolean bending) {
    MemberStrength.Wood wood = strength.wood(strength.cuts().get(members.get(0)).part());
    double most = 0;
    for (int cut : members) {
      for (int mix = 0; mix < strength.envelope().size(); mix++) {
        Stresses s =
            strength.stresses(
                strength.cuts().get(cut).part(),
                wood.name(),
                strength.envelope().mix(mix).duration(),
                Pad.blank());
        most = Math.max(most, strength.use(cut, mix, bending, s, wood));
      }
    }
    return most;
  }
}
