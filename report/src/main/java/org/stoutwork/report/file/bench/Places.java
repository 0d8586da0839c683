package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the parts of a sketch stand in the file. A sketch counts its parts one by one; a file may
 * say several at once, or have entries that were refused. Belongs to one reading.
 */
final class Places {

  private static final Pattern COUNTED = Pattern.compile("(\\w+)\\[(\\d+)](.*)");

  private final Map<String, List<String>> listed = new HashMap<>();
  private boolean alike;

  void endFramesAlike() {
    alike = true;
  }

  void endFrame(String place) {
    add("endFrames", place);
  }

  void stretcher(String place) {
    add("stretchers", place);
  }

  void vise(String place) {
    add("vises", place);
  }

  void weight(String place) {
    add("weights", place);
  }

  void action(String place) {
    add("actions", place);
  }

  private void add(String part, String place) {
    listed.computeIfAbsent(part, key -> new ArrayList<>()).add(place);
  }

  /**
   * The paths at which a key of the sketch may stand in the file, in order of preference.
   *
   * @param key as the sketch names it, such as {@code endFrames[0].legs.along}
   * @return at least one path of the file
   */
  List<String> of(String key) {
    String named = key.replaceFirst("\\.stiffnessMean$", ".stiffness");
    Matcher shape = COUNTED.matcher(named);
    if (!shape.matches()) {
      return List.of(named);
    }
    String part = shape.group(1);
    int index = Integer.parseInt(shape.group(2));
    String rest = shape.group(3);
    List<String> places = listed.getOrDefault(part, List.of());
    String place = index < places.size() ? places.get(index) : part;
    if (!part.equals("endFrames")) {
      return List.of(place + rest);
    }
    if (alike) {
      return List.of(rest.equals(".at") ? "endFrames.at[" + index + "]" : "endFrames" + rest);
    }
    return List.of(place + rest, "everyEndFrame" + rest);
  }

  /** Where the entries of a list stand, in file order; empty where the file has no such list. */
  List<String> listed(String part) {
    return List.copyOf(listed.getOrDefault(part, List.of()));
  }
}
