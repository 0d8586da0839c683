package org.stoutwork.reference.joints;

import static org.stoutwork.reference.joints.FastenerBlocks.lbf;
import static org.stoutwork.reference.joints.FastenerBlocks.mm;
import static org.stoutwork.reference.joints.FastenerBlocks.psi;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.PegWood;
import org.stoutwork.fastener.Washer;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.NdsYield;
import org.stoutwork.fastener.lateral.WoodPegYield;
import org.stoutwork.fastener.lateral.YieldModes;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.fastener.withdrawal.Heads;
import org.stoutwork.joint.bolted.BarrelNut;
import org.stoutwork.joint.bolted.BedBolt;
import org.stoutwork.joint.peg.Drawbore;
import org.stoutwork.joint.peg.PegSpring;
import org.stoutwork.joint.peg.Relish;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.working.Pad;

/** Worked blocks of pegs, drawboring and bed bolts. */
final class PegBlocks {

  private static final Pad PAD = Pad.blank();

  private PegBlocks() {}

  static Map<String, Consumer<Worked>> all() {
    return Map.of(
        "pegTfec", PegBlocks::yielding,
        "pegShear", PegBlocks::shear,
        "relish", PegBlocks::relish,
        "drawbore", PegBlocks::drawbore,
        "pegMoment", PegBlocks::moment,
        "pegSlip", PegBlocks::slip,
        "barrelNut", PegBlocks::barrelNut,
        "bedBolt", PegBlocks::bedBolt);
  }

  private static void yielding(Worked w) {
    double gp = w.in("Gp");
    double gt = w.in("Gt");
    double d = mm(w.in("D_in"));
    double ls = mm(w.in("ls_in"));
    double along = WoodPegYield.along(PAD, gp);
    double across = WoodPegYield.across(PAD, gp, gt);
    double fyb = WoodPegYield.bending(PAD, gp);
    double re = NdsYield.ratio(PAD, along, across);
    YieldModes modes = WoodPegYield.allowable(PAD, d, mm(w.in("lm_in")), ls, gp, gt);
    w.put("F_e_par", psi(along))
        .put("F_e_perp", psi(across))
        .put("F_yb", psi(fyb))
        .put("R_e", re)
        .put("k3", NdsYield.k3(PAD, re, fyb, d, along, ls))
        .put("F_v_allow", psi(WoodPegYield.shear(PAD, gp, gt)));
    modes.modes().forEach(mode -> w.put("Z_" + mode.name(), lbf(mode.force())));
    w.put("Z", lbf(modes.least().force()))
        .put("Z_N", modes.least().force())
        .put("mode", modes.least().name());
  }

  private static void shear(Worked w) {
    double gp = w.in("Gp");
    double gt = w.in("Gt");
    double d = mm(w.in("D_in"));
    double yield = WoodPegYield.shearYield(PAD, gp, gt);
    double atYield = WoodPegYield.crossShear(PAD, d, yield);
    double allowed = WoodPegYield.crossShear(PAD, d, WoodPegYield.shear(PAD, gp, gt));
    w.put("F_vy", psi(yield))
        .put("V_yield_2planes", lbf(atYield))
        .put("V_allow", lbf(allowed))
        .put("ratio", atYield / allowed);
  }

  private static void relish(Worked w) {
    int n = (int) w.in("n");
    double t = w.in("t_mm");
    double s = w.in("s_crit_mm");
    double fv = w.in("f_v_MPa");
    w.putThousand("Z_RT", Relish.tearOut(PAD, n, fv, t, s))
        .putThousand("F_uniform", Relish.evenly(PAD, n, fv, t, s));
  }

  private static Peg peg(Worked w, double strength) {
    return new Peg(w.in("d_mm"), new PegWood("peg", w.in("E_MPa"), strength, 0.6, 600));
  }

