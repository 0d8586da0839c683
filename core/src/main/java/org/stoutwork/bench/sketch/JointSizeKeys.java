package org.stoutwork.bench.sketch;

import java.util.Map;
import org.stoutwork.joint.JointFault;

/** Finds the size a maker would change for each thing that can be wrong with a joint. */
final class JointSizeKeys {

  /** Parts that are one of the maker's own sizes. */
  private static final Map<String, String> SIZES =
      Map.ofEntries(
          Map.entry("tenon thickness", "tenonThickness"),
          Map.entry("tongue thickness", "tenonThickness"),
          Map.entry("tenon height", "tenonHeight"),
          Map.entry("tenon length", "tenonLength"),
          Map.entry("shoulder below the tenon", "shoulderBelow"),
          Map.entry("number of tenons", "tenons"),
          Map.entry("number of tongues", "tenons"),
          Map.entry("haunch height", "haunchHeight"),
          Map.entry("haunch length", "haunchLength"),
          Map.entry("play of the tenon", "play"),
          Map.entry("number of wedges", "wedges"),
          Map.entry("length of the kerf", "kerfDepth"),
          Map.entry("distance of the kerf from the edge", "kerfFromEdge"),
          Map.entry("spread of the tenon", "wedgeSpread"),
          Map.entry("number of pegs", "pegs"),
          Map.entry("drawbore offset", "drawboreOffset"),
          Map.entry("distance of the peg from the shoulder", "pegFromShoulder"),
          Map.entry("number of bolts", "bolts"),
          Map.entry("bolt spacing", "boltSpacing"),
          Map.entry("distance of the nut from the rail's end", "nutFromEnd"),
          Map.entry("preload", "preload"),
          Map.entry("number of dowels", "dowels"),
          Map.entry("dowel diameter", "dowelDiameter"),
          Map.entry("relish beyond the wedge", "relish"),
          Map.entry("wedge thickness", "wedgeThickness"),
          Map.entry("wedge width", "wedgeWidth"),
          Map.entry("number of screws", "screws"),
          Map.entry("screw diameter", "screwDiameter"),
          Map.entry("length of the screw", "screwLength"),
          Map.entry("distance of the screws from the edge", "screwFromEdge"),
          Map.entry("hole drilled for the screw", "screwPilot"),
          Map.entry("depth of the housing", "lapDepth"),
          Map.entry("thickness left on the rail", "lapDepth"));

  /** Parts that follow from one of the maker's sizes. */
  private static final Map<String, String> FOLLOWING =
      Map.ofEntries(
          Map.entry("height taken by the screws", "screwFromEdge"),
          Map.entry("tenon height with the shoulder below", "tenonHeight"),
          Map.entry("peg spacing", "pegs"),
          Map.entry("height taken by the pegs", "pegs"),
          Map.entry("washer diameter", "washerDiameter"),
          Map.entry("dowel spacing", "dowels"),
          Map.entry("height taken by the dowels", "dowels"),
          Map.entry("edge distance of the dowel", "dowelDiameter"),
          Map.entry("length of dowel in the post", "dowelLength"),
          Map.entry("length of dowel in the rail", "dowelLength"),
          Map.entry("middle of the tenon over the rail's lower edge", "shoulderBelow"));

  private JointSizeKeys() {}

  /** The key of the size to change; that of the joint where no one size is to blame. */
  static String keyOf(String joint, JointFault fault) {
    String size = SIZES.getOrDefault(fault.part(), FOLLOWING.get(fault.part()));
    return size == null ? joint : joint + "." + size;
  }

  /** Whether the key already says which part is meant. */
  static boolean saysIt(JointFault fault) {
    return SIZES.containsKey(fault.part());
  }
}
