package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointKind;
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

  /** Stretcher and rail at one height: their mortises meet in the leg. */
  private static BenchSketch meeting(double stretcherTop) {
    return Benches.ordinary()
        .everyEndFrame(f -> f.topRail(r -> r.joint(j -> j.tenonLength(mm(58)))))
        .stretcher(
            s ->
                s.name("front beam")
                    .thickness(mm(40))
                    .depth(mm(96))
                    .topEdgeAt(mm(stretcherTop))
                    .joint(j -> j.kind(JointKind.MORTISE_AND_TENON).tenonLength(mm(70))));
  }

  private static List<Cut> legCuts(double stretcherTop) {
    Inquiry inquiry = new Inquiry(Benches.complete(meeting(stretcherTop)), Benches.TABLES);
    return Cuts.of(inquiry.at(JointLevel.MEAN).model()).stream()
        .filter(cut -> cut.part().name().equals("left front leg"))
        .toList();
  }

  @Test
  void a_leg_is_checked_net_of_all_the_mortises_that_meet_in_it() {
    Cut meeting = legCuts(775).stream().filter(c -> c.mortises() == 2).findFirst().orElseThrow();
    // Leg 92 × 76; rail tenon 15 × 58 from the inner face, stretcher tenon 13 × 70 from the right:
    // they share 15 mm of the first and 13 mm of the second.
    assertEquals(92 * 76 - 15 * 58 - 13 * 70 + 15 * 13, meeting.area(), 1e-9);
    assertTrue(legCuts(600).stream().noneMatch(c -> c.mortises() > 1));
    double alone =
        legCuts(600).stream().filter(Cut::mortised).mapToDouble(Cut::area).min().orElseThrow();
    assertTrue(meeting.area() < alone);
  }

  /** Rail 96 deep from 679 to 775, one bolt of 11 mm bore at mid-depth, tenon 22 × 64, 15 long. */
  private static List<Cut> boltedCuts(String part) {
    BenchSketch sketch =
        Benches.ordinary()
            .stretcher(
                s ->
                    s.name("front beam")
                        .thickness(mm(40))
                        .depth(mm(96))
                        .topEdgeAt(mm(775))
                        .joint(
                            j ->
                                j.kind(JointKind.BED_BOLT)
                                    .tenonThickness(mm(22))
                                    .tenonHeight(mm(64))
                                    .tenonLength(mm(15))
                                    .boltDiameter(mm(10))
                                    .nutFromEnd(mm(58))));
    Inquiry inquiry = new Inquiry(Benches.complete(sketch), Benches.TABLES);
    return Cuts.of(inquiry.at(JointLevel.MEAN).model()).stream()
        .filter(cut -> cut.part().name().equals(part))
        .toList();
  }

  @Test
  void the_bore_of_a_bed_bolt_is_taken_out_of_the_leg_beside_mortise_and_tenon_of_others() {
    // The leg is 92 along the bench: stub mortise 22 × 15, then the bore of 11 through what is
    // left.
    double stub = 22 * 15 + 11 * (92 - 15);
    double most =
        boltedCuts("left front leg").stream()
            .filter(c -> c.mortises() >= 2)
            .mapToDouble(Cut::area)
            .max()
            .orElseThrow();
    assertTrue(most <= 92 * 76 - stub + 1e-9, "left " + most);
  }

  @Test
  void a_bolted_piece_is_looked_at_net_of_its_bore_and_of_the_hole_for_its_nut() {
    List<Double> areas =
        boltedCuts("front beam").stream().filter(c -> c.at() == 0).map(Cut::area).sorted().toList();
    // 40 × 96 less a nut of 16 mm across a thousandth less than the thickness, or a bore of 11 ×
    // 11.
    assertEquals(2, areas.size());
    assertEquals(40 * 96 - 16 * 39.96, areas.get(0), 1e-9);
    assertEquals(40 * 96 - 121, areas.get(1), 1e-9);
  }

  @Test
  void a_leg_is_looked_at_where_the_groove_of_a_haunch_is_cut_too() {
    BenchSketch sketch =
        Benches.ordinary()
            .everyEndFrame(
                f ->
                    f.topRail(
                        r ->
                            r.joint(
                                j ->
                                    j.kind(JointKind.HAUNCHED_TENON)
                                        .tenonThickness(mm(14))
                                        .haunchHeight(mm(27))
                                        .haunchLength(mm(13)))));
    Inquiry inquiry = new Inquiry(Benches.complete(sketch), Benches.TABLES);
    // Leg 92 × 76 less a groove 14 wide and 13 deep.
    assertTrue(
        Cuts.of(inquiry.at(JointLevel.MEAN).model()).stream()
            .filter(cut -> cut.part().name().equals("right back leg"))
            .anyMatch(cut -> Math.abs(cut.area() - (92 * 76 - 14 * 13)) < 1e-6));
  }
}
