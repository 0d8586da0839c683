package org.stoutwork;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which room of the core may use which, lowest first: a room stands under all that it uses. */
final class RoomArrows {

  static final String HOME = "org.stoutwork.";

  private static final String TABLE =
      """
      quantity            :
      source              :
      linear              :
      table               : source
      working             : quantity, source

      wood                : quantity, source
      wood.time           : quantity, source, table, wood
      wood.moisture       : quantity, source, table, working, wood, wood.time
      wood.direction      : quantity, source, working, wood, wood.moisture
      wood.grade          : quantity, source, table, working, wood
      wood.scatter        : quantity, source, table, working, wood
      wood.surface        : source, table, wood
      wood.catalogue      : quantity, source, table, wood
      wood.design         : quantity, source, table, working, wood, wood.time, wood.moisture,
                            wood.direction, wood.grade, wood.scatter, wood.surface,
                            wood.catalogue
      section             :

      analysis.model      :
      analysis.element    : linear, analysis.model
      analysis.solve      : linear, analysis.model, analysis.element

      fastener            : quantity, source
      fastener.lateral    : quantity, source, working, fastener
      fastener.placing    : quantity, source, working, fastener
      fastener.withdrawal : quantity, source, working, fastener

      joint               : quantity, fastener
      joint.setting       : joint
      joint.regression    : quantity, source, working
      joint.glue          : quantity, source, working, joint.setting
      joint.peg           : quantity, source, working, fastener, fastener.placing
      joint.bolted        : quantity, source, working, joint.setting
      joint.tenon         : quantity, source, working, section, fastener, joint.setting,
                            joint.glue
      joint.limit         : quantity, source, working, fastener, joint, joint.setting,
                            joint.glue, joint.tenon
      joint.screwed       : quantity, source, working, fastener, fastener.lateral,
                            fastener.placing, fastener.withdrawal, joint.setting, joint.limit
      joint.stiffness     : quantity, source, working, fastener, fastener.placing, joint,
                            joint.setting, joint.peg, joint.bolted, joint.tenon
      joint.capacity      : quantity, source, working, fastener, fastener.lateral,
                            fastener.placing, fastener.withdrawal, joint, joint.setting,
                            joint.glue, joint.peg, joint.regression, joint.bolted, joint.tenon, joint.limit,
                            joint.screwed
      joint.advice        : quantity, source, working, fastener, fastener.placing, joint,
                            joint.setting, joint.bolted, joint.tenon, joint.stiffness

      bench               : quantity, source, wood, wood.time, wood.moisture, wood.grade, fastener,
                            joint, joint.setting
      bench.sketch        : quantity, source, working, wood, wood.time, wood.moisture, wood.grade,
                            wood.catalogue, section, fastener, fastener.placing, joint,
                            joint.setting, joint.tenon, joint.advice, bench
      action              : quantity, source, wood.time, bench
      result              : quantity, source, working, bench, action
      assembly            : quantity, working, wood, wood.time, wood.moisture, wood.direction,
                            wood.grade, wood.design, section, analysis.model, fastener, joint,
                            joint.setting, joint.stiffness, bench

      check               : quantity, source, working, wood, wood.time, wood.moisture, wood.design,
                            analysis.model, analysis.solve, bench, action, result, assembly
      check.member        : quantity, source, working, wood, wood.time, wood.design, section,
                            analysis.model, analysis.solve, bench, action, result, assembly, check
      check.joint         : quantity, source, working, wood, wood.time, wood.moisture, wood.design,
                            section, analysis.model, analysis.solve, fastener, fastener.placing,
                            joint, joint.setting, joint.glue, joint.limit, joint.screwed,
                            joint.capacity, bench, action, result, assembly, check
      check.service       : quantity, source, working, analysis.model, analysis.solve,
                            joint.stiffness, bench, action, result, assembly, check
      check.stability     : quantity, source, working, analysis.model, analysis.solve, bench,
                            action, result, assembly, check
      check.movement      : quantity, source, working, wood, wood.time, wood.moisture, wood.design,
                            fastener, joint.glue, bench, result, check
      check.caution       : quantity, source, working, joint, bench, result

      study               : quantity, source, working, wood, wood.time, wood.catalogue, wood.design,
                            analysis.model, analysis.solve, fastener, joint, joint.stiffness,
                            joint.advice, bench, bench.sketch, action, result, assembly, check, check.member,
                            check.joint, check.service, check.stability, check.movement,
                            check.caution
      """;

  private RoomArrows() {}

  /** The rooms that each room may use, in the order in which the house is built. */
  static Map<String, List<String>> all() {
    Map<String, List<String>> out = new LinkedHashMap<>();
    for (String row : TABLE.replaceAll(",\\s+", ", ").lines().filter(l -> !l.isBlank()).toList()) {
      int colon = row.indexOf(':');
      List<String> used =
          Arrays.stream(row.substring(colon + 1).split(","))
              .map(String::strip)
              .filter(room -> !room.isEmpty())
              .toList();
      out.put(row.substring(0, colon).strip(), used);
    }
    return out;
  }
}
