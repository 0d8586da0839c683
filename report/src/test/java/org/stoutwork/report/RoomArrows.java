package org.stoutwork.report;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which room of the report may use which, lowest first: a room stands under all that it uses. Rooms
 * of the core come after the semicolon; what the core hands outward is {@code result}, and only the
 * frame file and the command look at an analysis.
 */
final class RoomArrows {

  static final String HOME = "org.stoutwork.report.";
  static final String CORE = "org.stoutwork.";

  private static final String TABLE =
      """
      drawing             :
      drawing.draughting  : drawing
      units               : ; quantity
      figure              : drawing, drawing.draughting, units; quantity, bench, result
      figure.joint        : drawing, drawing.draughting, units; quantity, fastener, joint, bench

      sheet               : drawing; working, result
      sheet.page          : drawing, sheet
      sheet.math          : drawing; quantity, working
      sheet.layout        : drawing, sheet, sheet.page, sheet.math; quantity, source, working
      pdf                 : drawing, sheet, sheet.page, sheet.layout
      sheet.bench         : drawing, units, figure, figure.joint, sheet; quantity, source,
                            working, wood, wood.time, wood.moisture, fastener, joint, bench,
                            action, result
      print               : sheet, sheet.layout, sheet.bench, pdf; result

      file.tree           :
      file.field          : file.tree; quantity
      file.frame          : file.tree, file.field; quantity, analysis.model, analysis.element,
                            analysis.solve
      file.wood           : file.tree; quantity, source, working, wood, wood.moisture
      file.bench          : file.tree, file.field; quantity, wood, wood.time, wood.moisture,
                            wood.grade, wood.catalogue, fastener, joint.setting, bench,
                            bench.sketch
      file.result         : file.tree, file.frame; quantity, source, working, analysis.model,
                            bench, action, result, check, study

      command             : units, sheet, sheet.bench, print, file.tree, file.field, file.frame,
                            file.wood, file.bench, file.result; quantity, source, wood,
                            wood.catalogue, analysis.model, analysis.element, analysis.solve,
                            bench, action, result, check, study
      """;

  private RoomArrows() {}

  /** The rooms that each room may use, in the order in which the house is built. */
  static Map<String, List<String>> all() {
    Map<String, List<String>> out = new LinkedHashMap<>();
    String joined = TABLE.replaceAll("([,;])\\s+", "$1 ");
    for (String row : joined.lines().filter(line -> !line.isBlank()).toList()) {
      int colon = row.indexOf(':');
      List<String> used =
          Arrays.stream(row.substring(colon + 1).split("[,;]"))
              .map(String::strip)
              .filter(room -> !room.isEmpty())
              .toList();
      out.put(row.substring(0, colon).strip(), used);
    }
    return out;
  }
}
