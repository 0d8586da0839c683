package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stoutwork.report.file.tree.ListNode;
import org.stoutwork.report.file.tree.MapNode;
import org.stoutwork.report.file.tree.Node;
import org.stoutwork.report.file.tree.Spot;

/**
 * How far a path leads into a file.
 *
 * @param path the whole path
 * @param spot of the last key on it that is there; the beginning of the file if none is
 * @param missing how many steps are missing at its end
 */
record FilePlace(String path, Spot spot, int missing) {

  private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[(\\d+)]");

  /** The path of several that leads to most of its end; the first of equals. */
  static FilePlace best(Node root, List<String> paths) {
    FilePlace best = along(root, paths.get(0));
    for (String path : paths.subList(1, paths.size())) {
      FilePlace next = along(root, path);
      best = next.missing < best.missing ? next : best;
    }
    return best;
  }

  private static FilePlace along(Node root, String path) {
    List<String> steps = steps(path);
    Node node = root;
    Spot spot = root.spot();
    int done = 0;
    while (done < steps.size()) {
      Optional<MapNode.Entry> next = step(node, steps.get(done));
      if (next.isEmpty()) {
        break;
      }
      spot = next.get().spot();
      node = next.get().value();
      done++;
    }
    return new FilePlace(path, spot, steps.size() - done);
  }

  private static List<String> steps(String path) {
    List<String> steps = new ArrayList<>();
    Matcher matcher = STEP.matcher(path);
    while (matcher.find()) {
      steps.add(matcher.group());
    }
    return steps;
  }

  private static Optional<MapNode.Entry> step(Node node, String step) {
    if (node instanceof MapNode map) {
      return map.entry(step);
    }
    if (node instanceof ListNode list && step.startsWith("[")) {
      int index = Integer.parseInt(step.substring(1, step.length() - 1));
      return index < list.items().size()
          ? Optional.of(
              new MapNode.Entry(step, list.items().get(index).spot(), list.items().get(index)))
          : Optional.empty();
    }
    return Optional.empty();
  }
}
