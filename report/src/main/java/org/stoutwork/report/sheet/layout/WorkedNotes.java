package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Markup;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.math.SymbolText;
import org.stoutwork.source.Source;
import org.stoutwork.working.Line;
import org.stoutwork.working.Symbol;

/** What stands beside a line of a working: meanings that were not told yet, and the source. */
final class WorkedNotes {

  private final Numbering numbering;

  WorkedNotes(Numbering numbering) {
    this.numbering = numbering;
  }

  /** The meaning of a value and where it comes from. */
  RichText of(Line.Given given) {
    Symbol symbol = given.symbol();
    numbering.tell(symbol.symbol() + " " + symbol.meaning());
    return RichText.of(Markup.prose(symbol.meaning() + ". ")).then(source(given.source()));
  }

  /** The meanings of the symbols of a formula and where it comes from, or where it stood first. */
  RichText of(Line.Calculated line, int number) {
    int first = numbering.firstLine(line.formula(), number);
    List<Symbol> symbols = new ArrayList<>();
    symbols.add(line.formula().result());
    symbols.addAll(line.formula().symbols());
    if (first < number) {
      symbols.forEach(s -> numbering.tell(s.symbol() + " " + s.meaning()));
      return RichText.plain("as line (" + first + ")");
    }
    RichText text = RichText.EMPTY;
    for (Symbol symbol : symbols) {
      if (numbering.tell(symbol.symbol() + " " + symbol.meaning())) {
        text = text.isEmpty() ? text : text.then(RichText.plain("; "));
        text =
            text.then(SymbolText.of(symbol.symbol()))
                .then(RichText.plain("\u00a0"))
                .then(RichText.of(Markup.prose(symbol.meaning())));
      }
    }
    return (text.isEmpty() ? text : text.then(RichText.plain(". ")))
        .then(source(line.formula().source()));
  }

  private static RichText source(Source source) {
    return RichText.plain("Source: ").then(RichText.plain(source.line(), Face.ITALIC));
  }
}
