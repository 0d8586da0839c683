package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.sheet.Bars;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.Caution;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.SignOff;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.report.sheet.Worked;

/** Knows which class sets which kind of block, and joins their bands. */
final class Setter {

  private final Setting setting;
  private boolean breakFirst;

  Setter(Setting setting) {
    this.setting = setting;
  }

  /** The bands of a flow. */
  List<Band> set(List<Block> blocks) {
    List<Band> bands = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Block.PageBreak) {
        breakFirst = true;
      } else {
        bands.addAll(broken(held(block, bands)));
      }
    }
    return bands;
  }

  /** Bands of a block; empty height hands on the hold of what stands above it. */
  private List<Band> held(Block block, List<Band> above) {
    List<Band> bands = bandsOf(block);
    if (block instanceof Block.Spacer && !above.isEmpty()) {
      return Bands.first(bands, b -> b.bonded(above.get(above.size() - 1).bond()));
    }
    return bands;
  }

  private List<Band> broken(List<Band> bands) {
    if (!breakFirst || bands.isEmpty()) {
      return bands;
    }
    breakFirst = false;
    return Bands.first(bands, Band::onNewPage);
  }

  private List<Band> bandsOf(Block block) {
    if (block instanceof Block.Spacer spacer) {
      return List.of(Band.of(0, List.of()).spaced(spacer.height()));
    }
    if (block instanceof Block.Together together) {
      return Bands.together(new Setter(setting).set(together.blocks()), Bond.ASKED);
    }
    if (block instanceof Heading heading) {
      return HeadingSetter.set(heading, setting);
    }
    if (block instanceof Paragraph paragraph) {
      return ParagraphSetter.set(paragraph, setting);
    }
    if (block instanceof Bullets bullets) {
      return BulletSetter.set(bullets, setting);
    }
    return boxedBandsOf(block);
  }

  private List<Band> boxedBandsOf(Block block) {
    if (block instanceof Table table) {
      return new TableSetter(table, setting).set();
    }
    if (block instanceof Figures figures) {
      return new FigureSetter(figures, setting).set();
    }
    if (block instanceof Bars bars) {
      return BarsSetter.set(bars, setting);
    }
    if (block instanceof Caution caution) {
      return new CautionSetter(caution, setting).set();
    }
    if (block instanceof Worked worked) {
      return new WorkedSetter(setting).set(worked);
    }
    if (block instanceof SignOff signOff) {
      return SignOffSetter.set(signOff, setting);
    }
    throw new IllegalStateException("no class sets a " + block.getClass().getSimpleName());
  }
}
