package org.stoutwork.joint.glue;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * How the grain meets in the glued faces of a joint: along on along, along across along, or end
 * grain, on which glue is not counted. Written into the working of a glue line so that a reader
 * sees which part of the glued area carries.
 */
public final class GrainShares {

  private static final Source GEOMETRY = Source.derived("geometry");

  private static final Formula TENON_CROSSED =
      Formula.define("A_x")
          .meaning("cheeks: long grain crosses long grain")
          .unit(Unit.MM2)
          .where("n", "number of tenons", Unit.ONE)
          .where("h", "tenon height", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .as("2*n*h*l")
          .source(GEOMETRY);

  private static final Formula TENON_END =
      Formula.define("A_e")
          .meaning("edges, end and shoulder of the tenon: end grain of one piece")
          .unit(Unit.MM2)
          .where("n", "number of tenons", Unit.ONE)
          .where("t", "tenon thickness", Unit.MM)
          .where("l", "tenon length", Unit.MM)
          .where("d_r", "rail depth", Unit.MM)
          .where("b_r", "rail thickness", Unit.MM)
          .where("A_t", "ends of tenons that come through, unglued", Unit.MM2)
          .as("2*n*t*l + d_r*b_r - A_t")
          .source(GEOMETRY);

  private static final Formula BRIDLE_CROSSED =
      Formula.define("A_x")
          .meaning("faces of the bridle: long grain crosses long grain")
          .unit(Unit.MM2)
          .where("n_f", "number of faces", Unit.ONE)
          .where("p", "post depth", Unit.MM)
          .where("d_r", "rail depth", Unit.MM)
          .as("n_f*p*d_r")
          .source(GEOMETRY);

  private static final Formula BRIDLE_END =
      Formula.define("A_e")
          .meaning("bottom of the slot and shoulders: end grain of one piece")
          .unit(Unit.MM2)
          .where("t_t", "thickness of all tongues", Unit.MM)
          .where("p", "post depth", Unit.MM)
          .where("b_r", "rail thickness", Unit.MM)
          .where("d_r", "rail depth", Unit.MM)
          .as("t_t*p + (b_r - t_t)*d_r")
          .source(GEOMETRY);

  private static final Formula LAP_END =
      Formula.define("A_e")
          .meaning("shoulders of both halves: end grain of one piece")
          .unit(Unit.MM2)
          .where("t_r", "thickness left on the rail", Unit.MM)
          .where("p", "post depth", Unit.MM)
          .where("b_r", "rail thickness", Unit.MM)
          .where("d_r", "rail depth", Unit.MM)
          .as("2*t_r*p + (b_r - t_r)*d_r")
          .source(GEOMETRY);

  private static final Formula DOWEL_ALONG =
      Formula.define("A_l")
          .meaning("dowels in the rail: long grain on long grain")
          .unit(Unit.MM2)
          .where("n", "number of dowels", Unit.ONE)
          .where("d", "dowel diameter", Unit.MM)
          .where("l_r", "length in the rail", Unit.MM)
          .as("n*π*d*l_r")
          .source(GEOMETRY);

  private static final Formula DOWEL_CROSSED =
      Formula.define("A_x")
          .meaning("dowels in the post: long grain crosses long grain")
          .unit(Unit.MM2)
          .where("n", "number of dowels", Unit.ONE)
          .where("d", "dowel diameter", Unit.MM)
          .where("l_p", "length in the post", Unit.MM)
          .as("n*π*d*l_p")
          .source(GEOMETRY);

  private static final Formula DOWEL_END =
      Formula.define("A_e")
          .meaning("end of the rail beside the dowels: end grain")
          .unit(Unit.MM2)
          .where("d_r", "rail depth", Unit.MM)
          .where("b_r", "rail thickness", Unit.MM)
          .where("n", "number of dowels", Unit.ONE)
          .where("d", "dowel diameter", Unit.MM)
          .as("d_r*b_r - n*π*d^2/4")
          .source(GEOMETRY);

  private static final Formula ALONG_SHARE =
      share("s_l", "part of the glued faces where long grain meets long grain", "A_l");

  private static final Formula CROSSED_SHARE =
      share("s_x", "part of the glued faces where long grain crosses", "A_x");

  private static final Formula END_SHARE =
      share("s_e", "part of the glued faces on end grain, not counted", "A_e");

  private GrainShares() {}

  private static Formula share(String symbol, String meaning, String of) {
    return Formula.define(symbol)
        .meaning(meaning)
        .where("A_l", "long grain on long grain", Unit.MM2)
        .where("A_x", "long grain crossing", Unit.MM2)
        .where("A_e", "end grain", Unit.MM2)
        .as(of + "/(A_l + A_x + A_e)")
        .source(GEOMETRY);
  }

  /**
   * Areas by the way the grain meets, mm².
   *
   * @param along long grain on long grain
   * @param crossed long grain across long grain
   * @param end end grain, not counted
   */
  public record Areas(double along, double crossed, double end) {

    /** Writes the three parts of the whole. */
    Areas written(Pad pad) {
      pad.take(ALONG_SHARE, along, crossed, end);
      pad.take(CROSSED_SHARE, along, crossed, end);
      pad.take(END_SHARE, along, crossed, end);
      return this;
    }
  }

  /**
   * Of one or more tenons.
   *
   * @param through whether the ends of the tenons come through and are not glued
   */
  public static Areas tenon(
      Pad pad,
      int n,
      double h,
      double t,
      double l,
      double railDepth,
      double railB,
      boolean through) {
    double crossed = pad.take(TENON_CROSSED, n, h, l);
    double open = through ? n * t * h : 0;
    double end = pad.take(TENON_END, n, t, l, railDepth, railB, open);
    return new Areas(0, crossed, end).written(pad);
  }

  /** Of a bridle. */
  public static Areas bridle(
      Pad pad, int faces, double tongues, double postDepth, double railDepth, double railB) {
    double crossed = pad.take(BRIDLE_CROSSED, faces, postDepth, railDepth);
    double end = pad.take(BRIDLE_END, tongues, postDepth, railB, railDepth);
    return new Areas(0, crossed, end).written(pad);
  }

  /** Of a half-lap. */
  public static Areas lap(
      Pad pad, double railPart, double postDepth, double railDepth, double railB) {
    double crossed = pad.take(BRIDLE_CROSSED, 1, postDepth, railDepth);
    double end = pad.take(LAP_END, railPart, postDepth, railB, railDepth);
    return new Areas(0, crossed, end).written(pad);
  }

  /** Of dowels in a butt joint. */
  public static Areas dowels(
      Pad pad, int n, double d, double inRail, double inPost, double railDepth, double railB) {
    double along = pad.take(DOWEL_ALONG, n, d, inRail);
    double crossed = pad.take(DOWEL_CROSSED, n, d, inPost);
    double end = pad.take(DOWEL_END, railDepth, railB, n, d);
    return new Areas(along, crossed, end).written(pad);
  }
}
