package org.stoutwork.reference.joints;

import java.util.Map;
import java.util.function.Consumer;
import org.stoutwork.fastener.Washer;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.NdsYield;
import org.stoutwork.fastener.lateral.YieldModes;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.fastener.placing.Slots;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.fastener.withdrawal.ScrewWithdrawal;
import org.stoutwork.quantity.Unit;
import org.stoutwork.working.Pad;

/** Worked blocks of screws, bolts and nails. */
final class FastenerBlocks {

  private static final Pad PAD = Pad.blank();

  private FastenerBlocks() {}

  static Map<String, Consumer<Worked>> all() {
    return Map.ofEntries(
        Map.entry("ec5Embedment", FastenerBlocks::embedment),
        Map.entry("ndsDowelBearing", FastenerBlocks::dowelBearing),
        Map.entry("ec5DoubleShear", FastenerBlocks::doubleShear),
        Map.entry("ec5SingleShear", FastenerBlocks::singleShear),
        Map.entry("kserDowel", FastenerBlocks::slip),
        Map.entry("kserNail", w -> w.put("K_ser", Slip.nail(PAD, w.in("rho_m"), w.in("d_mm")))),
        Map.entry("groupRotation", FastenerBlocks::group),
        Map.entry("lagWithdrawal", FastenerBlocks::lag),
        Map.entry("lagWithdrawalUltimate", FastenerBlocks::lagUltimate),
        Map.entry("woodScrewWithdrawal", FastenerBlocks::screw),
        Map.entry("ec5ScrewWithdrawal", FastenerBlocks::ec5Screw),
        Map.entry("ndsSingleShear", FastenerBlocks::ndsSingle),
        Map.entry("ndsDoubleShear", FastenerBlocks::ndsDouble),
        Map.entry("nail0162", w -> w.put("Z", lbf(single(w).least().force()))),
        Map.entry("nail0148", w -> w.put("Z", lbf(single(w).least().force()))),
        Map.entry("boltDouble", w -> w.put("Z", lbf(doubled(w).least().force()))),
        Map.entry("washer", FastenerBlocks::washer),
        Map.entry("slot", FastenerBlocks::slot));
  }

  static double mm(double inches) {
    return Unit.IN.convert(inches, Unit.MM);
  }

  static double lbf(double newtons) {
    return Unit.N.convert(newtons, Unit.LBF);
  }

  static double mpa(double psi) {
    return Unit.PSI.convert(psi, Unit.MPA);
  }

  static double psi(double mpa) {
    return Unit.MPA.convert(mpa, Unit.PSI);
  }

  private static void embedment(Worked w) {
    double d = w.in("d_mm");
    boolean hard = w.in("hardwood") == 1;
    w.put("f_h0", Embedment.along(PAD, d, w.in("rho_k")))
        .put("k90", Embedment.grainFactor(PAD, d, hard))
        .put("f_h_alpha", Embedment.ec5(PAD, d, w.in("rho_k"), w.in("alpha_deg"), hard));
  }

  private static void dowelBearing(Worked w) {
    double d = mm(w.in("D_in"));
    double along = Embedment.nds(PAD, w.in("G"), d, 0);
    double across = Embedment.nds(PAD, w.in("G"), d, 90);
    w.put("F_e_par", psi(along))
        .put("F_e_perp", psi(across))
        .put("F_e_par_MPa", along)
        .put("F_e_perp_MPa", across);
  }

  private static void doubleShear(Worked w) {
    YieldModes modes =
        Johansen.doubled(
            PAD,
            w.in("t1_mm"),
            w.in("t2_mm"),
            w.in("d_mm"),
            w.in("fh1_MPa"),
            w.in("fh2_MPa"),
            w.in("My_Nmm"),
            w.in("Fax_N"),
            w.in("rope_limit"));
    w.put("beta", Johansen.beta(PAD, w.in("fh1_MPa"), w.in("fh2_MPa")));
    modes.modes().forEach(mode -> w.putThousand(mode.name(), mode.force()));
    w.putThousand("F_v_Rk_per_plane", modes.least().force()).put("mode", modes.least().name());
  }

  private static void singleShear(Worked w) {
    YieldModes modes =
        Johansen.single(
            PAD,
            w.in("t1_mm"),
            w.in("t2_mm"),
            w.in("d_mm"),
            w.in("fh1_MPa"),
            w.in("fh2_MPa"),
            w.in("My_Nmm"),
            w.in("Fax_N"),
            w.in("rope_limit"));
    w.put("beta", Johansen.beta(PAD, w.in("fh1_MPa"), w.in("fh2_MPa")));
    modes.modes().forEach(mode -> w.putThousand(mode.name(), mode.force()));
    w.putThousand("F_v_Rk", modes.least().force()).put("mode", modes.least().name());
  }

  private static void slip(Worked w) {
    double density = Slip.density(PAD, w.in("rho1"), w.in("rho2"));
    double k = Slip.dowel(PAD, density, w.in("d_mm"));
    w.put("rho_m", density).put("K_ser", k).put("K_u", Slip.ultimate(PAD, k));
  }

