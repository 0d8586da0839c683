package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Puts bands on pages. Bands that hold on to each other are tried as a group; a group that no page
 * can hold is parted at its weakest bonds. A last page that would carry a few lines only takes some
 * from the page before it.
 */
final class Paginator {

  private static final double SLACK = 1e-6;

  /** Share of a page below which the last one is filled up from the page before it. */
  private static final double THIN = 0.25;

  /** Shares of the page before that are tried in turn to fill up a thin last page. */
  private static final double[] SHORTER = {0.9, 0.8, 0.7, 0.6, 0.5};

  private final double height;
  private final int shortened;
  private final double share;
  private final List<List<PlacedBand>> pages = new ArrayList<>();
  private double used;

  private Paginator(double height, int shortened, double share) {
    this.height = height;
    this.shortened = shortened;
    this.share = share;
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
    List<List<Band>> groups = parted(bands, Bond.FREE);
    Paginator whole = filled(groups, new Paginator(height, -1, 1));
    int last = whole.pages.size() - 1;
    if (last == 0 || whole.used >= THIN * height) {
      return whole.pages;
    }
    for (double share : SHORTER) {
      Paginator other = filled(groups, new Paginator(height, last - 1, share));
      if (other.pages.size() == whole.pages.size() && other.used >= THIN * height) {
        return other.pages;
      }
    }
    return whole.pages;
  }

  private static Paginator filled(List<List<Band>> groups, Paginator paginator) {
    groups.forEach(paginator::place);
    return paginator;
  }

  /** Height up to which the present page is filled with more than one group. */
  private double limit() {
    boolean shorter = pages.size() - 1 == shortened && !current().isEmpty();
    return shorter ? share * height : height;
  }

  private void place(List<Band> group) {
    if (group.get(0).newPage() && !current().isEmpty()) {
      turn();
    }
    if (used + heightOf(group, current().isEmpty()) <= limit() + SLACK) {
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
