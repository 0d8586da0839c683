package org.stoutwork.report.file.bench;

import java.util.List;
import org.stoutwork.report.file.tree.MapNode;
import org.stoutwork.report.file.tree.Node;

/**
 * Where the maker would write in this file what was filled in: beside the keys that they wrote of
 * the same part, be that in the list of end frames or in what is said of all of them.
 *
 * @param root of the file
 * @param places of its parts
 */
record DefaultPlaces(Node root, Places places) {

  private static final String FRAMES = "endFrames";
  private static final String EVERY = "everyEndFrame";
  private static final String STRETCHERS = "stretchers";

  /**
   * The paths at which a default could be given.
   *
   * @param key as the sketch names it; without a number it is that of all end frames
   * @return one path, or one for each end frame
   */
  List<String> of(String key) {
    if (key.startsWith(FRAMES + ".")) {
      return ofAllFrames(key.substring(FRAMES.length()));
    }
    if (key.startsWith(STRETCHERS + "[") && places.listed(STRETCHERS).isEmpty()) {
      // Nobody listed any: both would be said by one entry of a new list.
      return List.of(key.replaceFirst("\\[\\d+]", "[0]"));
    }
    return List.of(FilePlace.best(root, places.of(key)).path());
  }

  private List<String> ofAllFrames(String rest) {
    List<String> frames = places.listed(FRAMES);
    if (frames.isEmpty()) {
      boolean every = root instanceof MapNode map && map.entry(EVERY).isPresent();
      return List.of(
          !every ? FRAMES + rest : rest.equals(".at") ? FRAMES + "[i]" + rest : EVERY + rest);
    }
    String every = EVERY + rest;
    boolean fits =
        frames.stream()
            .allMatch(one -> FilePlace.best(root, List.of(every, one + rest)).path().equals(every));
    return fits
        ? List.of(every)
        : frames.stream()
            .map(one -> FilePlace.best(root, List.of(one + rest, every)).path())
            .distinct()
            .toList();
  }
}
