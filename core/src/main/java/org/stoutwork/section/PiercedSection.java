package org.stoutwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A rectangle less several holes that may run into each other, such as mortises that meet in a leg.
 * Glued tenons still count as holes. Bent about an axis along b, parallel to it through the net
 * centroid.
 *
 * @param gross the whole rectangle
 * @param holes what is taken out; what lies outside the rectangle does not count
 */
public record PiercedSection(Rectangle gross, List<Hole> holes) implements Weakened {

  /** Part of the width below which a level counts as cut through. */
  private static final double CUT_THROUGH = 2e-3;

  /**
   * One hole, its sides measured from the middle of the rectangle.
   *
   * @param fromB least place along b, mm
   * @param toB greatest place along b, mm
   * @param fromH least place along h, mm
   * @param toH greatest place along h, mm
   */
  public record Hole(double fromB, double toB, double fromH, double toH) {

    /**
     * @throws IllegalArgumentException if an end lies before its start
     */
    public Hole {
      if (!(toB >= fromB && toH >= fromH)) {
        throw new IllegalArgumentException(
            "a hole must end after it begins; given %s to %s mm and %s to %s mm"
                .formatted(fromB, toB, fromH, toH));
      }
    }

    /** A hole by its middle and its sizes, mm. */
    public static Hole about(double atB, double atH, double sizeB, double sizeH) {
      return new Hole(atB - sizeB / 2, atB + sizeB / 2, atH - sizeH / 2, atH + sizeH / 2);
    }

    /** The same hole in the rectangle bent the other way. */
    public Hole turned() {
      return new Hole(fromH, toH, fromB, toB);
    }
  }

  /** A slice between two levels in which the width does not change. */
  private record Slice(double from, double to, double width) {

    double area() {
      return width * (to - from);
    }

    double middle() {
      return (from + to) / 2;
    }

    double secondMoment(double about) {
      double arm = middle() - about;
      return width * Math.pow(to - from, 3) / 12 + area() * arm * arm;
    }
  }

  /**
   * @throws IllegalArgumentException if the holes leave nothing of the rectangle
   */
  public PiercedSection {
    holes = List.copyOf(holes);
    double left = slices(gross, holes).stream().mapToDouble(Slice::area).sum();
    if (!(left > 1e-9 * gross.area())) {
      throw new IllegalArgumentException(
          "%s holes leave nothing of a section of %s mm × %s mm"
              .formatted(holes.size(), gross.b(), gross.h()));
    }
  }

  /** The same section bent the other way. */
  public PiercedSection turned() {
    return new PiercedSection(gross.turned(), holes.stream().map(Hole::turned).toList());
  }

  private static List<Slice> slices(Rectangle gross, List<Hole> holes) {
    double half = gross.h() / 2;
    TreeSet<Double> levels = new TreeSet<>(List.of(-half, half));
    for (Hole hole : holes) {
      levels.add(within(hole.fromH(), half));
      levels.add(within(hole.toH(), half));
    }
    List<Slice> out = new ArrayList<>();
    Double from = null;
    for (double to : levels) {
      if (from != null) {
        double middle = (from + to) / 2;
        out.add(new Slice(from, to, width(gross.b(), holes, middle)));
      }
      from = to;
    }
    return out;
  }

  private static double within(double value, double half) {
    return Math.max(-half, Math.min(half, value));
  }

  /** Width left at a level: holes side by side are added, where they overlap only once. */
  private static double width(double b, List<Hole> holes, double level) {
    List<Hole> here =
        holes.stream()
            .filter(h -> h.fromH() < level && level < h.toH())
            .sorted((p, q) -> Double.compare(p.fromB(), q.fromB()))
            .toList();
    double taken = 0;
    double done = -b / 2;
    for (Hole hole : here) {
      double from = Math.max(done, within(hole.fromB(), b / 2));
      double to = within(hole.toB(), b / 2);
      taken += Math.max(0, to - from);
      done = Math.max(done, to);
    }
    return b - taken;
  }

  private List<Slice> slices() {
    return slices(gross, holes);
  }

  @Override
  public double area() {
    return slices().stream().mapToDouble(Slice::area).sum();
  }

  /** Distance of the net centroid from the gross centroid, along h, mm. */
  public double centroid() {
    return slices().stream().mapToDouble(s -> s.area() * s.middle()).sum() / area();
  }

  /** Net second moment about the net centroid, mm⁴. */
  public double secondMoment() {
    double about = centroid();
    return slices().stream().mapToDouble(s -> s.secondMoment(about)).sum();
  }

  @Override
  public double sectionModulus() {
    double about = centroid();
    double farthest =
        slices().stream()
            .filter(s -> s.width() > 0)
            .mapToDouble(s -> Math.max(Math.abs(s.from() - about), Math.abs(s.to() - about)))
            .max()
            .orElseThrow();
    return secondMoment() / farthest;
  }

  /**
   * Area with which 1.5·V/A is the greatest shear stress, mm²: V·S/(I·b) at its worst level. Where
   * a level is cut through, the parts above and below it bend side by side, each taking shear as
   * its own second moment.
   */
  @Override
  public double shearArea() {
    List<List<Slice>> pieces = pieces();
    double whole = pieces.stream().mapToDouble(PiercedSection::own).sum();
    return pieces.stream()
        .mapToDouble(piece -> inOnePiece(piece) * whole / own(piece))
        .min()
        .orElseThrow();
  }

  private List<List<Slice>> pieces() {
    List<List<Slice>> out = new ArrayList<>();
    List<Slice> piece = new ArrayList<>();
    for (Slice slice : slices()) {
      if (slice.width() > CUT_THROUGH * gross.b()) {
        piece.add(slice);
      } else if (!piece.isEmpty()) {
        out.add(piece);
        piece = new ArrayList<>();
      }
    }
    if (!piece.isEmpty()) {
      out.add(piece);
    }
    return out;
  }

  private static double middle(List<Slice> piece) {
    double area = piece.stream().mapToDouble(Slice::area).sum();
    return piece.stream().mapToDouble(s -> s.area() * s.middle()).sum() / area;
  }

  private static double own(List<Slice> piece) {
    double about = middle(piece);
    return piece.stream().mapToDouble(s -> s.secondMoment(about)).sum();
  }

  /** The stress peaks at the centroid or where the width changes. */
  private static double inOnePiece(List<Slice> piece) {
    double about = middle(piece);
    double inertia = own(piece);
    double least = Double.POSITIVE_INFINITY;
    for (Slice slice : piece) {
      for (double level : List.of(slice.from(), slice.to(), about)) {
        if (level >= slice.from() && level <= slice.to()) {
          double beyond = firstMomentAbove(piece, level, about);
          if (beyond > 0) {
            least = Math.min(least, 1.5 * inertia * slice.width() / beyond);
          }
        }
      }
    }
    return least;
  }

  private static double firstMomentAbove(List<Slice> piece, double level, double about) {
    double sum = 0;
    for (Slice s : piece) {
      double from = Math.max(s.from(), level);
      if (s.to() > from) {
        sum += s.width() * (s.to() - from) * ((s.to() + from) / 2 - about);
      }
    }
    return sum;
  }
}
