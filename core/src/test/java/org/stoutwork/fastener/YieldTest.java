package org.stoutwork.fastener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.NdsYield;
import org.stoutwork.fastener.lateral.WoodPegYield;
import org.stoutwork.fastener.lateral.YieldModes;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.fastener.withdrawal.ScrewWithdrawal;
import org.stoutwork.joint.regression.DowelWithdrawal;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

class YieldTest {

  private static final Pad PAD = Pad.blank();

  @Property
  void exchanging_the_pieces_exchanges_the_modes_and_nothing_else(
      @ForAll @DoubleRange(min = 10, max = 60) double t1,
      @ForAll @DoubleRange(min = 10, max = 60) double t2,
      @ForAll @DoubleRange(min = 10, max = 50) double fh1,
      @ForAll @DoubleRange(min = 10, max = 50) double fh2,
      @ForAll @DoubleRange(min = 1e3, max = 1e5) double my) {
    YieldModes one = Johansen.single(PAD, t1, t2, 8, fh1, fh2, my, 0, 0);
    YieldModes other = Johansen.single(PAD, t2, t1, 8, fh2, fh1, my, 0, 0);
    same(one.of("a"), other.of("b"));
    same(one.of("c"), other.of("c"));
    same(one.of("d"), other.of("e"));
    same(one.of("f"), other.of("f"));
  }

  @Property
  void both_standards_describe_one_mechanism(
      @ForAll @DoubleRange(min = 10, max = 60) double ls,
      @ForAll @DoubleRange(min = 10, max = 60) double lm,
      @ForAll @DoubleRange(min = 10, max = 50) double fes,
      @ForAll @DoubleRange(min = 10, max = 50) double fem,
      @ForAll @DoubleRange(min = 200, max = 700) double fyb) {
    double d = 9;
    YieldModes nds = NdsYield.single(PAD, d, lm, ls, fem, fes, fyb, 0);
    double plastic = fyb * d * d * d / 6;
    YieldModes ec5 = Johansen.single(PAD, ls, lm, d, fes, fem, plastic, 0, 0);
    same(ec5.of("a"), 4 * nds.of("Is"));
    same(ec5.of("b"), 4 * nds.of("Im"));
    same(ec5.of("c"), 3.6 * nds.of("II"));
    same(ec5.of("d"), 1.05 * 3.2 * nds.of("IIIs"));
    same(ec5.of("e"), 1.05 * 3.2 * nds.of("IIIm"));
    same(ec5.of("f"), 1.15 * 3.2 * nds.of("IV"));
    YieldModes twice = NdsYield.doubled(PAD, d, lm, ls, fem, fes, fyb, 0);
    same(2 * nds.of("IV"), twice.of("IV"));
    same(2 * nds.of("IIIs"), twice.of("IIIs"));
  }

  private static void same(double a, double b) {
    assertEquals(a, b, 1e-9 * Math.abs(a));
  }

  @Property
  void a_rigid_fastener_crushes_wood_and_an_endless_one_bends_twice(
      @ForAll @DoubleRange(min = 10, max = 60) double t1,
      @ForAll @DoubleRange(min = 10, max = 60) double t2) {
    String rigid = Johansen.single(PAD, t1, t2, 8, 25, 31, 1e12, 0, 0).least().name();
    assertTrue("abc".contains(rigid), rigid);
    assertEquals(
        "f", Johansen.single(PAD, t1 * 100, t2 * 100, 8, 25, 31, 2e4, 0, 0).least().name());
  }

  @Test
  void the_rope_effect_is_capped_at_its_share() {
    double bare = Johansen.single(PAD, 35, 65, 8, 25, 26.4, 20000, 0, 0).of("d");
    double capped = Johansen.single(PAD, 35, 65, 8, 25, 26.4, 20000, 1e6, 0.25).of("d");
    assertEquals(1.25 * bare, capped, 1e-9 * bare);
  }