  private static void drawbore(Worked w) {
    double t = w.in("t_mm");
    double c = w.in("c_mm");
    Peg peg = peg(w, w.in("f_m_MPa"));
    Drawbore found =
        Drawbore.of(PAD, peg, w.in("e_mm"), t, c, w.in("rho_m"), w.in("Z_y_N"), w.in("relax"));
    double bending = PegSpring.bending(PAD, peg, t, c);
    w.put("L_s", PegSpring.span(PAD, t, c))
        .put("I", PegSpring.secondMoment(PAD, peg.diameter()))
        .put("k_bend", bending)
        .put("K_ser", Slip.dowel(PAD, w.in("rho_m"), peg.diameter()))
        .put("k", found.stiffness())
        .put("F_elastic", found.elastic())
        .put("bend_deflection", found.elastic() / bending)
        .put("strain", found.strain())
        .put("strain_util", found.strainUse())
        .put("F_clamp_0", found.clamp())
        .put("F_clamp_long", found.lasting())
        .put("e_first_yield", found.usefulOffset());
  }

  private static void moment(Worked w) {
    double z = ShoulderSpring.lever(PAD, w.in("h_mm"), w.in("s_b_mm"), w.in("a_c_mm"));
    w.put("z", z)
        .putThousand("M_open", BedBolt.opening(PAD, w.in("F_clamp_N"), z))
        .putThousand("M_cap", Relish.couple(PAD, w.in("Z_cap_N"), z))
        .putMillion("K_phi", PegSpring.rotation(PAD, z, w.in("k_peg_N_mm"), w.in("k_C_N_mm")));
  }

  private static void slip(Worked w) {
    double t = w.in("t_mm");
    double c = w.in("c_mm");
    Peg peg = peg(w, 100);
    double k = PegSpring.pulled(PAD, peg, t, c, w.in("rho_m"));
    w.put("k_bend", PegSpring.bending(PAD, peg, t, c))
        .put("k_shear", PegSpring.shear(PAD, peg, t, c))
        .put("two_K_ser", 2 * Slip.dowel(PAD, w.in("rho_m"), peg.diameter()))
        .putThousand("k", k)
        .putThousand("k_low", k / 2)
        .putThousand("k_high", 2 * k);
  }

  private static void barrelNut(Worked w) {
    StrengthFamily family =
        new StrengthFamily.PartialFactors(w.in("kmod"), w.in("gammaM"), w.in("gammaM2"));
    double d = w.in("d_n_mm");
    double l = w.in("l_n_mm");
    Map<String, Double> links = new TreeMap<>();
    links.put("bolt", Heads.bolt(PAD, w.in("f_ub_MPa"), w.in("A_s_mm2"), w.in("gammaM2")));
    double fh = Embedment.along(PAD, d, w.in("rho_k"));
    links.put("nut", BarrelNut.design(PAD, BarrelNut.bearing(PAD, fh, d, l), family));
    double plug = BarrelNut.shearOut(PAD, w.in("f_vk_MPa"), w.in("a_e_mm"), l, w.in("b_mm"));
    links.put("shear-out", BarrelNut.design(PAD, plug, family));
    Washer washer = new Washer(w.in("dw_mm"), w.in("dh_mm"), 3);
    double pressed = Heads.washer(PAD, washer, w.in("f_c90k_MPa"));
    links.put("washer", BarrelNut.design(PAD, pressed, family));
    String weakest =
        links.entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow().getKey();
    w.putThousand("F_bolt", links.get("bolt"))
        .putThousand("F_nut_bearing", links.get("nut"))
        .putThousand("F_shear_out", links.get("shear-out"))
        .putThousand("F_washer", links.get("washer"))
        .putThousand("F_Rd", links.get(weakest))
        .put("governs", weakest);
  }

  private static void bedBolt(Worked w) {
    double bolt = BedBolt.bolt(PAD, w.in("A_s_mm2"), w.in("L_b_mm"));
    double z = w.in("z_mm");
    w.put("k_bolt", bolt)
        .putThousand("M_open", BedBolt.opening(PAD, w.in("preload_N"), z))
        .putThousand("M_Rd", BedBolt.moment(PAD, w.in("F_Rd_N"), z))
        .putMillion("K_phi", BedBolt.rotation(PAD, z, bolt, w.in("k_C_N_mm")));
  }
}
