package org.stoutwork.reference.joints;

import java.util.Map;
import java.util.function.Consumer;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.glue.GlueLine;
import org.stoutwork.joint.glue.GlueTurning;
import org.stoutwork.joint.regression.TestSeries;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.tenon.Bearing;
import org.stoutwork.joint.tenon.ShoulderTurning;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.joint.tenon.TenonShear;
import org.stoutwork.joint.tenon.Wedging;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Pad;

/** Worked blocks of tenons, glue lines and wedges. */
final class TenonBlocks {

  private static final Pad PAD = Pad.blank();

  private TenonBlocks() {}

  static Map<String, Consumer<Worked>> all() {
    return Map.ofEntries(
        Map.entry("mtMoment", TenonBlocks::moment),
        Map.entry("mtMomentWhiteOak", TenonBlocks::moment),
        Map.entry("lowerTolerance", TenonBlocks::tolerance),
        Map.entry("shoulderBearing", TenonBlocks::shoulder),
        Map.entry("mtDesign", TenonBlocks::design),
        Map.entry("glueTorsion", TenonBlocks::torsion),
        Map.entry("bridle", TenonBlocks::torsion),
        Map.entry(
            "glueAtAngle",
            w -> w.put("f_g", GlueLine.angled(PAD, w.in("S_MPa"), w.in("theta_deg")))),
        Map.entry("mtWithdrawal", TenonBlocks::withdrawal),
        Map.entry("tenonShear", TenonBlocks::shear),
        Map.entry("notch", TenonBlocks::notch),
        Map.entry("tenonRoot", TenonBlocks::root),
        Map.entry("mortiseBearing", TenonBlocks::bearing),
        Map.entry("splitF90", TenonBlocks::split),
        Map.entry("hornShearOut", TenonBlocks::horn),
        Map.entry("haunched", TenonBlocks::haunched),
        Map.entry("wedgedTenon", TenonBlocks::wedged),
        Map.entry("stubTenon", TenonBlocks::stub),
        Map.entry("compPerp", TenonBlocks::across),
        Map.entry("hankinson", TenonBlocks::hankinson),
        Map.entry("tensionPerp", TenonBlocks::tension));
  }

  private static void moment(Worked w) {
    double h = w.in("h_mm");
    double l = w.in("l_mm");
    double s = w.in("s_mm");
    double fg = GlueLine.crossed(PAD, w.in("S_MPa"));
    double polar = ShoulderTurning.polar(PAD, l, s, s + h);
    double farthest = GlueTurning.diagonal(PAD, l, h + s);
    double arms = ShoulderTurning.arms(PAD, l, s, s + h);
    w.put("A_g", ShoulderTurning.area(PAD, h, l))
        .put("f_g", fg)
        .put("J_O", polar)
        .put("r_max", farthest)
        .put("R_O", arms)
        .putMillion("M_elastic", GlueTurning.elastic(PAD, fg, polar, farthest))
        .putMillion("M_plastic", GlueTurning.plastic(PAD, fg, arms));
  }

  private static void tolerance(Worked w) {
    TestSeries series =
        new TestSeries("", w.in("mean"), w.in("sd"), Unit.N_M, 1, Source.derived("worked block"));
    w.put("X_low", series.lower(PAD, w.in("k"))).put("cov", series.variation());
  }

  private static void shoulder(Worked w) {
    double h = w.in("h_mm");
    double l = w.in("l_mm");
    double s = w.in("s_mm");
    double fg = w.in("f_g_MPa");
    double push = ShoulderTurning.push(PAD, fg, h, l, s);
    double crushed = ShoulderTurning.crushedDepth(PAD, push, w.in("b_r_mm"), w.in("f_c90u_MPa"));
    double plastic = GlueTurning.plastic(PAD, fg, ShoulderTurning.arms(PAD, l, s, s + h));
    w.putThousand("C", push)
        .put("x_c", crushed)
        .put("x_c_over_d", crushed / w.in("d_r_mm"))
        .putMillion("M_corrected", ShoulderTurning.corrected(PAD, plastic, push, crushed));
  }

