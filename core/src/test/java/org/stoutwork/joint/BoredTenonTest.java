package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.fastener.Bolt;
import org.stoutwork.fastener.BoltSize;
import org.stoutwork.fastener.Washer;
import org.stoutwork.joint.bolted.BoredTenon;
import org.stoutwork.joint.bolted.CrossedTenon;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.CrossBore;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.working.Pad;

/** Bores of bolts along a tenon and across it. */
class BoredTenonTest {

  private static final Pad PAD = Pad.blank();
  private static final JointForces FORCES = new JointForces(400, 800, 120, 9e4, 5e3, 2e3);
  private static final List<StrengthFamily> FAMILIES = List.of(Samples.PARTIAL, Samples.ALLOWABLE);

  private static BoltedTenon bolted(double thickness, double hole, int bolts) {
    return new BoltedTenon(
        83,
        thickness,
        21,
        17,
        new Bolt(BoltSize.M8, 400, new Washer(40, hole, 3)),
        bolts,
        bolts == 2 ? 37 : 0,
        new BoltedTenon.Nut(14, 28, 61, true),
        0);
  }

  private static Map<String, JointLimit> limits(
      Joint joint, JointSetting setting, StrengthFamily family) {
    Map<String, JointLimit> out = new TreeMap<>();
    JointCapacities.utilisations(joint, setting, Samples.strength(family), FORCES, false)
        .forEach(limit -> out.put(limit.failure(), limit));
    return out;
  }

  @Property(tries = 200)
  void a_vanishing_bore_leaves_the_full_tenon(
      @ForAll @DoubleRange(min = 12, max = 60) double t,
      @ForAll @DoubleRange(min = 30, max = 150) double h,
      @ForAll @DoubleRange(min = -0.4, max = 0.4) double where) {
    BoredTenon tenon = new BoredTenon(t, h, 1e-6, List.of(where * h));
    assertEquals(t, tenon.shearThickness(PAD), 1e-6 * t);
    assertEquals(h, tenon.shearHeight(PAD), 1e-6 * h);
    assertEquals(h, tenon.twistHeight(PAD), 1e-6 * h);
    BoredTenon.Root root = tenon.root(PAD);
    assertEquals(t * h, root.area(), 1e-6 * t * h);
    assertEquals(t * h * h / 6, root.upright(), 1e-6 * t * h * h);
    assertEquals(h * t * t / 6, root.sideways(), 1e-6 * h * t * t);
  }

  @Property(tries = 200)
  void no_capacity_of_a_tenon_rises_as_its_bore_grows(
      @ForAll @DoubleRange(min = 8, max = 15) double hole,
      @ForAll @DoubleRange(min = 0.1, max = 4) double more) {
    for (StrengthFamily family : FAMILIES) {
      for (int bolts = 1; bolts <= 2; bolts++) {
        Map<String, JointLimit> small = limits(bolted(27, hole, bolts), Samples.setting(), family);
        Map<String, JointLimit> large =
            limits(bolted(27, hole + more, bolts), Samples.setting(), family);
        for (String failure :
            List.of(
                "tenon shear at the shoulder",
                "tenon shear across the frame",
                "tenon breaking at the root",
                "tenon twisting off")) {
          assertTrue(large.get(failure).utilisation() > small.get(failure).utilisation(), failure);
        }
      }
    }
  }

  @Property(tries = 300)
  void the_shear_that_counts_is_never_more_than_slices_of_the_round_bores_give(
      @ForAll @DoubleRange(min = 14, max = 50) double t,
      @ForAll @DoubleRange(min = 2.2, max = 5) double slender,
      @ForAll @DoubleRange(min = 0.05, max = 0.7) double part,
      @ForAll @DoubleRange(min = 0, max = 1) double up,
      @ForAll @DoubleRange(min = 0, max = 1) double down) {
    double h = slender * t;
    double d = part * t;
    double room = (h - 2 * d) / 2;
    List<Double> levers =
        up * room > d ? List.of(up * room, -down * room) : List.of((up - down) * room);
    BoredTenon tenon = new BoredTenon(t, h, d, levers);
    double exact = sliced(t, h, d, levers);
    double counted = tenon.shearThickness(PAD);
    assertTrue(counted <= exact * (1 + 1e-6), counted + " counted, " + exact + " by slices");
    assertTrue(counted >= 0.7 * exact, counted + " counted, " + exact + " by slices");
  }

  /** 1.5 I/(h · max(Q/b)) from four thousand slices. */
  private static double sliced(double t, double h, double d, List<Double> levers) {
    int n = 4000;
    double dy = h / n;
    double[] y = new double[n];
    double[] b = new double[n];
    double area = 0;
    double first = 0;
    for (int i = 0; i < n; i++) {
      y[i] = -h / 2 + (i + 0.5) * dy;
      b[i] = t;
      for (double lever : levers) {
        double off = Math.abs(y[i] - lever);
        if (off < d / 2) {
          b[i] = Math.min(b[i], t - 2 * Math.sqrt(d * d / 4 - off * off));
        }
      }
      area += b[i] * dy;
      first += b[i] * y[i] * dy;
    }
    double middle = first / area;
    double inertia = 0;
    for (int i = 0; i < n; i++) {
      inertia += b[i] * (y[i] - middle) * (y[i] - middle) * dy;
    }
    double beyond = 0;
    double most = 0;
    for (int i = n - 1; i >= 0; i--) {
      double slice = b[i] * (y[i] - middle) * dy;
      most = Math.max(most, (beyond + slice / 2) / b[i]);
      beyond += slice;
    }
    return 1.5 * inertia / (h * most);
  }

