package org.stoutwork.report.sheet.layout;

import java.time.Instant;
import java.util.List;
import org.stoutwork.report.sheet.About;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Furniture;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.Sheet;

/** Sheets for tests of layout. */
final class Sheets {

  private static final About ABOUT = new About("Trial", "", "Stoutwork", "en", Instant.EPOCH, "0");

  private Sheets() {}

  static Sheet of(PageSetup setup, List<Block> blocks) {
    return new Sheet(ABOUT, setup, Furniture.of("left", "right", "foot"), blocks);
  }

  static Sheet of(Block... blocks) {
    return of(PageSetup.usual(Paper.A4), List.of(blocks));
  }
}
