package org.stoutwork.reference.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.function.Consumer;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.check.member.Column;
import org.stoutwork.check.member.Lateral;
import org.stoutwork.check.member.LateralBuckling;
import org.stoutwork.check.member.NetSizes;
import org.stoutwork.check.member.Stresses;
import org.stoutwork.section.NetSection;
import org.stoutwork.section.Opening;
import org.stoutwork.section.Rectangle;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.design.AllowableFormulas;
import org.stoutwork.wood.design.DesignBasis;
import org.stoutwork.wood.design.DesignConditions;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.design.DesignTables;
import org.stoutwork.wood.design.DesignValues;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.scatter.Variability;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Line;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** Worked blocks of members: stresses, columns, lateral buckling, allowable stresses. */
final class MemberBlocks {

  private static final Pad PAD = Pad.blank();

  /** For strengths that a block does not ask: nothing may come of them. */
  private static final double UNUSED = Double.NaN;

  private MemberBlocks() {}

  static Map<String, Consumer<Worked>> all() {
    return Map.of(
        "bendingShear", MemberBlocks::bendingShear,
        "ec5Kc", MemberBlocks::european,
        "ndsCp", MemberBlocks::american,
        "combined", MemberBlocks::combined,
        "ltb", MemberBlocks::lateral,
        "astmAllowable", MemberBlocks::allowable);
  }

  private static NetSizes sizes(Rectangle whole, double width, double depth) {
    return NetSizes.of(new NetSection(whole, new Opening(width, depth, 0)));
  }

  private static void bendingShear(Worked w) {
    Rectangle whole = new Rectangle(w.in("b_mm"), w.in("h_mm"));
    double wide = w.in("mort_w_mm");
    double deep = w.in("mort_h_mm");
    NetSection net = new NetSection(whole, new Opening(wide, deep, 0));
    NetSizes up = NetSizes.of(net);
    NetSizes side = sizes(whole.turned(), deep, wide);
    NetSizes grossUp = sizes(whole, 0, 0);
    NetSizes grossSide = sizes(whole.turned(), 0, 0);
    double[] forces = {0, 0, w.in("V_N"), 0, w.in("M_Nmm"), 0};
    Stresses stresses = bent(w.in("f_m_MPa"), w.in("f_v_MPa"), w.in("k_cr"));
    RecordingPad gross = Pad.recording();
    stresses.bending(grossUp, grossSide, forces, gross);
    RecordingPad cut = Pad.recording();
    double use = stresses.bending(up, side, forces, cut);
    w.put("sigma", Lines.only(gross, "σ_{m,y}"))
        .put("I_net", net.secondMoment())
        .put("W_net", up.sectionModulus())
        .put("sigma_net", Lines.only(cut, "σ_{m,y}"))
        .put("tau", stresses.shearStress(grossUp, grossSide, forces, PAD))
        .put("tau_net", stresses.shearStress(up, side, forces, PAD))
        .put("util_m", use)
        .put("util_v", stresses.shear(up, side, forces, PAD));
  }

  /** Strengths of a member without axial force: the tension strength does not count. */
  private static Stresses bent(double fm, double fv, double kcr) {
    return new Stresses(
        BasisChoice.PARTIAL_FACTORS,
        fm,
        1,
        UNUSED,
        fv,
        UNUSED,
        UNUSED,
        kcr,
        UNUSED,
        UNUSED,
        Lateral.NONE);
  }

  /** Bending stress in a whole rectangle, MPa. */
  static double bendingStress(Rectangle whole, double moment) {
    RecordingPad pad = Pad.recording();
    double[] forces = {0, 0, 0, 0, moment, 0};
    bent(1, UNUSED, UNUSED).bending(sizes(whole, 0, 0), sizes(whole.turned(), 0, 0), forces, pad);
    return Lines.only(pad, "σ_{m,y}");
  }

  private static void european(Worked w) {
    assertEquals(0.2, w.in("beta_c"), 0, "solid timber");
    RecordingPad pad = Pad.recording();
    double kept =
        Column.european(pad, w.in("l_ef_mm"), w.in("b_mm"), w.in("f_c0k_MPa"), w.in("E_005_MPa"));
    w.put("lambda", Lines.only(pad, "λ"))
        .put("lambda_rel", Lines.only(pad, "λ_{rel}"))
        .put("k", Lines.only(pad, "k"))
        .put("k_c", kept);
  }

