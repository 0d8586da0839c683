package org.stoutwork.report.print;

import org.stoutwork.report.pdf.MissingGlyph;
import org.stoutwork.report.pdf.PdfPress;
import org.stoutwork.report.pdf.TypeCase;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.bench.SheetContent;
import org.stoutwork.report.sheet.bench.SheetOptions;
import org.stoutwork.report.sheet.layout.Layouter;
import org.stoutwork.result.BenchResult;

/**
 * The check sheet of a bench as a PDF file: verdict, sign-off, drawings, all checks, diagrams,
 * workings, inputs and cautions, so that a second person can follow it line by line and sign it.
 *
 * <pre>{@code
 * byte[] pdf = BenchSheet.pdf(result, SheetOptions.usual("0.1.0"));
 * }</pre>
 *
 * <p>The same result and options give the same bytes, at any time and in any locale.
 */
public final class BenchSheet {

  private BenchSheet() {}

  /**
   * The sheet as a PDF file. Signs that the type does not have are printed as their code.
   *
   * @throws org.stoutwork.report.sheet.layout.LayoutFault if something does not fit on its page
   */
  public static byte[] pdf(BenchResult result, SheetOptions options) {
    TypeCase type = TypeCase.open(MissingGlyph.SHOW_CODE);
    Sheet sheet = SheetContent.of(result, options, type);
    return new PdfPress(type).print(new Layouter(type).layOut(sheet));
  }
}
