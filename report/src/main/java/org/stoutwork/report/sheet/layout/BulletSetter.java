package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;

/** Sets lists: a dash in the margin of each item. */
final class BulletSetter {

  private static final double INDENT = 5;

  private BulletSetter() {}

  static List<Band> set(Bullets bullets, Setting setting) {
    int list = setting.tag(Role.LIST);
    List<Band> bands = new ArrayList<>();
    int last = bullets.items().size() - 1;
    for (int i = 0; i <= last; i++) {
      List<Band> item = item(bullets.items().get(i), setting.within(list), i == 0 ? 2 : 0.9);
      boolean beside = i < last && (i == 0 || i == last - 1);
      bands.addAll(beside ? Bands.last(item, b -> b.bonded(Bond.ASKED)) : item);
    }
    return bands;
  }

  private static List<Band> item(RichText text, Setting setting, double before) {
    Setting inside = setting.within(setting.tag(Role.LIST_ITEM));
    int label = inside.tag(Role.LIST_LABEL);
    int body = inside.tag(Role.LIST_BODY);
    List<Band> lines =
        new TextLines(inside, Type.BODY, Ink.BLACK)
            .bands(text, body, INDENT, inside.width() - INDENT);
    Mark dash =
        new Mark.Label(
            new Point(0.6, Type.BODY.baseline()),
            RichText.plain("–"),
            Type.BODY.points(),
            Align.LEFT,
            0,
            Ink.ACCENT);
    List<Band> marked =
        Bands.first(lines, b -> b.framed(List.of(Piece.of(label, dash)), 0, 0, b.height()));
    return Bands.spaced(Bands.withoutOrphans(marked), before);
  }
}
