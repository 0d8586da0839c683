package org.stoutwork.check.member;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.TopModels;
import org.stoutwork.check.service.Sway;
import org.stoutwork.result.CheckResult;
import org.stoutwork.working.Line;

/**
 * A bench with a stretcher 22 mm thick and 190 mm deep between end frames at 270 and 1490 mm with
 * legs 92 mm wide: 1128 mm between shoulders.
 */
class LateralOfPartsTest {

  private static List<CheckResult> members(BenchSketch sketch) {
    Inquiry inquiry = new Inquiry(Benches.complete(sketch), Benches.TABLES, TopModels.GRILLAGE);
    return MemberStrength.all(
        inquiry, Sway.all(inquiry).stream().map(Sway.Found::racking).toList());
  }

  private static BenchSketch bench(double thickness, double depth) {
    return Benches.ordinary()
        .stretcher(
            s ->
                s.name("thin board")
                    .thickness(mm(thickness))
                    .depth(mm(depth))
                    .topEdgeAt(mm(560))
                    .joint(j -> j.kind(JointKind.MORTISE_AND_TENON).tenonLength(mm(52))));
  }

  private static BenchSketch european(double thickness, double depth, String wood) {
    return bench(thickness, depth).wood(wood).basis(BasisChoice.PARTIAL_FACTORS);
  }

  private static CheckResult.Checked stretcher(BenchSketch sketch) {
    return members(sketch).stream()
        .filter(c -> c.key().equals("bending-thin-board"))
        .map(CheckResult.Checked.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static boolean has(CheckResult.Checked check, String symbol) {
    return check.working().lines().stream()
        .anyMatch(
            l -> l instanceof Line.Calculated c && c.formula().result().symbol().equals(symbol));
  }

  private static double line(CheckResult.Checked check, String symbol) {
    return check.working().lines().stream()
        .filter(l -> l instanceof Line.Calculated)
        .map(Line.Calculated.class::cast)
        .filter(c -> c.formula().result().symbol().equals(symbol))
        .reduce((first, last) -> last)
        .orElseThrow()
        .value();
  }

  /**
   * D40: l_ef = 1128 + 2·190 = 1508 mm; G_05 = 810·10.9/13 = 679.15 MPa; σ_crit = 13.902 MPa; λ =
   * √(40/13.902) = 1.6962; k_crit = 1/λ² = 0.3476.
   */
  @Test
  void a_deep_thin_stretcher_of_hardwood_keeps_a_third_of_its_bending_strength() {
    CheckResult.Checked check = stretcher(european(22, 190, "D40"));
    assertEquals(1508, line(check, "l_{ef,m}"), 1e-9);
    assertEquals(13.902409, line(check, "σ_{m,crit}"), 1e-5);
    assertEquals(1.696231, line(check, "λ_{rel,m}"), 1e-5);
    assertEquals(0.347560, line(check, "k_{crit}"), 1e-5);
    assertTrue(line(check, "u") >= byHand(check, 0.347560) * (1 - 1e-5));
  }

  /** C24: σ_crit = 0.78·22²·7400/(190·1508) = 9.7503 MPa; λ 1.5689; k_crit 0.4063. */
  @Test
  void a_deep_thin_stretcher_of_softwood_has_a_rule_of_its_own() {
    CheckResult.Checked check = stretcher(european(22, 190, "C24"));
    assertEquals(9.750272, line(check, "σ_{m,crit}"), 1e-5);
    assertEquals(0.406261, line(check, "k_{crit}"), 1e-5);
    assertTrue(line(check, "u") >= byHand(check, 0.406261) * (1 - 1e-5));
  }

  /** Bending alone, up and down over the strength that is left: the sum holds more. */
  private static double byHand(CheckResult.Checked check, double factor) {
    return line(check, "σ_{m,y}") / (factor * line(check, "f_{m,d}"));
  }

  /** 1128/190 is below 7: l_e = 2.06·1128 = 2323.7 mm; R_B = √(2323.7·190)/22 = 30.203. */
  @Test
  void a_deep_thin_stretcher_by_allowable_stresses() {
    CheckResult.Checked check = stretcher(bench(22, 190));
    assertEquals(2323.68, line(check, "l_e"), 1e-6);
    assertEquals(30.2026, line(check, "R_B"), 1e-3);
    double critical = 1.2 * line(check, "E_{min}") / (30.2026 * 30.2026);
    assertEquals(critical, line(check, "F_{bE}"), 1e-4 * critical);
    double r = critical / line(check, "f_m");
    double kept = (1 + r) / 1.9 - Math.sqrt(Math.pow((1 + r) / 1.9, 2) - r / 0.95);
    assertTrue(kept > 0.2 && kept < 0.9, "kept " + kept);
    assertEquals(kept, line(check, "C_L"), 1e-4);
    double bending = line(check, "σ_{m,y}") / (kept * line(check, "f_m"));
    assertTrue(line(check, "u") >= bending * (1 - 1e-4));
  }

  @Test
  void stout_stretchers_and_legs_say_nothing_of_lateral_buckling() {
    for (BenchSketch sketch : List.of(european(76, 150, "D40"), bench(76, 150))) {
      CheckResult.Checked check = stretcher(sketch);
      assertTrue(!has(check, "k_{crit}") && !has(check, "C_L"));
      assertTrue(
          check.working().lines().stream()
              .noneMatch(l -> l instanceof Line.Remark r && r.text().contains("lateral buckling")));
    }
    for (CheckResult c : members(european(22, 190, "D40"))) {
      boolean leg = c.key().startsWith("bending-") && c.key().endsWith("-leg");
      boolean top = c.key().startsWith("bending-top-a");
      assertTrue(!(leg || top) || !has((CheckResult.Checked) c, "k_{crit}"), c.key());
    }
  }
}
