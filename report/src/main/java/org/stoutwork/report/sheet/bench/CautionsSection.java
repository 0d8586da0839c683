package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.Caution;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.result.Racking;
import org.stoutwork.result.Severity;
import org.stoutwork.result.StiffnessRange;

/** All cautions in full, then how to use the bench and look after it. */
final class CautionsSection {

  private CautionsSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.of(1, "Cautions", "cautions"));
    out.add(
        Paragraph.of(
            "WARNING: death or serious injury could follow. CAUTION: minor or moderate injury could"
                + " follow. NOTICE: no injury, but damage or a wrong result."));
    for (org.stoutwork.result.Caution c : m.result().cautions()) {
      out.add(
          new Caution(
              grade(c.severity()),
              RichText.plain(c.code()),
              List.of(RichText.of(m.say(c.message())))));
    }
    out.add(Heading.of(1, "Use and care", "care"));
    out.add(new Bullets(care(m).stream().map(RichText::of).toList()));
    return out;
  }

  private static Caution.Grade grade(Severity severity) {
    return switch (severity) {
      case WARNING -> Caution.Grade.WARNING;
      case CAUTION -> Caution.Grade.CAUTION;
      case NOTICE -> Caution.Grade.NOTICE;
    };
  }

  private static List<String> care(Matter m) {
    List<String> out = new ArrayList<>();
    out.add(
        "Use the bench for **"
            + Shown.plain(m.bench().duty().words())
            + "** and for loads up to those of table {table:actions}; for anything else, have it"
            + " checked again.");
    for (Racking r : m.result().racking()) {
      out.add(measured(m, r));
    }
    out.add(
        "Look once a year for joints that open, screws and bolts that turn, splits at screw holes,"
            + " and feet that no longer bear; repair before use.");
    out.add(
        "Keep the room within the moisture range of this sheet; let no water stand on the top.");
    out.add(
        "Write any change of size, wood, joint, place or use into the description, check it again,"
            + " and print a new sheet: the signatures of this one end with the change.");
    return out;
  }

  private static String measured(Matter m, Racking r) {
    StiffnessRange sway = r.sway();
    String stiff = m.amounts().movement(sway.high());
    boolean folds = r.amplification().largest() >= Shown.MOST;
    String soft = folds ? "" : m.amounts().movement(sway.low());
    String between =
        folds
            ? "at least " + stiff
            : soft.equals(stiff) ? "about " + soft : "between " + stiff + " and " + soft;
    String more =
        folds
            ? ". With joints as soft as they may be it would fold: brace it before anybody uses it."
            : ". More means softer joints than this sheet takes.";
    return "Measure before first use: a steady pull of "
        + Shown.plain(m.amounts().force(r.force()))
        + " "
        + r.way().words()
        + " at the height of the top, where the check of sway has it, should move the top there "
        + Shown.plain(between)
        + more;
  }
}
