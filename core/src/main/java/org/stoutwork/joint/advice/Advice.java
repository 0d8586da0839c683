package org.stoutwork.joint.advice;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;

/**
 * One proportion of the trade.
 *
 * @param part of the joint
 * @param words the rule as a maker would say it
 * @param least sensible value
 * @param most sensible value
 * @param unit of both
 * @param of what they are shares or multiples of where they have no unit, such as {@code of the
 *     rail's thickness}; empty otherwise
 * @param source always common practice, unless a document is named
 */
public record Advice(
    String part, String words, double least, double most, Unit unit, String of, Source source) {

  private static final Source TRADE = Source.commonPractice("joiners' proportions");
  private static final double NO_END = Double.POSITIVE_INFINITY;

  /** Tenon thickness over rail thickness. */
  public static final Advice TENON_THICKNESS =
      share(
          "tenon thickness",
          "a third of the rail, up to half for bench legs",
          0.3,
          0.5,
          "of the rail's thickness");

  /** Thickness of a stub tenon over the bore of the bolt that runs along it. */
  public static final Advice BORED_TENON =
      share(
          "bolted stub tenon",
          "twice the bore of its bolt or thicker",
          2,
          NO_END,
          "times the bore of its bolt");

  /** Tenon length over post depth, blind. */
  public static final Advice TENON_LENGTH =
      share(
          "tenon length",
          "two thirds to three quarters of the leg",
          0.55,
          0.8,
          "of the depth of the piece it enters");

  /** Thickness of the mortise walls. */
  public static final Advice CHEEK =
      row("mortise cheek", "no thinner than the tenon, and not below 12 mm", 12, NO_END, Unit.MM);

  /** Cheek over tenon thickness. */
  public static final Advice CHEEK_RATIO =
      share("mortise cheek", "no thinner than the tenon", 1, NO_END, "of the tenon's thickness");

  /** Shoulder below the tenon. */
  public static final Advice SHOULDER =
      row("shoulder", "6 to 25 mm all round, to hide the mortise", 6, 35, Unit.MM);

  /** Haunch height over rail depth. */
  public static final Advice HAUNCH_HEIGHT =
      share(
          "haunch height",
          "about a third of the rail's depth, at most",
          0.15,
          0.36,
          "of the rail's depth");

  /** Haunch length. */
  public static final Advice HAUNCH_LENGTH = row("haunch length", "10 to 15 mm", 8, 18, Unit.MM);

  /** Wood of the post beyond the mortise. */
  public static final Advice HORN =
      row("horn beyond the mortise", "25 mm or one and a half tenons", 25, NO_END, Unit.MM);

  /** Peg diameter over tenon thickness. */
  public static final Advice PEG =
      share(
          "peg diameter",
          "a third of the tenon up to its thickness",
          0.33,
          1,
          "of the tenon's thickness");

  /** Peg from the shoulder. */
  public static final Advice PEG_PLACE =
      row("peg from the shoulder", "10 to 20 mm, more in big legs", 10, 25, Unit.MM);

  /** Relish over peg diameter. */
  public static final Advice RELISH =
      share(
          "relish beyond the peg", "twice the peg or more", 2, NO_END, "times the peg's diameter");

  /** Drawbore offset. */
  public static final Advice DRAWBORE =
      row("drawbore offset", "about 1 mm in hardwood, 1.5 mm in softwood", 0.5, 1.6, Unit.MM);

  /** Included angle of a wedge. */
  public static final Advice WEDGE = row("wedge", "4° to 8°", 4, 8, Unit.DEG);

  /** Height of crossed glue. */
  public static final Advice CROSSED_GLUE =
      row("tenon height", "not above 100 mm in one piece: split it", 0, 100, Unit.MM);

  /** Housing depth over post thickness. */
  public static final Advice HOUSING =
      share(
          "housing depth",
          "a quarter to a third of the board",
          0.2,
          0.34,
          "of the depth of the piece it is cut into");

  /** Dowel diameter over rail thickness. */
  public static final Advice DOWEL =
      share("dowel diameter", "a third to a half of the rail", 0.3, 0.5, "of the rail's thickness");

  /** Distance of a dowel from the rail's edge over its diameter. */
  public static final Advice DOWEL_EDGE =
      row("dowel from the edge", "twice its diameter or more", 2, NO_END, Unit.ONE);

  /** Distance between dowels over their diameter. */
  public static final Advice DOWEL_SPACING =
      row("spacing of dowels", "three diameters or more", 3, NO_END, Unit.ONE);

  /** Tenon beyond a loose wedge over the wedge's thickness. */
  public static final Advice LOOSE_RELISH =
      row("tenon beyond its loose wedge", "twice the wedge or more", 2, NO_END, Unit.ONE);

  /** Width of a loose wedge over the tenon's thickness. */
  public static final Advice LOOSE_WIDTH =
      row("width of a loose wedge", "a third to a half of the tenon", 0.3, 0.5, Unit.ONE);

  /** How much wider than its bolt a hole is. */
  public static final Advice BOLT_HOLE =
      row("bolt hole", "at most 1 mm wider than the bolt", 0, 1, Unit.MM);

  /** Washer over bolt. */
  public static final Advice WASHER =
      share("washer", "three times the bolt across", 3, NO_END, "times the bolt's diameter");

  private static Advice row(String part, String words, double least, double most, Unit unit) {
    return new Advice(part, words, least, most, unit, "", TRADE);
  }

  private static Advice share(String part, String words, double least, double most, String of) {
    return new Advice(part, words, least, most, Unit.ONE, of, TRADE);
  }

  /** Whether a value follows the advice; the ends of the range do. */
  public boolean follows(double value) {
    return value >= least - 1e-9 && value <= most + 1e-9;
  }
}