  private static void design(Worked w) {
    double mean = GlueDesign.mean(PAD, w.in("M_plastic_kNm"));
    double lower = GlueDesign.lower(PAD, mean, w.in("cov"));
    w.put("M_mean", mean)
        .put("M_k", lower)
        .put(
            "M_Rd",
            GlueDesign.design(
                PAD, lower, new StrengthFamily.PartialFactors(w.in("kmod"), w.in("gammaM"), 1.25)))
        .put(
            "M_allow",
            GlueDesign.design(
                PAD, lower, new StrengthFamily.Allowable(w.in("C_D"), w.in("divisor"))));
  }

  private static void torsion(Worked w) {
    double a = w.in("a_mm");
    double b = w.in("b_mm");
    int n = (int) w.in("n");
    double fg = w.in("f_g_MPa");
    double m = w.in("M_Nmm");
    double polar = GlueTurning.polar(PAD, n, a, b);
    double farthest = GlueTurning.diagonal(PAD, a, b) / 2;
    w.put("A", n * a * b)
        .put("J_p", polar)
        .put("r_max", farthest)
        .put("tau_M", GlueTurning.corner(PAD, n, a, b, m, 0, 0))
        .put("tau_max", GlueTurning.corner(PAD, n, a, b, m, w.in("N_N"), w.in("V_N")))
        .putMillion("M_elastic", GlueTurning.elastic(PAD, fg, polar, farthest))
        .putMillion("M_plastic", GlueTurning.plasticCentred(PAD, fg, n, a, b));
  }

  private static void withdrawal(Worked w) {
    double glue =
        Splitting.gluePull(
            PAD, w.in("f_g_MPa"), ShoulderTurning.area(PAD, w.in("h_mm"), w.in("l_mm")));
    double net =
        Splitting.netTension(
            PAD, Splitting.Cut.PEGS, w.in("f_t_MPa"), w.in("h_mm"), w.in("d_peg_mm"), w.in("t_mm"));
    w.putThousand("T_glue", glue).putThousand("T_net", net).putThousand("T", Math.min(glue, net));
  }

  private static void shear(Worked w) {
    double h = w.in("h_mm");
    double s = w.in("s_b_mm");
    double kv = TenonShear.notch(PAD, h, s, w.in("x_mm"), w.in("k_n"));
    double tau = TenonShear.stress(PAD, w.in("V_N"), w.in("k_cr"), w.in("t_mm"), h);
    double capacity = TenonShear.capacity(PAD, kv, w.in("f_v_MPa"), w.in("k_cr"), w.in("t_mm"), h);
    w.put("alpha", TenonShear.share(PAD, h, s))
        .put("k_v", kv)
        .put("tau", tau)
        .put("util", w.in("V_N") / capacity)
        .putThousand("V_cap", capacity);
  }

  private static void notch(Worked w) {
    double left = w.in("h_ef_mm");
    double cut = w.in("h_mm") - left;
    double kv = TenonShear.notch(PAD, left, cut, w.in("x_mm"), w.in("k_n"), w.in("i_slope"));
    double capacity =
        TenonShear.capacity(PAD, kv, w.in("f_vd_MPa"), w.in("k_cr"), w.in("b_mm"), left);
    w.put("alpha", TenonShear.share(PAD, left, cut))
        .put("k_v", kv)
        .put("tau", TenonShear.stress(PAD, w.in("V_N"), w.in("k_cr"), w.in("b_mm"), left))
        .put("util", w.in("V_N") / capacity);
  }

  private static void root(Worked w) {
    double moment = TenonShear.rootMoment(PAD, w.in("V_N"), w.in("e_mm"));
    double modulus = TenonShear.modulus(PAD, w.in("t_mm"), w.in("h_mm"));
    double capacity = TenonShear.rootCapacity(PAD, w.in("f_m_MPa"), modulus);
    w.putThousand("M", moment)
        .put("Z", modulus)
        .put("sigma", TenonShear.rootStress(PAD, moment, modulus))
        .putThousand("M_cap", capacity)
        .put("util", moment / capacity);
  }

  private static void bearing(Worked w) {
    double t = w.in("t_mm");
    double l = w.in("l_mm");
    double fc = w.in("f_c90_MPa");
    double even = Bearing.fromForce(PAD, w.in("V_N"), t, l);
    double turning = Bearing.fromMoment(PAD, w.in("M_Nmm"), t, l);
    double both = Bearing.both(PAD, even, turning);
    w.put("sigma_V", even)
        .put("sigma_M", turning)
        .put("sigma_max", both)
        .put("util", both / fc)
        .putThousand("M_cap_el", Bearing.elasticMoment(PAD, fc, t, l))
        .putThousand("M_cap_pl", Bearing.plasticMoment(PAD, fc, t, l));
  }

