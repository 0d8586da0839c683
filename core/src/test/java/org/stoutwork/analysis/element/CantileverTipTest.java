package org.stoutwork.analysis.element;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.Vec3;

class CantileverTipTest {
  private static final double L = 830;
  private static final CrossSection SECTION =
      new CrossSection(3100, 2.3e6, 0.9e6, 1.7e6, 2600, 2500);
  private static final Material ASH = new Material(12300, 780, 650);

  private static Beam beam() {
    FrameModel model =
        FrameModel.builder()
            .node("wall", 0, 0, 0)
            .node("tip", L, 0, 0)
            .material("ash", 12300, 780, 650)
            .section("bar", SECTION)
            .member("bar", "wall", "tip", "bar", "ash")
            .build();
    return new Beam(model, model.members().get("bar"), 0, 1);
  }

  private static double[] integrated(SpanLoad load) {
    double[] start = load.resultant();
    for (int i = 0; i < 6; i++) {
      start[i] = -start[i];
    }
    BeamField field = new BeamField(SECTION, ASH, load, start, new double[6]);
    double[] tip = new double[6];
    for (int i = 0; i < 6; i++) {
      tip[i] = field.displacement(i).atEnd();
    }
    return tip;
  }

  private static Vec3 vector(Random r, double size) {
    return new Vec3(
        size * (2 * r.nextDouble() - 1),
        size * (2 * r.nextDouble() - 1),
        size * (2 * r.nextDouble() - 1));
  }

  @Property(tries = 200)
  void the_tip_moves_as_the_integrated_beam_does(@ForAll long seed) {
    Random r = new Random(seed);
    SpanLoad.Builder builder = SpanLoad.on(beam());
    for (int k = 0; k < r.nextInt(4); k++) {
      double at = L * r.nextDouble();
      builder.add(
          1.3, new Load.OnMemberPoint("bar", at, vector(r, 700), vector(r, 9e4), Load.Axes.LOCAL));
    }
    for (int k = 0; k <= r.nextInt(3); k++) {
      double from = L * r.nextDouble();
      double to = from + (L - from) * r.nextDouble();
      builder.add(
          0.7, new Load.OnMemberLine("bar", from, to, vector(r, 3), vector(r, 3), Load.Axes.LOCAL));
    }
    SpanLoad load = builder.build();
    double[] tip = new CantileverTip(L, SECTION, ASH).under(load);
    double[] whole = integrated(load);
    double size = Math.abs(whole[0]) + Math.abs(whole[1]) + Math.abs(whole[2]);
    for (int i = 0; i < 6; i++) {
      assertEquals(whole[i], tip[i], 1e-11 * (i < 3 ? size : size / 100), "direction " + i);
    }
  }

  @Test
  void a_load_that_grows_from_the_wall_moves_the_tip_by_eleven_over_120() {
    // q L⁴ / E I · 11/120 for q x / L, and its shear q L² / (3 G A_s).
    SpanLoad load =
        SpanLoad.on(beam())
            .add(
                1,
                new Load.OnMemberLine(
                    "bar", 0, L, Vec3.ZERO, new Vec3(0, 0, -1.7), Load.Axes.LOCAL))
            .build();
    double expected =
        -1.7 * (11.0 / 120 * Math.pow(L, 4) / (12300 * 2.3e6) + L * L / (3 * 780.0 * 2500));
    assertEquals(
        expected, new CantileverTip(L, SECTION, ASH).under(load)[2], 1e-12 * Math.abs(expected));
  }
}
