package org.stoutwork.reference.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.stoutwork.check.service.SagFormulas;
import org.stoutwork.joint.glue.Laminations;
import org.stoutwork.joint.screwed.LayerSlip;
import org.stoutwork.section.Layer;
import org.stoutwork.section.LayerBond;
import org.stoutwork.section.LayeredSection;
import org.stoutwork.section.PiercedStrip;
import org.stoutwork.section.Rectangle;
import org.stoutwork.working.Pad;

/** Worked blocks of tops: sag and creep, layers with and without slip, holes. */
final class TopBlocks {

  private static final Pad PAD = Pad.blank();
  private static final double RIGID = Double.POSITIVE_INFINITY;

  private TopBlocks() {}

  static Map<String, Consumer<Worked>> all() {
    return Map.of(
        "deflectionCreep", TopBlocks::sag,
        "gammaTwoLayer", TopBlocks::slip,
        "gammaScrewLoad", TopBlocks::screwLoad,
        "gluedComposite", TopBlocks::glued,
        "dogHoles", TopBlocks::holes);
  }

  /** Each part alone is the sag of a beam that is rigid in the other way. */
  private static void sag(Worked w) {
    double e = w.in("E_MPa");
    double g = w.in("G_MPa");
    double spread = spread(w, e, g);
    double point = point(w, e, g);
    double psi = w.in("psi2");
    w.put("w_q_bend", spread(w, e, RIGID))
        .put("w_q_shear", spread(w, RIGID, g))
        .put("w_P_bend", point(w, e, RIGID))
        .put("w_P_shear", point(w, RIGID, g))
        .put("w_inst", SagFormulas.FINAL.value(spread, 0, point, 0, 1, psi))
        .put("w_fin", SagFormulas.FINAL.value(spread, 0, point, w.in("k_def"), 1, psi));
  }

  private static double spread(Worked w, double e, double g) {
    return SagFormulas.SPREAD.value(w.in("q_N_mm"), w.in("L_mm"), e, g, w.in("b_mm"), w.in("h_mm"));
  }

  private static double point(Worked w, double e, double g) {
    return SagFormulas.POINT.value(w.in("P_N"), w.in("L_mm"), e, g, w.in("b_mm"), w.in("h_mm"));
  }

  private static List<Layer> layers(Worked w) {
    return List.of(
        new Layer(w.in("h1_mm"), w.in("E1_MPa")), new Layer(w.in("h2_mm"), w.in("E2_MPa")));
  }

  private static LayeredSection stack(Worked w, LayerBond bond) {
    return new LayeredSection(w.in("b_mm"), layers(w), bond);
  }

  private static LayeredSection screwed(Worked w) {
    return stack(w, new LayerBond.Screwed(w.in("K_N_mm"), w.in("s_mm"), (int) w.in("rows")));
  }

  private static LayerSlip slipping(Worked w) {
    double b = w.in("b_mm");
    return new LayerSlip(
        w.in("E1_MPa") * b * w.in("h1_mm"),
        w.in("E2_MPa") * b * w.in("h2_mm"),
        stack(w, new LayerBond.Loose()).bendingStiffness(1),
        (w.in("h1_mm") + w.in("h2_mm")) / 2,
        w.in("s_mm") / w.in("rows"),
        w.in("L_mm"));
  }

  /** The stiffness by Annex B and that of the section, which is written in another form. */
  private static void slip(Worked w) {
    LayerSlip slip = slipping(w);
    double gamma = slip.gamma(PAD, w.in("K_N_mm"));
    double arm = slip.arm(PAD, gamma);
    double none = slip.own();
    double slipped = screwed(w).bendingStiffness(w.in("L_mm"));
    double full = stack(w, new LayerBond.Glued()).bendingStiffness(w.in("L_mm"));
    assertEquals(slipped, slip.stiffness(PAD, gamma, arm), 1e-9 * slipped);
    w.put("s_ef", slip.spacing())
        .put("gamma1", gamma)
        .put("a1", arm)
        .put("a2", slip.between() - arm)
        .putMillion("EI_none", none / 1e3)
        .putMillion("EI_ef", slipped / 1e3)
        .putMillion("EI_full", full / 1e3)
        .put("efficiency", (slipped - none) / (full - none));
  }

  private static void screwLoad(Worked w) {
    List<LayeredSection.Bent> bent = screwed(w).stresses(w.in("M_Nmm"), w.in("L_mm"));
    w.put("F_screw", slipping(w).force(PAD, w.in("K_N_mm"), w.in("V_N")))
        .put("sigma_1", -bent.get(0).middle())
        .put("sigma_m1", bent.get(0).faces())
        .put("sigma_2", bent.get(1).middle())
        .put("sigma_m2", bent.get(1).faces());
  }

  private static void glued(Worked w) {
    LayeredSection strip = new LayeredSection(1, layers(w), new LayerBond.Glued());
    double stiffness = strip.bendingStiffness(1);
    w.put("y_bar", strip.neutralAxis())
        .putMillion("EI", stack(w, new LayerBond.Glued()).bendingStiffness(1) / 1e3)
        .put(
            "tau_glue",
            Laminations.layers(PAD, w.in("V_N"), strip.firstMoment(1), stiffness, w.in("b_mm")));
  }

  private static void holes(Worked w) {
    double b = w.in("B_mm");
    double h = w.in("h_mm");
    PiercedStrip strip = new PiercedStrip(b, w.in("n") * w.in("d_mm"), w.in("d_mm") / w.in("p_mm"));
    double whole = w.in("E_MPa") * new Rectangle(b, h).secondMoment();
    w.put("b_net", strip.netWidth())
        .put(
            "sigma_net",
            MemberBlocks.bendingStress(new Rectangle(strip.netWidth(), h), w.in("M_Nmm")))
        .put("EI_ratio", strip.stiffnessRatio())
        .putMillion("EI_eff", strip.stiffnessRatio() * whole / 1e3);
  }
}
