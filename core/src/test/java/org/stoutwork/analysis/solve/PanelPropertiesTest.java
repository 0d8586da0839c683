package org.stoutwork.analysis.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelMesh;
import org.stoutwork.analysis.model.PanelSupport;

class PanelPropertiesTest {
  /** A bench top: sizes, wood, two inset lines of support. */
  record Top(
      double length, double width, double h, PanelMaterial material, double left, double right) {
    PanelBuilder builder() {
      return Panel.builder("top", length, width, h)
          .material(material)
          .mesh(new PanelMesh.Auto(8))
          .support(PanelSupport.knifeEdge(PanelLine.x(left * length)))
          .support(PanelSupport.knifeEdge(PanelLine.x(right * length)));
    }

    double x(double part) {
      return part * length;
    }

    double y(double part) {
      return part * width;
    }
  }

  @Provide
  Arbitrary<Top> tops() {
    Arbitrary<PanelMaterial> material =
        Combinators.combine(
                Arbitraries.doubles().between(7000, 16000),
                Arbitraries.doubles().between(250, 1500),
                Arbitraries.doubles().between(400, 1100),
                Arbitraries.doubles().between(60, 400),
                Arbitraries.doubles().between(0.1, 0.5))
            .as((e1, e2, g, g23, nu) -> new PanelMaterial(e1, e2, g, 0.9 * g, g23, nu, 600));
    return Combinators.combine(
            Arbitraries.doubles().between(900, 2400),
            Arbitraries.doubles().between(350, 900),
            Arbitraries.doubles().between(18, 110),
            material,
            Arbitraries.doubles().between(0.02, 0.3),
            Arbitraries.doubles().between(0.6, 0.97))
        .as(Top::new);
  }

  private static double w(Panel panel, double x, double y, PanelLoad... loads) {
    Panel reporting = panel.toBuilder().report(x, y).build();
    return PanelSolver.solve(reporting, List.of(loads)).report().get(0).w();
  }

  @Property(tries = 15)
  void reactions_balance_the_loads(
      @ForAll("tops") Top top,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double px,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double py) {
    List<PanelLoad> loads =
        List.of(
            PanelLoad.patch("top", top.x(px), top.y(py), 61, 47, 913),
            PanelLoad.pressure("top", 1.7e-4),
            new PanelLoad.OnLine("top", PanelLine.y(0).between(100, 500), 0.3));
    PanelResult result = PanelSolver.solve(top.builder().build(), loads);
    double load = 913 + 1.7e-4 * top.length() * top.width() + 0.3 * 400;
    double reaction = 0;
    for (PanelReaction r : result.reactions()) {
      reaction += r.force();
    }
    assertEquals(load, reaction, 1e-9 * load);
    assertTrue(result.equilibriumError() < 1e-9, "error " + result.equilibriumError());
    assertTrue(result.residual() < 1e-9, "residual " + result.residual());
  }

  @Property(tries = 10)
  void a_mirrored_load_deflects_the_mirrored_place(
      @ForAll("tops") Top top,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double px,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double py) {
    Panel panel = top.builder().build();
    double below =
        w(panel, top.x(0.4), top.y(0.25), PanelLoad.point("top", top.x(px), top.y(py), 500));
    double mirrored =
        w(panel, top.x(0.4), top.y(0.75), PanelLoad.point("top", top.x(px), top.y(1 - py), 500));
    assertEquals(below, mirrored, 1e-8 * Math.abs(below) + 1e-10);
  }

  @Property(tries = 10)
  void deflection_at_one_place_under_a_load_at_another_is_mutual(
      @ForAll("tops") Top top,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double ax,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double bx) {
    // Both places are reported and both carry a load, so that both solutions share one mesh.
    Panel panel = top.builder().report(top.x(ax), top.y(0.2)).report(top.x(bx), top.y(0.7)).build();
    PanelLoad a = PanelLoad.point("top", top.x(ax), top.y(0.2), 1000);
    PanelLoad b = PanelLoad.point("top", top.x(bx), top.y(0.7), 1000);
    PanelLoad noA = PanelLoad.point("top", top.x(ax), top.y(0.2), 0);
    PanelLoad noB = PanelLoad.point("top", top.x(bx), top.y(0.7), 0);
    double atBFromA = PanelSolver.solve(panel, List.of(a, noB)).report().get(1).w();
    double atAFromB = PanelSolver.solve(panel, List.of(noA, b)).report().get(0).w();
    assertEquals(atBFromA, atAFromB, 1e-8 * Math.abs(atBFromA) + 1e-10);
  }

  @Property(tries = 10)
  void an_influence_surface_predicts_what_solving_shows(
      @ForAll("tops") Top top,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double px,
      @ForAll @DoubleRange(min = 0.15, max = 0.85) double py) {
    Panel panel = top.builder().mesh(new PanelMesh.Even(10, 6)).report(top.x(0.45), 0).build();
    PanelLoad load = PanelLoad.patch("top", top.x(px), top.y(py), 55, 71, 640);
    PanelPointResult solved = PanelSolver.solve(panel, List.of(load)).report().get(0);
    for (PanelQuantity quantity : PanelQuantity.values()) {
      double direct =
          switch (quantity) {
            case W -> solved.w();
            case MX -> solved.forces().mx();
            case MY -> solved.forces().my();
            case MXY -> solved.forces().mxy();
            case QX -> solved.forces().qx();
            case QY -> solved.forces().qy();
          };
      double predicted = PanelInfluence.of(panel, quantity, top.x(0.45), 0).of(load);
      double scale = quantity == PanelQuantity.W ? Math.abs(direct) : 640;
      assertEquals(direct, predicted, 1e-7 * scale, quantity.name());
    }
  }

