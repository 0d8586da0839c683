package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.sheet.page.Piece;

/**
 * A strip across the column that is never split.
 *
 * @param height mm
 * @param before empty height above it, mm, dropped at the head of a page
 * @param bond to the next band
 * @param pieces with the band's upper left corner as origin
 * @param running what is repeated above the band where it begins a page, such as a table's head
 * @param anchors names that stand for the band's page
 * @param outline entry of the outline, if the band begins one
 * @param newPage whether the band must begin a page
 */
record Band(
    double height,
    double before,
    Bond bond,
    List<Piece> pieces,
    List<Band> running,
    List<String> anchors,
    Optional<Entry> outline,
    boolean newPage) {

  /** An entry of the outline before its page is known. */
  record Entry(int level, String text) {}

  static Band of(double height, List<Piece> pieces) {
    return new Band(
        height, 0, Bond.FREE, List.copyOf(pieces), List.of(), List.of(), Optional.empty(), false);
  }

  Band spaced(double space) {
    return new Band(height, before + space, bond, pieces, running, anchors, outline, newPage);
  }

  Band bonded(Bond other) {
    return new Band(
        height, before, bond.atLeast(other), pieces, running, anchors, outline, newPage);
  }

  Band under(List<Band> head) {
    return new Band(height, before, bond, pieces, List.copyOf(head), anchors, outline, newPage);
  }

  Band anchored(String name) {
    if (name.isEmpty()) {
      return this;
    }
    List<String> names = new ArrayList<>(anchors);
    names.add(name);
    return new Band(height, before, bond, pieces, running, List.copyOf(names), outline, newPage);
  }

  Band listed(Entry entry) {
    return new Band(height, before, bond, pieces, running, anchors, Optional.of(entry), newPage);
  }

  Band onNewPage() {
    return new Band(height, before, bond, pieces, running, anchors, outline, true);
  }

  /** The band with other pieces behind its own and its own moved, in a taller strip. */
  Band framed(List<Piece> behind, double dx, double dy, double newHeight) {
    List<Piece> all = new ArrayList<>(behind);
    pieces.forEach(p -> all.add(p.moved(dx, dy)));
    return new Band(newHeight, before, bond, List.copyOf(all), running, anchors, outline, newPage);
  }

  double runningHeight() {
    return running.stream().mapToDouble(b -> b.before + b.height).sum();
  }
}
