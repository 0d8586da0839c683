package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.WeightKind;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.Stand;
import org.stoutwork.check.TopModels;
import org.stoutwork.quantity.Mass;
import org.stoutwork.wood.time.DurationClass;

/** What adds up to the forces in a member, and to the stress in a layer. */
class EnvelopeTest {

  private static Inquiry inquiry(BenchSketch sketch) {
    return new Inquiry(Benches.complete(sketch), Benches.TABLES, TopModels.GRILLAGE);
  }

  private static BenchSketch loaded() {
    return Benches.ordinary()
        .wood("D40")
        .basis(BasisChoice.PARTIAL_FACTORS)
        .weight(w -> w.kind(WeightKind.ON_TOP).mass(Mass.ofKg(47)));
  }

  private static void assertForces(double[] expected, double[] forces) {
    for (int k = 0; k < 6; k++) {
      assertEquals(expected[k], forces[k], 1e-9 * Math.max(1, Math.abs(expected[k])));
    }
  }

  private static double[] sum(Cut cut, FrameResult g, double gg, FrameResult s, double ss) {
    double[] a = cut.forces(g);
    double[] b = cut.forces(s);
    return IntStream.range(0, 6).mapToDouble(k -> gg * a[k] + ss * b[k]).toArray();
  }

  /** EN 1990 eq. 6.10: 1.35 G; 1.35 G + 1.5 S; 1.35 G + 1.5 Q + 1.5·0.9 S. */
  @Test
  void every_mix_is_its_parts_times_their_factors() {
    Inquiry inquiry = inquiry(loaded());
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    List<Cut> cuts = Cuts.of(mean.model());
    Envelope envelope = new Envelope(inquiry, cuts);
    FrameResult g = mean.alone(mean.permanent());
    FrameResult s = mean.alone(mean.stored());
    assertEquals(2 + inquiry.stands().size(), envelope.size());
    assertEquals(DurationClass.PERMANENT, envelope.mix(0).duration());
    assertEquals(DurationClass.LONG, envelope.mix(1).duration());
    int last = envelope.size() - 1;
    Stand stand = inquiry.stands().get(last - 2);
    FrameResult q = mean.alone(stand.unit());
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      assertForces(sum(cut, g, 1.35, s, 0), envelope.forces(0, i));
      assertForces(sum(cut, g, 1.35, s, 1.5), envelope.forces(1, i));
      double[] all = sum(cut, g, 1.35, s, 1.35);
      double[] leading = cut.forces(q);
      for (int k = 0; k < 6; k++) {
        all[k] += 1.5 * stand.force() * leading[k];
      }
      assertForces(all, envelope.forces(last, i));
    }
  }

  @Test
  void without_stock_nothing_stored_is_counted() {
    Inquiry inquiry = inquiry(Benches.ordinary());
    Envelope envelope = new Envelope(inquiry, Cuts.of(inquiry.at(JointLevel.MEAN).model()));
    assertEquals(1 + inquiry.stands().size(), envelope.size());
  }

  /** At rest every leg is pressed, and a piece without load of its own the same at both ends. */
  @Test
  void a_leg_is_pressed_at_both_ends_of_every_piece() {
    Inquiry inquiry = inquiry(loaded());
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    FrameResult stored = mean.alone(mean.stored());
    int legs = 0;
    for (Cut cut : Cuts.of(mean.model())) {
      if (cut.part().kind() == PartKind.LEG) {
        double[] start = new Cut(cut.part(), cut.member(), 0, 0, null, null, 0).forces(stored);
        double[] end = new Cut(cut.part(), cut.member(), 1, 0, null, null, 0).forces(stored);
        assertTrue(end[0] < 0, cut.member());
        assertEquals(end[0], start[0], 1e-6 * Math.abs(end[0]), cut.member());
        legs++;
      }
    }
    assertTrue(legs >= 8);
  }

  /**
   * A shelf bends the stretchers most between their ends: there the moment is that of the ends, in
   * the mean, and wL²/8 (statics), wL being the fall of the shear force.
   */
  @Test
  void a_stretcher_with_a_shelf_on_it_is_looked_at_in_its_middle() {
    BenchSketch sketch = loaded().weight(w -> w.kind(WeightKind.ON_SHELF).mass(Mass.ofKg(130)));
    LevelAnalysis mean = inquiry(sketch).at(JointLevel.MEAN);
    FrameResult stored = mean.alone(mean.stored());
    int looked = 0;
    for (Cut middle : Cuts.of(mean.model())) {
      if (middle.part().kind() == PartKind.STRETCHER && middle.along() == 0.5) {
        double[] start = new Cut(null, middle.member(), 0, 0, null, null, 0).forces(stored);
        double[] end = new Cut(null, middle.member(), 1, 0, null, null, 0).forces(stored);
        double length = stored.member(middle.member()).length();
        double span = Math.abs(start[2] - end[2]) * length / 8;
        assertTrue(span > 5e4, "carries next to nothing: " + span);
        double over = Math.abs(middle.forces(stored)[4] - (start[4] + end[4]) / 2);
        assertEquals(span, over, 1e-6 * span);
        looked++;
      }
    }
    assertTrue(looked >= 2, "looked at " + looked);
  }

  /** The greatest push on all legs together over the greatest on one, over all mixes. */
  @Test
  void the_share_of_the_legs_is_that_of_the_greatest_pushes() {
    Inquiry inquiry = inquiry(loaded());
    List<Cut> cuts = Cuts.of(inquiry.at(JointLevel.MEAN).model());
    Envelope envelope = new Envelope(inquiry, cuts);
    double one = 0;
    double all = 0;
    List<String> legs =
        cuts.stream()
            .filter(c -> c.part().kind() == PartKind.LEG)
            .map(c -> c.part().name())
            .distinct()
            .toList();
    for (int mix = 0; mix < envelope.size(); mix++) {
      double together = 0;
      for (String leg : legs) {
        double push = 0;
        for (int i = 0; i < cuts.size(); i++) {
          if (cuts.get(i).part().name().equals(leg)) {
            push = Math.max(push, -envelope.forces(mix, i)[0]);
          }
        }
        one = Math.max(one, push);
        together += push;
      }
      all = Math.max(all, together);
    }
    assertEquals(4, legs.size());
    assertTrue(all / one > 1.05, () -> "the case must tell the shares apart");
    assertEquals(all / one, envelope.sharesOfLegs(), 1e-9);
  }

  private static List<LayerStress> layers(LayerHold hold, Inquiry[] kept) {
    Inquiry inquiry =
        inquiry(
            BenchSketch.named("bench with a top of two layers")
                .height(mm(845))
                .wood("beech-european")
                .top(
                    t ->
                        t.length(mm(1730))
                            .width(mm(640))
                            .hold(hold)
                            .layer(l -> l.wood("spruce-norway").thickness(mm(23)))
                            .layer(l -> l.thickness(mm(41)).grain(Grain.ALONG))));
    kept[0] = inquiry;
    return LayerStress.of(inquiry, Grain.ALONG);
  }

  /**
   * Two layers 23 and 41 mm thick: axis at Σ E t y/Σ E t, EI = Σ E (t³/12 + t d²); the stress
   * E·arm/EI over 6/(64²) of a solid top.
   */
  @Test
  void glued_layers_bend_about_one_axis() {
    Inquiry[] kept = new Inquiry[1];
    List<LayerStress> found = layers(new LayerHold.Glued(), kept);
    double e1 = kept[0].timbers().get(found.get(0).layer().wood()).e();
    double e2 = kept[0].timbers().get(found.get(1).layer().wood()).e();
    double t1 = found.get(0).layer().thickness().mm();
    double t2 = found.get(1).layer().thickness().mm();
    double axis = (e1 * t1 * t1 / 2 + e2 * t2 * (t1 + t2 / 2)) / (e1 * t1 + e2 * t2);
    double ei =
        e1 * (t1 * t1 * t1 / 12 + t1 * Math.pow(axis - t1 / 2, 2))
            + e2 * (t2 * t2 * t2 / 12 + t2 * Math.pow(t1 + t2 / 2 - axis, 2));
    double solid = Math.pow(t1 + t2, 2) / 6;
    double arm1 = Math.max(axis, Math.abs(t1 - axis));
    double arm2 = Math.max(Math.abs(t1 - axis), t1 + t2 - axis);
    assertEquals(e1 * arm1 * solid / ei, found.get(0).factor(), 1e-9);
    assertEquals(e2 * arm2 * solid / ei, found.get(1).factor(), 1e-9);
    assertTrue(e1 != e2 && t1 != t2);
  }

  @Test
  void forces_that_are_covered_by_others_cannot_govern() {
    Greatest bending = Greatest.ofBending();
    assertTrue(bending.mayGovern(DurationClass.SHORT, new double[] {-5, 1, 1, 1, 7, -3}));
    assertFalse(bending.mayGovern(DurationClass.SHORT, new double[] {-5, 9, 9, 9, -7, 3}));
    assertFalse(bending.mayGovern(DurationClass.SHORT, new double[] {-4, 9, 9, 9, 6, 2}));
    assertTrue(bending.mayGovern(DurationClass.LONG, new double[] {-4, 0, 0, 0, 6, 2}));
    assertTrue(bending.mayGovern(DurationClass.SHORT, new double[] {4, 0, 0, 0, 6, 2}));
    assertTrue(bending.mayGovern(DurationClass.SHORT, new double[] {-1, 0, 0, 0, 1, 4}));
    assertTrue(bending.mayGovern(DurationClass.SHORT, new double[] {0, 0, 0, 0, 8, 0}));
    Greatest shear = Greatest.ofShear();
    assertTrue(shear.mayGovern(DurationClass.SHORT, new double[] {1, 2, 3, 0, 0, 0}));
    assertFalse(shear.mayGovern(DurationClass.SHORT, new double[] {9, -2, 3, 9, 9, 9}));
    assertTrue(shear.mayGovern(DurationClass.SHORT, new double[] {1, 0, -4, 0, 0, 0}));
  }

  @Test
  void only_moments_are_scaled_for_a_layer() {
    double[] forces = {1, 2, 3, 4, 5, 6};
    assertForces(new double[] {1, 2, 3, 4, 7.5, 9}, MemberStrength.scaled(forces, 1.5));
    assertForces(new double[] {1, 2, 3, 4, 5, 6}, forces);
  }
}
