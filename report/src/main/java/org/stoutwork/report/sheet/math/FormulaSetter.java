package org.stoutwork.report.sheet.math;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Line;

/**
 * Sets the lines of a calculation: formula in symbols, formula with numbers, result. Each comes as
 * rows that fit a width; a formula with one part too wide for that is set as a line of text.
 */
public final class FormulaSetter {

  private final TextMeasure measure;
  private final double points;
  private final Glyphs glyphs;

  /** Sets formulas in the given size, points. */
  public FormulaSetter(TextMeasure measure, double points) {
    this.measure = measure;
    this.points = points;
    this.glyphs = new Glyphs(measure, points);
  }

  /** A symbol before its sign of equality. */
  public MathBox symbol(String symbol) {
    return glyphs.text(SymbolText.of(symbol));
  }

  /** "=" and the formula in symbols; empty if one part is wider than the width. */
  public Optional<List<MathBox>> inSymbols(Formula formula, double width) {
    return rows(formula, i -> SymbolText.of(formula.symbols().get(i).symbol()), width);
  }

  /** "=" and the formula with numbers; empty if one part is wider than the width. */
  public Optional<List<MathBox>> withNumbers(Line.Calculated line, double width) {
    Formula formula = line.formula();
    return rows(
        formula,
        i ->
            RichText.plain(
                Digits.grouped(
                    Writing.with(
                        line.values().get(i), formula.symbols().get(i).unit(), Line.DIGITS))),
        width);
  }

  /** "=" and a result, which stands out. */
  public MathBox result(String text) {
    return MathBox.row(
        List.of(equality(), glyphs.text(RichText.plain(Digits.grouped(text), Face.BOLD))));
  }

  /** Words in brackets behind a result; nothing for no words. */
  public MathBox words(String text) {
    return text.isEmpty()
        ? glyphs.space(0)
        : MathBox.row(List.of(glyphs.space(0.4), glyphs.plain("(" + Digits.grouped(text) + ")")));
  }

  /** "=" with its spaces. */
  public MathBox equality() {
    return MathBox.row(List.of(glyphs.space(0.3), glyphs.plain("="), glyphs.space(0.3)));
  }

  private Optional<List<MathBox>> rows(Formula formula, IntFunction<RichText> leaf, double width) {
    List<MathBox> parts = new TermSetter(measure, points, leaf).parts(formula.tree());
    double indent = equality().width();
    List<MathBox> rows = new ArrayList<>();
    List<MathBox> row = new ArrayList<>(List.of(equality()));
    double used = indent;
    for (MathBox part : parts) {
      if (indent + part.width() > width) {
        return Optional.empty();
      }
      if (used + part.width() > width) {
        rows.add(MathBox.row(row));
        row = new ArrayList<>(List.of(glyphs.space(indent / glyphs.em())));
        used = indent;
      }
      row.add(part);
      used += part.width();
    }
    rows.add(MathBox.row(row));
    return Optional.of(rows);
  }
}