  private static void american(Worked w) {
    assertEquals(0.8, w.in("c"), 0, "sawn timber");
    double critical = Column.critical(PAD, w.in("le_mm"), w.in("d_mm"), w.in("Emin_MPa"));
    w.put("F_cE", critical).put("C_P", Column.american(PAD, critical, w.in("Fc_star_MPa")));
  }

  /** The inputs are those of D40 and C24 under a load of medium duration indoors. */
  private static void combined(Worked w) {
    DesignValues values =
        DesignValues.of(
            WoodCatalogue.load().byKey(w.in("f_mk") == 40 ? "D40" : "C24").orElseThrow(),
            DesignBasis.PartialFactors.recommended(),
            DesignConditions.indoors(DurationClass.MEDIUM, 12, Growth.CLEAR),
            DesignTables.load());
    double fm = values.find(DesignQuantity.BENDING, PAD).orElseThrow();
    double fc = values.find(DesignQuantity.COMPRESSION_PARALLEL, PAD).orElseThrow();
    double e05 = values.find(DesignQuantity.MODULUS_LOW, PAD).orElseThrow();
    double factor = w.in("kmod") / w.in("gammaM");
    assertEquals(factor * w.in("f_mk"), fm, 1e-9);
    assertEquals(factor * w.in("f_c0k"), fc, 1e-9);
    assertEquals(w.in("E_005"), e05, 1e-9);
    Stresses stresses =
        new Stresses(
            BasisChoice.PARTIAL_FACTORS,
            fm,
            UNUSED,
            fc,
            UNUSED,
            w.in("f_c0k"),
            e05,
            UNUSED,
            w.in("l_y_mm"),
            w.in("l_z_mm"),
            Lateral.NONE);
    Rectangle whole = new Rectangle(w.in("b_mm"), w.in("h_mm"));
    double[] forces = {-w.in("N_N"), 0, 0, 0, w.in("My_Nmm"), 0};
    RecordingPad pad = Pad.recording();
    stresses.bending(sizes(whole, 0, 0), sizes(whole.turned(), 0, 0), forces, pad);
    Line.Calculated upDown = sum(pad, "eq. 6.23");
    Line.Calculated sideways = sum(pad, "eq. 6.24");
    w.put("k_cy", upDown.values().get(1))
        .put("k_cz", sideways.values().get(1))
        .put("sigma_c", Lines.only(pad, "σ_0"))
        .put("sigma_m", Lines.only(pad, "σ_{m,y}"))
        .put("u_6_23", upDown.value())
        .put("u_6_24", sideways.value());
  }

  /** The sum by the given equation of the code. */
  private static Line.Calculated sum(RecordingPad pad, String equation) {
    return Lines.of(pad, "u").stream()
        .filter(line -> line.formula().source().place().contains(equation))
        .findFirst()
        .orElseThrow();
  }

  /** Both rules for the critical stress, that of solid softwood and that of all others. */
  private static void lateral(Worked w) {
    RecordingPad softwood = Pad.recording();
    RecordingPad others = Pad.recording();
    Lateral bySoftwood = lateral(w, true, softwood);
    Lateral byOthers = lateral(w, false, others);
    w.put("sigma_crit_6_32", bySoftwood.critical())
        .put("sigma_crit_6_31", byOthers.critical())
        .put("lambda_rel_m", Lines.only(softwood, "λ_{rel,m}"))
        .put("k_crit", bySoftwood.factor())
        .put("k_crit_6_31", byOthers.factor());
  }

  private static Lateral lateral(Worked w, boolean softwood, Pad pad) {
    return LateralBuckling.european(
        pad,
        new Rectangle(w.in("b_mm"), w.in("h_mm")),
        w.in("l_ef_mm"),
        softwood,
        w.in("f_mk_MPa"),
        w.in("E_005_MPa"),
        w.in("G_005_MPa"));
  }

  /** Bending and shear, told by their scatter; the gain by drying is in the mean already. */
  private static void allowable(Worked w) {
    assertEquals(1, w.in("C_seasoning"), 0);
    double cov = w.in("cov");
    double low = Variability.EXCLUSION_5.value(w.in("mean_MPa"), cov);
    w.put("X_5pct", low)
        .put(
            "allowable",
            (cov == 0.16 ? AllowableFormulas.BENDING : AllowableFormulas.SHEAR)
                .value(low, w.in("divisor"), w.in("SR"), w.in("C_D")));
  }
}
