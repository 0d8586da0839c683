package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Nearest;

/**
 * What cannot be judged yet because a value it rests on was refused: the height decides about legs,
 * the legs about their joints, and so on. Belongs to one reading.
 */
final class Unsettled {

  private static final String FRAMES = "(height|endFrames|stretchers)\\b.*";
  private static final String EVERYTHING_PLACED =
      "(height|top|endFrames|stretchers|vises|weights)\\b.*";
  private static final String PLACED_BELOW_TOP = "(endFrames|stretchers|vises|weights)\\b.*";
  private static final String SIZES_OF_ALL =
      "height|top\\.(length|width|thickness|layers\\[\\d+]\\.thickness)";
  private static final List<String> KEYS =
      List.of(
          "bench",
          "units",
          "height",
          "wood",
          "gradedAs",
          "growth",
          "grainRun",
          "basis",
          "top",
          "endFrames",
          "everyEndFrame",
          "stretchers",
          "woods");

  private final Set<String> refused = new HashSet<>();
  private final List<Pattern> rests = new ArrayList<>();

  private Unsettled() {}

  static Unsettled by(List<Fault> faults) {
    Unsettled unsettled = new Unsettled();
    for (Fault fault : faults) {
      unsettled.refused.add(fault.keyPath());
      resting(fault.keyPath()).map(Pattern::compile).ifPresent(unsettled.rests::add);
    }
    return unsettled;
  }

  /**
   * Whether a key cannot be judged yet.
   *
   * @param key as the sketch names it
   * @param path of it in the file
   */
  boolean leavesOpen(String key, String path) {
    return holds(key) || holds(path) || rests.stream().anyMatch(p -> p.matcher(key).matches());
  }

  /** Whether a key or something within it was refused. */
  private boolean holds(String key) {
    return refused.stream().anyMatch(r -> r.equals(key) || r.startsWith(key + "."));
  }

  /** Notes a key that cannot stay; on the height and the sizes of the top nearly all rests. */
  void restsOn(String key) {
    refused.add(key);
    if (key.matches(SIZES_OF_ALL)) {
      rests.add(Pattern.compile(PLACED_BELOW_TOP));
    }
  }

  /** The keys of the sketch that rest on a key of the file. */
  private static Optional<String> resting(String path) {
    String first = path.replaceFirst("[.\\[].*", "");
    String part = Nearest.to(first, KEYS).orElse("");
    boolean isWood = path.endsWith(".wood") && !part.equals("woods");
    if (isWood || part.equals("wood") || part.equals("woods")) {
      return Optional.of("(.*\\.)?wood|basis|gradedAs");
    }
    return switch (part) {
      case "gradedAs" -> Optional.of("basis");
      case "units", "height" -> Optional.of(EVERYTHING_PLACED);
      case "top" ->
          path.matches("top\\.(fixing|grain|hold)\\b.*")
              ? Optional.empty()
              : Optional.of(EVERYTHING_PLACED);
      case "endFrames", "everyEndFrame" ->
          Optional.of(
              path.contains(".joint")
                  ? "endFrames\\[\\d+]\\." + partOfFrame(path) + "\\.joint\\b.*"
                  : FRAMES);
      case "stretchers" ->
          Optional.of(path.contains(".joint") ? "stretchers\\[\\d+]\\.joint\\b.*" : "stretchers.*");
      default -> Optional.empty();
    };
  }

  private static String partOfFrame(String path) {
    return path.contains("topRail") ? "topRail" : path.contains("foot") ? "foot" : "bottomRail";
  }
}
