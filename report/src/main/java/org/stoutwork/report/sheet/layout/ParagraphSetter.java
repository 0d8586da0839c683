package org.stoutwork.report.sheet.layout;

import java.util.List;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.page.Role;

/** Sets paragraphs: ragged right, no line of one left alone on a page. */
final class ParagraphSetter {

  private ParagraphSetter() {}

  static List<Band> set(Paragraph paragraph, Setting setting) {
    return switch (paragraph.manner()) {
      case BODY -> lines(paragraph.text(), setting, Type.BODY, Ink.BLACK, 2.2);
      case LEAD -> lines(paragraph.text(), setting, Type.LEAD, Ink.BLACK, 2.6);
      case NOTE -> lines(paragraph.text(), setting, Type.NOTE, Ink.DARK, 1.8);
      case TITLE ->
          Bands.last(
              lines(paragraph.text().in(Face.BOLD), setting, Type.TITLE, Ink.BLACK, 4),
              b -> b.bonded(Bond.TIGHT));
    };
  }

  private static List<Band> lines(
      RichText text, Setting setting, Type type, Ink ink, double before) {
    List<Band> lines = new TextLines(setting, type, ink).bands(text, setting.tag(Role.P));
    return Bands.spaced(Bands.withoutOrphans(lines), before);
  }
}
