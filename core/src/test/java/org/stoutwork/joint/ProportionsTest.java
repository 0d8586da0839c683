package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.advice.Advice;
import org.stoutwork.joint.advice.Effect;
import org.stoutwork.joint.advice.Note;
import org.stoutwork.joint.advice.Review;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.source.Mark;

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
            TenonProportions.dowelled(m));
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
    double gain = Effect.onStiffness(length, shortOne, Samples.setting()).orElseThrow();
    assertTrue(gain > 1.02 && gain < 1.5, "gain " + gain);
    notes.stream()
        .filter(Note::followed)
        .forEach(
            note -> assertTrue(Effect.onStiffness(note, shortOne, Samples.setting()).isEmpty()));
  }

  @Test
  void all_advice_is_marked_as_the_practice_it_is() {
    Advice.all()
        .forEach(
            row -> {
              assertEquals(Mark.COMMON_PRACTICE, row.source().mark());
              assertTrue(row.follows(row.least()) && row.follows(row.most()));
              assertFalse(row.follows(row.least() - 0.01));
            });
    assertEquals(19, Advice.all().size());
  }
}
