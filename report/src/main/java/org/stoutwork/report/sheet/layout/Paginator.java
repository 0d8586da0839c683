package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Puts bands on pages. Bands that hold on to each other are tried as a group; a group that no page
 * can hold is parted at its weakest bonds.
 */
final class Paginator {

  private static final double SLACK = 1e-6;

  private final double height;
  private final List<List<PlacedBand>> pages = new ArrayList<>();
  private double used;

  private Paginator(double height) {
    this.height = height;
    pages.add(new ArrayList<>());
  }

  /**
   * A band at its height below the top of the column.
   *
   * @param band what
   * @param top mm below the top of the column
   */
  record PlacedBand(Band band, double top) {}

  /** The bands of every page in a column of the given height. */
  static List<List<PlacedBand>> pages(List<Band> bands, double height) {
    Paginator paginator = new Paginator(height);
    for (List<Band> group : parted(bands, Bond.FREE)) {
      paginator.place(group);
    }
    return paginator.pages;
  }

  private void place(List<Band> group) {
    if (group.get(0).newPage() && !current().isEmpty()) {
      turn();
    }
    if (used + heightOf(group, current().isEmpty()) <= height + SLACK) {
      group.forEach(this::put);
    } else if (heightOf(group, true) <= height + SLACK) {
      turn();
      group.forEach(this::put);
    } else {
      part(group);
    }
  }

  private void part(List<Band> group) {
    if (group.size() == 1) {
      throw new LayoutFault(
          String.format(
              Locale.ROOT,
              "something %.1f mm high does not fit a page of %.1f mm; make it smaller",
              heightOf(group, true),
              height));
    }
    Bond weakest =
        group.subList(0, group.size() - 1).stream()
            .map(Band::bond)
            .min(Bond::compareTo)
            .orElseThrow();
    parted(group, weakest).forEach(this::place);
  }

  private void put(Band band) {
    boolean first = current().isEmpty();
    if (first) {
      for (Band head : band.running()) {
        add(head, current().isEmpty());
      }
      add(band, band.running().isEmpty());
    } else {
      add(band, false);
    }
  }

  private void add(Band band, boolean atTop) {
    double top = used + (atTop ? 0 : band.before());
    if (band.height() > 0 || !atTop) {
      current().add(new PlacedBand(band, top));
      used = top + band.height();
    }
  }

  private double heightOf(List<Band> group, boolean atTop) {
    double sum = 0;
    boolean first = atTop;
    for (Band band : group) {
      if (first) {
        sum += band.runningHeight();
      }
      sum += band.height() + (first && band.running().isEmpty() ? 0 : band.before());
      first = first && band.height() == 0;
    }
    return sum;
  }

  private List<PlacedBand> current() {
    return pages.get(pages.size() - 1);
  }

  private void turn() {
    pages.add(new ArrayList<>());
    used = 0;
  }

  /** The bands cut after every one whose bond is at most the given one. */
  private static List<List<Band>> parted(List<Band> bands, Bond weakest) {
    List<List<Band>> groups = new ArrayList<>();
    List<Band> group = new ArrayList<>();
    for (int i = 0; i < bands.size(); i++) {
      Band band = bands.get(i);
      if (!group.isEmpty() && band.newPage()) {
        groups.add(group);
        group = new ArrayList<>();
      }
      group.add(band);
      if (band.bond().compareTo(weakest) <= 0) {
        groups.add(group);
        group = new ArrayList<>();
      }
    }
    if (!group.isEmpty()) {
      groups.add(group);
    }
    return groups;
  }
}
