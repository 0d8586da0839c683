package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.figure.joint.EdgeDrawing;
import org.stoutwork.report.figure.joint.JointDrawing;
import org.stoutwork.report.figure.joint.JointNotes;
import org.stoutwork.report.figure.joint.JointUse;
import org.stoutwork.report.figure.joint.JointUses;
import org.stoutwork.report.figure.joint.Place;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;

/**
 * A drawing of every joint of the bench, each kind and size once, and of what is put on to its
 * edges and ends; two in a row.
 */
final class JointsSection {

  private static final double MOST_HEIGHT = 92;

  private JointsSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    List<Block> head = new ArrayList<>();
    head.add(Heading.of(1, "Joints", "joints-drawn"));
    head.add(
        Paragraph.of(
            "Every kind and size once; dimensions in "
                + (m.si() ? "millimetres" : "inches")
                + ". In the section the piece that takes the joint is cut and hatched, the piece"
                + " that ends in it is seen. At the shoulder the tenon is hatched, and the piece"
                + " it belongs to is dashed. A zigzag line breaks a piece off."));
    List<Figures.Figure> drawn = new ArrayList<>();
    for (JointUse use : JointUses.of(m.bench())) {
      Optional<Drawing> drawing =
          JointDrawing.draw(
              use.joint(),
              use.place(),
              m.amounts(),
              m.measure(),
              m.setup().halfColumnWidth(),
              MOST_HEIGHT);
      drawing.ifPresentOrElse(
          d -> drawn.add(Figures.Figure.of(d, caption(m, use), alternative(use), "")),
          () -> out.add(Paragraph.of(caption(m, use) + ".")));
    }
    for (EdgeDrawing.Edge edge :
        EdgeDrawing.of(
            m.bench(), m.amounts(), m.measure(), m.setup().halfColumnWidth(), MOST_HEIGHT)) {
      drawn.add(
          Figures.Figure.of(
              edge.drawing(),
              "**" + edge.title() + "**: " + m.say(edge.note()),
              edge.title() + " to scale",
              ""));
    }
    for (int i = 0; i < drawn.size(); i += 2) {
      Figures row =
          i + 1 < drawn.size()
              ? Figures.of(drawn.get(i), drawn.get(i + 1))
              : Figures.of(drawn.get(i));
      (i == 0 ? head : out).add(row);
    }
    out.add(0, new Block.Together(head));
    return out;
  }

  private static String caption(Matter m, JointUse use) {
    List<String> notes = new ArrayList<>();
    if (use.place().run() == Place.Run.TURNED) {
      notes.add("the leg is drawn lying");
    }
    JointNotes.of(use.joint(), m.amounts()).forEach(n -> notes.add(Shown.plain(n)));
    return "**"
        + Shown.plain(Shown.sentence(use.joint().title()))
        + "**"
        + (notes.isEmpty() ? "" : ": " + String.join("; ", notes))
        + ". Into the "
        + use.post()
        + ", "
        + use.count()
        + "\u00a0times: "
        + m.say(String.join(", ", use.rails()));
  }

  private static String alternative(JointUse use) {
    return "Section and cut at the shoulder of the %s of %s"
        .formatted(use.joint().title(), String.join(", ", use.rails()));
  }
}
