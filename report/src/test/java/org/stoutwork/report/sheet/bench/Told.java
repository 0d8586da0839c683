package org.stoutwork.report.sheet.bench;

import java.util.List;
import java.util.stream.Collectors;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.Caution;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.Table;

/** All that the blocks of a sheet say, before it is set: a line a paragraph or cell. */
final class Told {

  private Told() {}

  static String of(Sheet sheet) {
    return of(sheet.blocks());
  }

  private static String of(List<Block> blocks) {
    return blocks.stream().map(Told::of).collect(Collectors.joining("\n"));
  }

  private static String of(Block block) {
    if (block instanceof Block.Together together) {
      return of(together.blocks());
    }
    if (block instanceof Table table) {
      return table.rows().stream()
          .flatMap(r -> r.cells().stream())
          .map(c -> c instanceof Cell.Text t ? t.text().characters() : "")
          .collect(Collectors.joining("\n"));
    }
    if (block instanceof Caution caution) {
      return joined(caution.body());
    }
    if (block instanceof Bullets bullets) {
      return joined(bullets.items());
    }
    if (block instanceof Heading heading) {
      return heading.text().characters();
    }
    return block instanceof Paragraph p ? p.text().characters() : "";
  }

  private static String joined(List<RichText> texts) {
    return texts.stream().map(RichText::characters).collect(Collectors.joining("\n"));
  }
}
