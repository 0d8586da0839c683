package org.stoutwork.report.file.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.solve.ContactState;

/**
 * How the one-way contacts of one part ended: of a node or tie, which has one, or of a panel, which
 * has many along its supported lines.
 *
 * @param part the node, tie or panel
 * @param state {@code touching}, {@code lifted} or {@code partly lifted}
 * @param force sum of what they push with, N
 * @param gap the widest, mm
 */
public record ContactSummary(String part, String state, double force, double gap) {

  /**
   * Sums contacts up by part.
   *
   * @param states every contact
   * @return one summary a part, in the order of first appearance
   */
  public static List<ContactSummary> of(List<ContactState> states) {
    Map<String, List<ContactState>> parts = new LinkedHashMap<>();
    states.forEach(s -> parts.computeIfAbsent(s.part(), part -> new ArrayList<>()).add(s));
    return parts.entrySet().stream().map(e -> sum(e.getKey(), e.getValue())).toList();
  }

  private static ContactSummary sum(String part, List<ContactState> states) {
    long touching = states.stream().filter(ContactState::touching).count();
    String lifted = touching == 0 ? "lifted" : "partly lifted";
    return new ContactSummary(
        part,
        touching == states.size() ? "touching" : lifted,
        states.stream().mapToDouble(ContactState::force).sum(),
        states.stream().mapToDouble(ContactState::gap).max().orElse(0));
  }
}
