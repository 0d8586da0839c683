package org.stoutwork.report.file.wood;

import java.util.List;
import java.util.stream.Collectors;
import org.stoutwork.wood.Wood;

/**
 * The wood that was taken for a name.
 *
 * @param asked the name
 * @param wood taken for it
 * @param others that bear the name too; empty if only one does
 */
public record Pick(String asked, Wood wood, List<Wood> others) {

  private static final int SHOWN = 4;

  /** Keeps its own copy. */
  public Pick {
    others = List.copyOf(others);
  }

  /** Whether other woods bear the name. */
  public boolean isChoice() {
    return !others.isEmpty();
  }

  /** The choice as a sentence for people. */
  public String sentence() {
    String some = others.stream().limit(SHOWN).map(Wood::key).collect(Collectors.joining(", "));
    int more = others.size() - SHOWN;
    return "\"%s\" is several woods: %s is shown; it could also be %s%s."
        .formatted(asked, wood.key(), some, more > 0 ? " and " + more + " more" : "");
  }
}