  @Property(tries = 10)
  void turning_the_wood_is_the_same_as_exchanging_the_sides(@ForAll("tops") Top top) {
    Panel panel = top.builder().report(top.x(0.45), top.y(0.3)).build();
    Panel turned =
        Panel.builder("top", top.width(), top.length(), top.h())
            .material(top.material().turned())
            .mesh(new PanelMesh.Auto(8))
            .support(PanelSupport.knifeEdge(PanelLine.y(top.left() * top.length())))
            .support(PanelSupport.knifeEdge(PanelLine.y(top.right() * top.length())))
            .report(top.y(0.3), top.x(0.45))
            .build();
    PanelPointResult a =
        PanelSolver.solve(
                panel, List.of(PanelLoad.patch("top", top.x(0.5), top.y(0.6), 80, 50, 900)))
            .report()
            .get(0);
    PanelPointResult b =
        PanelSolver.solve(
                turned, List.of(PanelLoad.patch("top", top.y(0.6), top.x(0.5), 50, 80, 900)))
            .report()
            .get(0);
    assertEquals(a.w(), b.w(), 1e-7 * Math.abs(a.w()));
    assertEquals(a.forces().mx(), b.forces().my(), 1e-6 * 900);
    assertEquals(a.forces().my(), b.forces().mx(), 1e-6 * 900);
    assertEquals(a.forces().mxy(), b.forces().mxy(), 1e-6 * 900);
    assertEquals(a.forces().qx(), b.forces().qy(), 1e-6 * 900);
  }

  @Property(tries = 10)
  void a_thin_top_follows_the_cube_of_its_thickness(
      @ForAll("tops") Top top, @ForAll @DoubleRange(min = 1.2, max = 3) double factor) {
    PanelLoad load = PanelLoad.patch("top", top.x(0.5), top.y(0.3), 90, 60, 700);
    Panel one = top.builder().thin(true).build();
    Top thicker =
        new Top(
            top.length(), top.width(), factor * top.h(), top.material(), top.left(), top.right());
    Panel two = thicker.builder().thin(true).build();
    double thin = w(one, top.x(0.5), top.y(0.3), load);
    double thick = w(two, top.x(0.5), top.y(0.3), load);
    assertEquals(thin, thick * Math.pow(factor, 3), 1e-6 * Math.abs(thin));
  }

  @Property(tries = 10)
  void a_real_top_comes_close_to_a_thin_one_when_it_is_very_thin(@ForAll("tops") Top top) {
    Top slight =
        new Top(
            top.length(), top.width(), top.width() / 2000, top.material(), top.left(), top.right());
    PanelLoad load = PanelLoad.pressure("top", 1e-6);
    double x = top.x((top.left() + top.right()) / 2);
    // A finer mesh than usual, so that the claim stays sharp for the oddest of tops.
    PanelBuilder builder = slight.builder().mesh(new PanelMesh.Auto(40)).report(x, top.y(0.5));
    PanelResult real = PanelSolver.solve(builder.build(), List.of(load));
    PanelResult thin = PanelSolver.solve(builder.thin(true).build(), List.of(load));
    double size = Math.max(-thin.wMin().value(), thin.wMax().value());
    double allowed = (real.meshError() + thin.meshError()) * size;
    assertTrue(allowed < 0.05 * size, "mesh error " + allowed / size);
    assertEquals(thin.report().get(0).w(), real.report().get(0).w(), allowed);
  }

  @Property(tries = 10)
  void a_stiffer_top_never_deflects_more_under_its_load(
      @ForAll("tops") Top top,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double px,
      @ForAll @DoubleRange(min = 1.05, max = 2) double factor) {
    PanelMaterial m = top.material();
    PanelMaterial[] stiffer = {
      new PanelMaterial(factor * m.e1(), m.e2(), m.g12(), m.g13(), m.g23(), 0, 0),
      new PanelMaterial(m.e1(), factor * m.e2(), m.g12(), m.g13(), m.g23(), 0, 0),
      new PanelMaterial(m.e1(), m.e2(), factor * m.g12(), m.g13(), m.g23(), 0, 0),
      new PanelMaterial(m.e1(), m.e2(), m.g12(), factor * m.g13(), m.g23(), 0, 0),
      new PanelMaterial(m.e1(), m.e2(), m.g12(), m.g13(), factor * m.g23(), 0, 0)
    };
    PanelLoad load = PanelLoad.point("top", top.x(px), top.y(0.2), 800);
    // One even mesh for all, so that only the wood differs.
    PanelMesh mesh = new PanelMesh.Even(12, 8);
    PanelMaterial plain = new PanelMaterial(m.e1(), m.e2(), m.g12(), m.g13(), m.g23(), 0, 0);
    double before = finest(top, plain, mesh, load);
    for (PanelMaterial material : stiffer) {
      assertTrue(finest(top, material, mesh, load) <= before * (1 + 1e-9), material.toString());
    }
  }

  /** Work of the load on the finer mesh: there energy theorems hold without extrapolation. */
  private static double finest(Top top, PanelMaterial material, PanelMesh mesh, PanelLoad load) {
    Panel panel = top.builder().material(material).mesh(mesh).build();
    PanelLoad.Patch patch = (PanelLoad.Patch) load;
    PanelField field = PanelSolver.solve(panel, List.of(load)).field();
    return -field.wAt(patch.at().x(), patch.at().y());
  }
}
