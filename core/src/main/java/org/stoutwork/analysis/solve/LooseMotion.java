package org.stoutwork.analysis.solve;

import java.util.Locale;
import org.stoutwork.analysis.model.Direction;

/** Puts a motion that meets no resistance into words. */
final class LooseMotion {
  private LooseMotion() {}

  /**
   * Names the vertex and direction that move most; rotations count at the characteristic length.
   */
  static Loose name(Equations equations, double[] motion, String why) {
    int most = 0;
    double best = -1;
    for (int i = 0; i < motion.length; i++) {
      double size = Math.abs(i % 6 < 3 ? motion[i] : motion[i] * equations.reach());
      // A later unknown must be clearly larger, so that rounding does not choose the name.
      if (size > best * (1 + 1e-6)) {
        best = size;
        most = i;
      }
    }
    String part = equations.vertexOf(most);
    String direction = Direction.of(most % 6).inWords();
    String message =
        String.format(
            Locale.ROOT,
            "%s '%s' %s; add a support, a joint or a brace that resists this motion",
            why,
            part,
            direction);
    return new Loose(part, direction, message);
  }
}
