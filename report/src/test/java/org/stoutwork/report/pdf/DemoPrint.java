package org.stoutwork.report.pdf;

import java.nio.file.Files;
import java.nio.file.Path;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.layout.Layouter;

final class DemoPrint {
  private DemoPrint() {}

  public static void main(String[] args) throws Exception {
    TypeCase type = TypeCase.open(MissingGlyph.REFUSE);
    for (Paper paper : Paper.values()) {
      Files.write(
          Path.of(args[0], "demo-" + paper + ".pdf"),
          new PdfPress(type).print(new Layouter(type).layOut(Demo.sheet(paper, type))));
    }
  }
}