  @Test
  void a_bench_peg_is_called_extrapolated() {
    RecordingPad pad = Pad.recording();
    WoodPegYield.allowable(pad, 9.5, 16, 20, 0.68, 0.64);
    assertTrue(pad.working().lines().get(0).text().startsWith("Extrapolated"));
    RecordingPad tested = Pad.recording();
    WoodPegYield.allowable(tested, 25.4, 50, 50, 0.68, 0.5);
    assertTrue(
        tested.working().lines().stream().noneMatch(l -> l.text().startsWith("Extrapolated")));
  }

  @Test
  void screws_outside_the_rule_are_refused_with_the_limit() {
    assertTrue(
        assertThrows(
                IllegalArgumentException.class, () -> ScrewWithdrawal.ec5(PAD, 8, 40, 350, 90, 1))
            .getMessage()
            .contains("48.0 mm"));
    assertThrows(IllegalArgumentException.class, () -> ScrewWithdrawal.ec5(PAD, 8, 60, 350, 20, 1));
  }

  @Property
  void a_larger_hole_never_strengthens_a_washer(
      @ForAll @DoubleRange(min = 5, max = 20) double hole,
      @ForAll @DoubleRange(min = 0.1, max = 8) double more) {
    double small = Heads.washer(PAD, new Washer(34, hole, 3), 2.5);
    double large = Heads.washer(PAD, new Washer(34, hole + more, 3), 2.5);
    assertTrue(large < small);
    assertTrue(
        Heads.washerAllowable(PAD, new Washer(34, hole + more, 3), 4)
            < Heads.washerAllowable(PAD, new Washer(34, hole, 3), 4));
  }

  @Test
  void a_thin_piece_is_pulled_through_sooner_than_a_thick_one() {
    double thin = Heads.pullThroughAllowable(PAD, 0.5, 9, 12);
    double thick = Heads.pullThroughAllowable(PAD, 0.5, 9, 40);
    assertEquals(12 / 22.5, thin / thick, 1e-9);
    assertTrue(Heads.pullThrough(PAD, 10, 9, 420) > Heads.pullThrough(PAD, 10, 9, 350));
  }

  @Test
  void a_regression_answers_inside_its_tests_only() {
    assertTrue(DowelWithdrawal.mean(PAD, 9.5, 25.4, 12, 13, 1).isPresent());
    RecordingPad pad = Pad.recording();
    assertTrue(DowelWithdrawal.mean(pad, 16, 25.4, 12, 13, 1).isEmpty());
    assertTrue(pad.working().lines().get(0).text().startsWith("Outside the range"));
  }

  @Test
  void distances_follow_their_tables() {
    Distances dowel = Distances.dowel(12, 90);
    assertEquals(84, dowel.end());
    assertEquals(48, dowel.edge());
    assertEquals(36, dowel.alongGrain(), 1e-9);
    Distances bolt = Distances.bolt(10, 0);
    assertEquals(80, bolt.end());
    assertEquals(30, bolt.edge());
    assertEquals(50, bolt.alongGrain());
    assertEquals(24, Distances.peg(8, 0.66, true).end());
    assertEquals(32, Distances.peg(8, 0.38, false).end());
    assertEquals(56, Distances.pulledScrew(8).alongGrain());
  }

  @Property
  void together_is_the_circle_of_both_uses(@ForAll @DoubleRange(min = 0, max = 1) double part) {
    double u = Heads.together(PAD, 100 * part, 100, 50 * Math.sqrt(1 - part * part), 50);
    assertEquals(1, u, 1e-9);
  }

  @Test
  void impossible_fasteners_are_refused() {
    assertThrows(IllegalArgumentException.class, () -> new Washer(10, 12, 2));
    assertThrows(
        IllegalArgumentException.class, () -> new Peg(0, new PegWood("oak", 12000, 100, 0.6, 650)));
    assertThrows(IllegalArgumentException.class, () -> new WoodScrew(5, 3.5, 40, 50, 10, 600, 800));
    assertThrows(IllegalArgumentException.class, () -> new Nail(3, 2, 5, 600));
    assertEquals("8 × 60\u00a0mm coach screw", coachScrew().title());
  }

  private static CoachScrew coachScrew() {
    return new CoachScrew(8, 6, 60, 36, 6, 310, 400, 24);
  }
}
