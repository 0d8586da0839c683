package org.stoutwork.report.sheet.math;

import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Level;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Run;

/** How symbols of quantities look: sloping letters, upright indices. */
public final class SymbolText {

  private SymbolText() {}

  /** A symbol as core writes it, such as {@code σ_m} or {@code k_{mod}}. */
  public static RichText of(String symbol) {
    return new RichText(RichText.of(symbol).runs().stream().map(SymbolText::look).toList());
  }

  private static Run look(Run run) {
    boolean letters =
        run.level() == Level.BASE && run.text().codePointCount(0, run.text().length()) <= 1;
    return letters ? new Run(run.text(), Face.ITALIC, run.level(), false) : run;
  }
}