  private static void split(Worked w) {
    w.putThousand("F90_Rk", Splitting.force(PAD, w.in("b_mm"), w.in("h_e_mm"), w.in("h_mm")));
  }

  private static void horn(Worked w) {
    double l = w.in("l_mm");
    double t = w.in("t_mm");
    double e = w.in("a_e_mm");
    w.put("A", Splitting.hornArea(PAD, l, t, e))
        .putThousand("F", Splitting.horn(PAD, l, t, e, w.in("f_v_MPa")));
  }

  private static void haunched(Worked w) {
    double h = w.in("h_mm");
    double l = w.in("l_mm");
    double s = w.in("s_mm");
    double hh = w.in("hh_mm");
    double lh = w.in("lh_mm");
    double fg = w.in("f_g_MPa");
    double polar =
        ShoulderTurning.polar(PAD, l, s, s + h) + ShoulderTurning.polar(PAD, lh, s + h, s + h + hh);
    double farthest =
        Math.max(GlueTurning.diagonal(PAD, l, s + h), GlueTurning.diagonal(PAD, lh, s + h + hh));
    double arms = ShoulderTurning.armsHaunched(PAD, l, h, s, lh, hh, true);
    w.put("J_O", polar)
        .put("r_max", farthest)
        .putMillion("M_elastic", GlueTurning.elastic(PAD, fg, polar, farthest))
        .putMillion("M_plastic", GlueTurning.plastic(PAD, fg, arms));
  }

  private static void wedged(Worked w) {
    double mu = w.in("mu");
    double strain = Wedging.strain(PAD, w.in("leaf_mm"), w.in("spread_mm"), w.in("l_k_mm"));
    double limit = Wedging.strainLimit(PAD, w.in("f_m_MPa"), w.in("E_MPa"));
    w.put("phi", Math.toDegrees(Wedging.frictionAngle(PAD, mu)))
        .put("lock_ratio", Wedging.lock(PAD, mu, w.in("theta_deg")))
        .put("strain", strain)
        .put("strain_util", strain / limit)
        .putThousand(
            "F_withdraw",
            Wedging.withdrawal(
                PAD, w.in("f_c90_MPa"), w.in("t_mm"), w.in("l_w_mm"), w.in("taper_deg"), mu));
  }

  private static void stub(Worked w) {
    double t = w.in("t_mm");
    double h = w.in("h_mm");
    double shear = TenonShear.capacity(PAD, 1, w.in("f_v_MPa"), 1, t, h);
    double bearing = Bearing.force(PAD, w.in("f_c_MPa"), t, w.in("l_mm"));
    double split = Splitting.force(PAD, w.in("b_w_mm"), w.in("h_e_mm"), w.in("h_w_mm"));
    double least = Math.min(shear, Math.min(bearing, split));
    w.putThousand("V_shear", shear)
        .putThousand("V_bearing", bearing)
        .putThousand("V_split", split)
        .putThousand("V_cap", least)
        .put("util", w.in("V_N") / least);
  }

  private static void across(Worked w) {
    double length =
        Bearing.spread(PAD, w.in("l_mm"), w.in("a_left_mm"), w.in("a_right_mm"), w.in("l1_mm"));
    double sigma = Bearing.across(PAD, w.in("F_N"), w.in("b_mm"), length);
    w.put("l_ef", length)
        .put("sigma", sigma)
        .put("util", sigma / (w.in("kc90") * w.in("f_c90_MPa")));
  }

  private static void hankinson(Worked w) {
    w.put("N", Bearing.atAngle(PAD, w.in("P"), w.in("Q"), w.in("theta_deg")));
  }

  private static void tension(Worked w) {
    double sigma = Splitting.stress(PAD, w.in("F_N"), w.in("b_mm"), w.in("l_mm"));
    double kVol = Math.pow(w.in("V0_ratio"), 0.2);
    w.put("sigma", sigma)
        .put("k_vol", kVol)
        .put("util", sigma / (kVol * w.in("kmod") * w.in("f_t90k") / w.in("gammaM")));
  }
}
