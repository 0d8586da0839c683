package org.stoutwork.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.section.Rectangle;

/** A row of members in one line that stands for one part. */
final class Chain {

  /**
   * A node on the line.
   *
   * @param node its name
   * @param at its place along the line, mm
   */
  record Stop(String node, double at) {}

  private final FrameModelBuilder model;
  private final String part;
  private final Rectangle section;
  private final List<Piece> pieces = new ArrayList<>();
  private boolean deepened;

  Chain(FrameModelBuilder model, String part, Rectangle section) {
    this.model = model;
    this.part = part;
    this.section = section;
  }

  /** Adds section and material of the part under its own name. */
  static void stuff(
      FrameModelBuilder model, String part, Rectangle section, FrameTimber timber, double density) {
    model.section(part, crossSection(section));
    model.material(part, timber.e(), timber.g(), density);
  }

  static CrossSection crossSection(Rectangle r) {
    return new CrossSection(
        r.area(),
        r.secondMoment(),
        r.turned().secondMoment(),
        r.torsionConstant(),
        r.shearArea(),
        r.shearArea());
  }

  /** Joins the stops by members of one section, the first and last end as given. */
  List<Piece> through(List<Stop> stops, double startsAt, MemberEnd start, MemberEnd end) {
    return through(stops, startsAt, start, end, at -> section, at -> 0);
  }

  /**
   * Joins the stops by members whose section is that in the middle of their length.
   *
   * @param liftAt how far the axis of a member lies above the line of the stops between the first
   *     and the last, mm
   */
  List<Piece> through(
      List<Stop> stops,
      double startsAt,
      MemberEnd start,
      MemberEnd end,
      DoubleFunction<Rectangle> sectionAt,
      DoubleUnaryOperator liftAt) {
    for (int i = 0; i + 1 < stops.size(); i++) {
      boolean first = i == 0;
      boolean last = i + 2 == stops.size();
      double middle = (stops.get(i).at() + stops.get(i + 1).at()) / 2;
      Rectangle own = sectionAt.apply(middle);
      MemberEnd between = MemberEnd.RIGID.offset(0, 0, liftAt.applyAsDouble(middle));
      String name = stops.size() == 2 ? part : part + ", length " + (i + 1);
      model.member(
          name,
          stops.get(i).node(),
          stops.get(i + 1).node(),
          sectionName(own),
          part,
          0,
          first ? start : between,
          last ? end : between);
      pieces.add(new Piece(name, first ? 0 : stops.get(i).at() - startsAt, own));
    }
    return pieces;
  }

  /** The part's own section, or one made for a deeper length of it. */
  private String sectionName(Rectangle own) {
    if (own.equals(section)) {
      return part;
    }
    String name = part + ", deepened";
    if (!deepened) {
      model.section(name, crossSection(own));
      deepened = true;
    }
    return name;
  }
}
