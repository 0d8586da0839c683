package org.stoutwork.reference.plates;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Panel;
import org.stoutwork.analysis.model.PanelBuilder;
import org.stoutwork.analysis.model.PanelEdge;
import org.stoutwork.analysis.model.PanelLine;
import org.stoutwork.analysis.model.PanelLoad;
import org.stoutwork.analysis.model.PanelMaterial;
import org.stoutwork.analysis.model.PanelSupport;

/** One row of {@code plates.csv}: a plate, a place on it, and what is known to happen there. */
record PlateCase(Map<String, String> row) {
  /** All rows of the file beside this class. */
  static List<PlateCase> all() {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                PlateCase.class.getResourceAsStream("plates.csv"), StandardCharsets.UTF_8))) {
      List<String> names = split(in.readLine());
      List<PlateCase> cases = new ArrayList<>();
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        List<String> values = split(line);
        Map<String, String> row = new HashMap<>();
        for (int k = 0; k < names.size(); k++) {
          row.put(names.get(k), k < values.size() ? values.get(k) : "");
        }
        cases.add(new PlateCase(row));
      }
      return cases;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> split(String line) {
    List<String> values = new ArrayList<>();
    StringBuilder value = new StringBuilder();
    boolean quoted = false;
    for (int k = 0; k < line.length(); k++) {
      char c = line.charAt(k);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        values.add(value.toString());
        value.setLength(0);
      } else {
        value.append(c);
      }
    }
    values.add(value.toString());
    return values;
  }

  String id() {
    return row.get("id");
  }

  double number(String column) {
    return Double.parseDouble(row.get(column));
  }

  boolean has(String column) {
    return !row.get(column).isEmpty();
  }

  double x() {
    return number("point_x_mm");
  }

  double y() {
    return number("point_y_mm");
  }

  /** True at a corner of a bench top that stands on lines away from it. */
  boolean isFreeCorner() {
    boolean side = x() == 0 || x() == number("a_mm");
    boolean end = y() == 0 || y() == number("b_mm");
    return row.get("supports").contains("lines x=200") && side && end;
  }

  /** The plate with all places of the case reported, in the order of {@code places}. */
  Panel panel(List<PlateCase> places) {
    double a = number("a_mm");
    double b = number("b_mm");
    PanelBuilder builder =
        Panel.builder("plate", a, b, number("h_mm"))
            .material(
                new PanelMaterial(
                    number("E1_MPa"),
                    number("E2_MPa"),
                    number("G12_MPa"),
                    number("G13_MPa"),
                    number("G23_MPa"),
                    number("nu12"),
                    0))
            .thin(row.get("theory").equals("Kirchhoff"));
    for (PanelSupport support : supports(a, b)) {
      builder.support(support);
    }
    for (PlateCase place : places) {
      builder.report(place.x(), place.y());
    }
    return builder.build();
  }

  private List<PanelSupport> supports(double a, double b) {
    String text = row.get("supports");
    List<PanelSupport> supports = new ArrayList<>();
    if (text.startsWith("w=0 on lines x=")) {
      String places = text.substring("w=0 on lines x=".length(), text.indexOf(' ', 15));
      for (String x : places.split(";", -1)) {
        supports.add(PanelSupport.knifeEdge(PanelLine.x(Double.parseDouble(x))));
      }
      return supports;
    }
    for (PanelEdge edge : PanelEdge.values()) {
      boolean leftOrRight = edge == PanelEdge.LEFT || edge == PanelEdge.RIGHT;
      if (text.startsWith("clamped on all edges")) {
        supports.add(PanelSupport.clamped(edge.line(a, b)));
      } else if (text.startsWith("simply supported on all edges") || leftOrRight) {
        supports.add(PanelSupport.hard(edge.line(a, b)));
      }
    }
    return supports;
  }

  List<PanelLoad> loads() {
    String[] parts = row.get("load").split(":", -1);
    double[] v = new double[parts.length];
    for (int k = 1; k < parts.length; k++) {
      v[k] = Double.parseDouble(parts[k]);
    }
    return switch (parts[0]) {
      case "udl" -> List.of(PanelLoad.pressure("plate", v[1]));
      case "point" -> List.of(PanelLoad.point("plate", v[2], v[3], v[1]));
      case "patch" -> List.of(PanelLoad.patch("plate", v[2], v[3], v[4], v[5], v[1]));
      default -> throw new IllegalStateException("unknown load " + row.get("load"));
    };
  }
}