  @Test
  void a_bore_that_cuts_the_tenon_in_two_is_refused_with_the_thickness_it_needs() {
    JointFault fault = assertThrows(JointFault.class, () -> bolted(12, 9, 1));
    assertEquals("tenon thickness", fault.part());
    assertEquals(13, fault.limit());
    assertTrue(fault.getMessage().contains("18\u00a0mm leave a quarter"), fault.getMessage());
  }

  @Test
  void a_thin_web_beside_a_bore_breaks_a_rule_and_two_bores_of_tenon_keep_it() {
    String rule = "wood beside the bore of a bolt";
    JointLimit thin = limits(bolted(14, 9, 1), Samples.setting(), Samples.PARTIAL).get(rule);
    assertEquals(2.5, thin.capacity(), 1e-12);
    assertEquals(2.8, thin.demand(), 1e-12);
    JointLimit usual = limits(bolted(18, 9, 1), Samples.setting(), Samples.PARTIAL).get(rule);
    assertEquals(0.8, usual.utilisation(), 1e-12);
  }

  @Test
  void a_bore_that_runs_out_at_the_edge_of_its_tenon_is_refused() {
    BoltedTenon wide =
        new BoltedTenon(
            60,
            20,
            21,
            30,
            new Bolt(BoltSize.M8, 400, new Washer(40, 9, 3)),
            2,
            56,
            new BoltedTenon.Nut(14, 28, 61, true),
            0);
    JointFault fault = assertThrows(JointFault.class, () -> wide.requireFits(Samples.MEMBERS));
    assertEquals("tenon height", fault.part());
    assertEquals(65, fault.limit(), 1e-9);
  }

  @Test
  void bolts_clear_of_the_tenon_leave_it_whole() {
    BoltedTenon clear =
        new BoltedTenon(
            40,
            14,
            21,
            40,
            new Bolt(BoltSize.M8, 400, new Washer(40, 9, 3)),
            2,
            52,
            new BoltedTenon.Nut(14, 28, 61, true),
            0);
    assertEquals(List.of(), clear.boreLevers(Samples.MEMBERS));
    assertTrue(
        !limits(clear, Samples.setting(), Samples.PARTIAL)
            .containsKey("wood beside the bore of a bolt"));
  }

  @Test
  void a_bolt_across_a_glued_tenon_takes_wood_and_glue() {
    Joint tenon = Samples.tenon(new Fit.Glued());
    JointSetting whole = Samples.setting();
    JointSetting crossed = whole.crossedBy(List.of(new CrossBore(11, 63, 28)));
    Map<String, JointLimit> before = limits(tenon, whole, Samples.PARTIAL);
    Map<String, JointLimit> after = limits(tenon, crossed, Samples.PARTIAL);
    String pull = "withdrawal of the glued cheeks";
    // Tenon 80 × 50: 8000 mm² of cheeks less two round holes of 11 mm.
    double left = 1 - 2 * Math.PI * 11 * 11 / 4 / 8000;
    assertEquals(left, after.get(pull).capacity() / before.get(pull).capacity(), 1e-12);
    String glue = "glue line under moment";
    assertTrue(after.get(glue).capacity() < before.get(glue).capacity());
    String shear = "tenon shear where a bolt crosses it";
    assertTrue(!before.containsKey(shear));
    // Shoulder 18: the tenon's middle is at 58, the bore 5 above it; parts of 39.5 and 29.5 mm.
    double counted = (39.5 * 39.5 * 39.5 + 29.5 * 29.5 * 29.5) / (39.5 * 39.5);
    assertEquals(2.6 * 0.67 * 16 * counted / 1.5, after.get(shear).capacity(), 1e-9);
    // The mortise presses evenly on 50 mm; the near side of the bore is at 28 - 5.5 = 22.5 mm.
    assertEquals(800 * (50 - 22.5) / 50, after.get(shear).demand(), 1e-9);
    assertTrue(after.get("tenon breaking where a bolt crosses it").utilisation() > 0);
  }

  @Property(tries = 200)
  void a_wider_bore_across_a_tenon_never_leaves_more(
      @ForAll @DoubleRange(min = 0, max = 120) double height,
      @ForAll @DoubleRange(min = 2, max = 20) double d,
      @ForAll @DoubleRange(min = 0.1, max = 5) double more) {
    CrossedTenon small = CrossedTenon.of(16, 80, 18, 50, List.of(new CrossBore(d, height, 28)));
    CrossedTenon large =
        CrossedTenon.of(16, 80, 18, 50, List.of(new CrossBore(d + more, height, 28)));
    assertTrue(large.left(PAD) <= small.left(PAD));
    assertTrue(large.sheared(PAD) <= small.sheared(PAD) + 1e-9);
    assertTrue(large.modulus(PAD, large.left(PAD)) <= small.modulus(PAD, small.left(PAD)) + 1e-6);
  }

  @Test
  void a_bolt_above_the_tenon_or_beyond_its_end_does_not_cross_it() {
    assertTrue(!CrossedTenon.of(16, 80, 18, 50, List.of(new CrossBore(11, 104, 28))).crossed());
    assertTrue(!CrossedTenon.of(16, 80, 18, 22, List.of(new CrossBore(11, 63, 28))).crossed());
  }
}
