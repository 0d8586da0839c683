package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.advice.Advice;
import org.stoutwork.joint.advice.Effect;
import org.stoutwork.joint.advice.Note;
import org.stoutwork.joint.advice.Review;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.source.Mark;
import org.stoutwork.working.Pad;

class ProportionsTest {

  @Property
  void usual_joints_fit_any_bench_pieces(
      @ForAll @DoubleRange(min = 60, max = 220) double d,
      @ForAll @DoubleRange(min = 28, max = 70) double b,
      @ForAll @DoubleRange(min = 50, max = 140) double p,
      @ForAll @DoubleRange(min = 50, max = 140) double bp) {
    Joint.Members m = new Joint.Members(d, b, p, bp);
    TenonProportions usual = TenonProportions.forRail(m);
    List<Joint> joints =
        List.of(
            usual.blind(new Fit.Glued()),
            usual.blind(new Fit.Dry(0)),
            usual.through(new Fit.Glued(), m),
            usual.haunched(new Fit.Glued(), m),
            usual.twin(new Fit.Glued(), m),
            usual.drawbored(),
            usual.wedged(true, m),
            usual.bolted(m, 3000),
            usual.looseWedge(),
            TenonProportions.bridle(m, true),
            Samples.dowels(m));
    joints.forEach(joint -> joint.requireFits(m));
    assertEquals(11, joints.size());
    assertEquals(3, usual.reasons().size());
    assertEquals(1.0 / 3, usual.thickness() / Math.min(b, bp), 0.02);
  }

  @Test
  void the_usual_drawbored_tenon_follows_the_trade() {
    MortiseAndTenon joint = TenonProportions.forRail(Samples.MEMBERS).drawbored();
    for (Note note : Review.of(joint, Samples.setting(Samples.MEMBERS, Glue.PVA))) {
      assertTrue(note.followed(), note.text());
      assertTrue(note.text().contains("common practice, no source"), note.text());
    }
  }

  @Test
  void a_thin_cheek_is_noted_with_its_value() {
    MortiseAndTenon joint = TenonProportions.forRail(Samples.MEMBERS).blind(new Fit.Glued());
    Joint.Members slim = new Joint.Members(120, 45, 70, 30);
    Note cheek =
        Review.of(joint, Samples.setting(slim, Glue.PVA)).stream()
            .filter(note -> note.advice().equals(Advice.CHEEK))
            .findFirst()
            .orElseThrow();
    assertFalse(cheek.followed());
    assertEquals(7.5, cheek.value());
    assertEquals(
        "mortise cheek: no thinner than the tenon, and not below 12 mm"
            + " (common practice, no source); this joint has 7.5\u00a0mm",
        cheek.text());
  }

  @Test
  void following_the_advice_on_length_is_shown_by_what_it_gains() {
    MortiseAndTenon shortOne =
        new MortiseAndTenon(80, 15, 30, 20, 0, 1, false, Optional.empty(), new Fit.Glued());
    List<Note> notes = Review.of(shortOne, Samples.setting());
    Note length =
        notes.stream()
            .filter(note -> note.advice().equals(Advice.TENON_LENGTH))
            .findFirst()
            .orElseThrow();
    Effect effect = Effect.of(length, shortOne, Samples.setting()).orElseThrow();
    assertEquals("mean stiffness of the joint", effect.what());
    double gain = effect.ratio();
    assertTrue(gain > 1.02 && gain < 1.5, "gain " + gain);
    notes.stream()
        .filter(Note::followed)
        .forEach(note -> assertTrue(Effect.of(note, shortOne, Samples.setting()).isEmpty()));
  }

  @Test
  void all_advice_is_marked_as_the_practice_it_is() {
    List<Advice> all = everyRow();
    all.forEach(
        row -> {
          assertEquals(Mark.COMMON_PRACTICE, row.source().mark());
          assertTrue(row.follows(row.least()) && row.follows(row.most()));
          assertFalse(row.follows(row.least() - 0.01));
        });
    assertEquals(23, all.size());
  }

  private static List<Advice> everyRow() {
    return Arrays.stream(Advice.class.getFields())
        .filter(field -> field.getType() == Advice.class)
        .map(
            field -> {
              try {
                return (Advice) field.get(null);
              } catch (IllegalAccessException hidden) {
                throw new AssertionError(hidden);
              }
            })
        .toList();
  }

  @Test
  void usual_bridles_dowels_and_loose_wedges_follow_the_trade() {
    Joint.Members members = new Joint.Members(118, 41, 74, 66);
    for (Joint joint :
        List.of(
            TenonProportions.bridle(members, false),
            Samples.dowels(members),
            TenonProportions.forRail(members).looseWedge())) {
      List<Note> notes = Review.of(joint, Samples.setting(members, Glue.PVA));
      assertTrue(notes.size() >= 2, joint.title());
      notes.forEach(note -> assertTrue(note.followed(), note.text()));
    }
  }

