package org.stoutwork.assembly;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.TopLayer;

/**
 * The masses of the wooden parts, kg, from volume and density. Tenons fill their mortises, so a
 * part counts from shoulder to shoulder and a leg without its mortises.
 */
public final class Masses {

  private static final double MM3_PER_M3 = 1e9;

  private Masses() {}

  /** Mass of the top, kg. */
  static double topKg(Bench bench, Function<String, FrameTimber> timbers) {
    double area = bench.top().length().mm() * bench.top().width().mm() - TopHoles.areaMm2(bench);
    double kg = 0;
    for (TopLayer layer : bench.top().layers()) {
      kg += area * layer.thickness().mm() * timbers.apply(layer.wood()).density() / MM3_PER_M3;
    }
    return kg;
  }

  /** Mass of one leg, kg. */
  static double legKg(Bench bench, EndFrame frame, FrameTimber timber) {
    double height = Layout.legTop(bench, frame) - Layout.legBottom(frame);
    return frame.leg().along().mm()
        * frame.leg().across().mm()
        * height
        * timber.density()
        / MM3_PER_M3;
  }

  static double railKg(Rail rail, FrameTimber timber) {
    return rail.thickness().mm()
        * rail.depth().mm()
        * rail.length().mm()
        * timber.density()
        / MM3_PER_M3;
  }

  static double footKg(Foot foot, FrameTimber timber) {
    return foot.thickness().mm()
        * foot.depth().mm()
        * foot.length().mm()
        * timber.density()
        / MM3_PER_M3;
  }

  static double stretcherKg(Stretcher stretcher, double length, FrameTimber timber) {
    double glued =
        stretcher
            .extension()
            .map(e -> 2 * e.length().mm() * (e.depth().mm() - stretcher.depth().mm()))
            .orElse(0.0);
    double volume = stretcher.thickness().mm() * (stretcher.depth().mm() * length + glued);
    return volume * timber.density() / MM3_PER_M3;
  }

  /** Masses by part of the whole bench, without vises and weights, kg. */
  public static Map<String, Double> byPart(Bench bench, Function<String, FrameTimber> timbers) {
    Map<String, Double> out = new LinkedHashMap<>();
    out.put("top", topKg(bench, timbers));
    for (EndFrame frame : bench.endFrames()) {
      FrameTimber leg = timbers.apply(frame.leg().wood());
      out.merge("legs", 2 * legKg(bench, frame, leg), Double::sum);
      Rail top = frame.topRail();
      out.merge("top rails", railKg(top, timbers.apply(top.wood())), Double::sum);
      frame
          .bottomRail()
          .ifPresent(
              r -> out.merge("bottom rails", railKg(r, timbers.apply(r.wood())), Double::sum));
      frame
          .foot()
          .ifPresent(f -> out.merge("feet", footKg(f, timbers.apply(f.wood())), Double::sum));
    }
    for (Stretcher stretcher : bench.stretchers()) {
      FrameTimber timber = timbers.apply(stretcher.wood());
      for (int bay = 0; bay + 1 < bench.endFrames().size(); bay++) {
        double length = StretcherLines.clear(bench, stretcher, bay);
        out.merge("stretchers", stretcherKg(stretcher, length, timber), Double::sum);
      }
    }
    return out;
  }
}
