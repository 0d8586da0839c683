package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.stoutwork.bench.sketch.BenchFault;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Nearest;

/**
 * What cannot be judged yet because a value it rests on was refused: the height decides about legs,
 * the legs about their joints, and so on.
 *
 * @param rests patterns of the sketch's keys that rest on refused values
 */
record Unsettled(List<Pattern> rests) {

  private static final String FRAMES = "(height|endFrames|stretchers)\\b.*";
  private static final String EVERYTHING_PLACED =
      "(height|top|endFrames|stretchers|vises|weights)\\b.*";
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

  static Unsettled by(List<Fault> faults) {
    List<Pattern> rests = new ArrayList<>();
    faults.forEach(fault -> resting(fault.keyPath()).map(Pattern::compile).ifPresent(rests::add));
    return new Unsettled(List.copyOf(rests));
  }

  boolean decides(BenchFault fault) {
    return rests.stream().anyMatch(pattern -> pattern.matcher(fault.key()).matches());
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