  private static void group(Worked w) {
    double sum = Slip.cornersOf(w.in("a_mm"), w.in("b_mm"));
    w.put("sum_r2", sum)
        .putMillion("K_phi", Slip.rotation(PAD, (int) w.in("planes"), w.in("K_N_mm"), sum));
  }

  private static void lag(Worked w) {
    double d = mm(w.in("D_in"));
    double whole =
        ScrewWithdrawal.lag(PAD, w.in("G"), d, mm(w.in("p_in")), w.in("C_D"), w.in("C_eg") == 0.75);
    w.put("W", lbf(ScrewWithdrawal.lag(PAD, w.in("G"), d, mm(1), 1, false)))
        .put("W_adj", lbf(whole))
        .put("W_adj_N", whole);
  }

  private static void lagUltimate(Worked w) {
    double force = ScrewWithdrawal.lagUltimate(PAD, w.in("G"), mm(w.in("D_in")), mm(w.in("p_in")));
    w.put("P_ult", lbf(force)).put("P_ult_N", force);
  }

  private static void screw(Worked w) {
    double d = mm(w.in("D_in"));
    double p = mm(w.in("p_in"));
    double whole = ScrewWithdrawal.screw(PAD, w.in("G"), d, p, 1);
    w.put("W", lbf(ScrewWithdrawal.screw(PAD, w.in("G"), d, mm(1), 1)))
        .put("W_p", lbf(whole))
        .put("W_p_N", whole)
        .put("P_ult", lbf(ScrewWithdrawal.screwUltimate(PAD, w.in("G"), d, p)));
  }

  private static void ec5Screw(Worked w) {
    double d = w.in("d_mm");
    double l = w.in("l_ef_mm");
    int n = (int) w.in("n");
    w.put("f_ax_k", ScrewWithdrawal.strength(PAD, d, l, w.in("rho_k")))
        .put("k_d", ScrewWithdrawal.smallScrew(PAD, d))
        .put("n_ef", ScrewWithdrawal.effectiveNumber(PAD, n))
        .putThousand(
            "F_ax_Rk", ScrewWithdrawal.ec5(PAD, d, l, w.in("rho_k"), w.in("alpha_deg"), n));
  }

  private static YieldModes single(Worked w) {
    return NdsYield.single(
        PAD,
        mm(w.in("D_in")),
        mm(w.in("lm_in")),
        mm(w.in("ls_in")),
        mpa(w.in("Fem_psi")),
        mpa(w.in("Fes_psi")),
        mpa(w.in("Fyb_psi")),
        w.in("theta_deg"));
  }

  private static YieldModes doubled(Worked w) {
    return NdsYield.doubled(
        PAD,
        mm(w.in("D_in")),
        mm(w.in("lm_in")),
        mm(w.in("ls_in")),
        mpa(w.in("Fem_psi")),
        mpa(w.in("Fes_psi")),
        mpa(w.in("Fyb_psi")),
        w.in("theta_deg"));
  }

  private static double k3(Worked w) {
    double re = NdsYield.ratio(PAD, w.in("Fem_psi"), w.in("Fes_psi"));
    return NdsYield.k3(PAD, re, w.in("Fyb_psi"), w.in("D_in"), w.in("Fem_psi"), w.in("ls_in"));
  }

  private static void ndsSingle(Worked w) {
    double re = NdsYield.ratio(PAD, w.in("Fem_psi"), w.in("Fes_psi"));
    YieldModes modes = single(w);
    w.put("k1", NdsYield.k1(PAD, re, w.in("lm_in") / w.in("ls_in")))
        .put(
            "k2",
            NdsYield.k2(PAD, re, w.in("Fyb_psi"), w.in("D_in"), w.in("Fem_psi"), w.in("lm_in")))
        .put("k3", k3(w));
    modes.modes().forEach(mode -> w.put(mode.name(), lbf(mode.force())));
    w.put("Z", lbf(modes.least().force()))
        .put("Z_N", modes.least().force())
        .put("mode", modes.least().name());
  }

  private static void ndsDouble(Worked w) {
    YieldModes modes = doubled(w);
    w.put("R_e", NdsYield.ratio(PAD, w.in("Fem_psi"), w.in("Fes_psi"))).put("k3", k3(w));
    modes.modes().forEach(mode -> w.put(mode.name(), lbf(mode.force())));
    w.put("Z", lbf(modes.least().force())).put("mode", modes.least().name());
  }

  private static void washer(Worked w) {
    Washer washer = new Washer(w.in("dw_mm"), w.in("dh_mm"), 3);
    w.put("A", Heads.area(PAD, washer.outer(), washer.hole()))
        .putThousand("F_Rk", Heads.washer(PAD, washer, w.in("f_c90k_MPa")));
  }

  private static void slot(Worked w) {
    double movement = Slots.movement(PAD, w.in("width_mm"), w.in("coef"), w.in("dMC"));
    w.put("movement", movement)
        .put("slot_len", Slots.length(PAD, w.in("d_screw_mm"), movement, w.in("tol_mm")));
  }
}
