package org.stoutwork.reference.frames;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.TreeMap;

/**
 * Largest differences between found and expected values, each kind (translations, rotations,
 * forces, moments) relative to the largest expected value of its kind, with the floors of the
 * reference set.
 */
final class Differences {
  private final Map<String, Double> size = new TreeMap<>();
  private final Map<String, Double> difference = new TreeMap<>();

  void displacements(JsonNode expected, double[] found) {
    six(expected, found, "translation", "rotation");
  }

  void forces(JsonNode expected, double[] found) {
    six(expected, found, "force", "moment");
  }

  private void six(JsonNode expected, double[] found, String first, String second) {
    for (int i = 0; i < 6; i++) {
      String kind = i < 3 ? first : second;
      double e = expected.get(i).asDouble();
      size.merge(kind, Math.abs(e), Math::max);
      difference.merge(kind, Math.abs(found[i] - e), Math::max);
    }
  }

  double largest() {
    double worst = 0;
    for (Map.Entry<String, Double> d : difference.entrySet()) {
      double scale = size.get(d.getKey());
      if (d.getKey().equals("rotation")) {
        scale = Math.max(scale, size.get("translation") / 1000);
      } else if (d.getKey().equals("moment")) {
        scale = Math.max(scale, size.get("force"));
      }
      worst = Math.max(worst, d.getValue() == 0 ? 0 : d.getValue() / scale);
    }
    return worst;
  }
}