  @Test
  void a_short_end_beyond_a_loose_wedge_and_crowded_dowels_are_noted() {
    LooseWedgeTenon shortEnd = new LooseWedgeTenon(70, 18, 20, 27, 18, 4, 6);
    List<Note> notes = Review.of(shortEnd, Samples.setting());
    Note relish = noted(notes, Advice.LOOSE_RELISH);
    assertEquals(1.5, relish.value());
    assertEquals(
        2 / 1.5, Effect.of(relish, shortEnd, Samples.setting()).orElseThrow().ratio(), 1e-12);
    assertFalse(noted(notes, Advice.LOOSE_WIDTH).followed());
    DowelledButt crowded =
        new DowelledButt(new Peg(12, TenonProportions.BEECH), 4, 40, 40, 29, 16.5);
    List<Note> dowels = Review.of(crowded, Samples.setting());
    assertEquals(16.5 / 12, noted(dowels, Advice.DOWEL_EDGE).value());
    assertFalse(noted(dowels, Advice.DOWEL_EDGE).followed());
    assertFalse(noted(dowels, Advice.DOWEL_SPACING).followed());
  }

  private static Note noted(List<Note> notes, Advice advice) {
    return notes.stream().filter(n -> n.advice().equals(advice)).findFirst().orElseThrow();
  }

  private static double effect(Advice advice, Joint joint) {
    Note note =
        Review.of(joint, Samples.setting()).stream()
            .filter(n -> n.advice().equals(advice))
            .findFirst()
            .orElseThrow();
    assertFalse(note.followed(), advice.part());
    return Effect.of(note, joint, Samples.setting()).orElseThrow().ratio();
  }

  private static double mean(Joint joint) {
    return JointStiffness.of(joint, Samples.setting(), Pad.blank()).mean().rotInPlane();
  }

  @Test
  void the_effect_of_a_shoulder_and_of_a_high_tenon_is_that_of_the_joint_made_so() {
    MortiseAndTenon low = tenon(96, 16, 2);
    assertEquals(mean(tenon(92, 16, 6)) / mean(low), effect(Advice.SHOULDER, low), 1e-12);
    MortiseAndTenon high = tenon(108, 16, 8);
    assertEquals(mean(tenon(100, 16, 12)) / mean(high), effect(Advice.CROSSED_GLUE, high), 1e-12);
    // Post 56 with a tenon of 24 in its middle: cheeks of 16; all three alike at 56/3.
    MortiseAndTenon thick = tenon(80, 24, 18);
    assertEquals(
        mean(tenon(80, 56 / 3.0, 18)) / mean(thick), effect(Advice.CHEEK_RATIO, thick), 1e-12);
  }

  private static MortiseAndTenon tenon(double height, double thickness, double below) {
    return new MortiseAndTenon(
        height, thickness, 50, below, 0, 1, false, Optional.empty(), new Fit.Glued());
  }

  @Test
  void a_peg_further_out_leaves_more_relish_and_a_short_haunch_more_horn() {
    MortiseAndTenon far =
        new MortiseAndTenon(
            80,
            16,
            52,
            18,
            0,
            1,
            false,
            Optional.of(new MortiseAndTenon.Haunch(20, 22)),
            new Fit.Pegged(false, new Peg(8, TenonProportions.OAK), 1, 0, 31, 0));
    assertEquals((52 - 25.0) / (52 - 31), effect(Advice.PEG_PLACE, far), 1e-12);
    // Mortise 16 × 52, 40 mm of post above it, groove 20 high: 22 deep now, 18 deep if followed.
    assertEquals(
        (120 * 40 - 2 * 18 * 20.0) / (120 * 40 - 2 * 22 * 20),
        effect(Advice.HAUNCH_LENGTH, far),
        1e-12);
  }

  @Test
  void a_bolted_tenon_twice_its_bore_carries_more_beside_it() {
    BoltedTenon thin =
        new BoltedTenon(
            80,
            17,
            20,
            20,
            new Bolt(BoltSize.M10, 400, new Washer(40, 11, 3)),
            1,
            0,
            new BoltedTenon.Nut(16, 30, 60, true),
            0);
    double now = new BoredTenon(17, 80, 11, List.of(0.0)).shearThickness(Pad.blank());
    double then = new BoredTenon(22, 80, 11, List.of(0.0)).shearThickness(Pad.blank());
    assertTrue(then > 1.5 * now);
    assertEquals(then / now, effect(Advice.BORED_TENON, thin), 1e-12);
  }
}
