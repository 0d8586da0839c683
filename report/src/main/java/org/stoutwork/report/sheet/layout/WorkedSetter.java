package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Worked;
import org.stoutwork.report.sheet.math.Digits;
import org.stoutwork.report.sheet.math.FormulaSetter;
import org.stoutwork.report.sheet.math.MathBox;
import org.stoutwork.report.sheet.math.SymbolText;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.source.Source;
import org.stoutwork.working.Line;
import org.stoutwork.working.Symbol;

/**
 * Sets workings: the number of the line in a gutter, the formula and its two further lines with
 * their signs of equality in one column, below them the meaning of the symbols and the source.
 */
final class WorkedSetter {

  private static final double GUTTER = 11;
  private static final double SYMBOL = 13;
  private static final double ROW_GAP = 1.5;

  private final Setting setting;
  private final FormulaSetter formulas;

  WorkedSetter(Setting setting) {
    this.setting = setting;
    this.formulas = new FormulaSetter(setting.measure(), Type.BODY.points());
  }

  List<Band> set(Worked worked) {
    List<Band> bands = new ArrayList<>();
    for (Line line : worked.lines()) {
      List<Band> set = Bands.spaced(Bands.together(lines(line), Bond.FIRM), 3.4);
      boolean introduces =
          line instanceof Line.Remark && line != worked.lines().get(worked.lines().size() - 1);
      bands.addAll(introduces ? Bands.last(set, b -> b.bonded(Bond.FIRM)) : set);
    }
    return bands;
  }

  private List<Band> lines(Line line) {
    if (line instanceof Line.Calculated calculated) {
      return calculated(calculated);
    }
    return line instanceof Line.Given given ? given(given) : remark((Line.Remark) line);
  }

  private List<Band> remark(Line.Remark remark) {
    List<Band> lines =
        new TextLines(setting, Type.BODY, Ink.BLACK)
            .bands(RichText.plain(remark.text()), setting.tag(Role.P), GUTTER, room());
    return Bands.withoutOrphans(lines);
  }

  private List<Band> given(Line.Given given) {
    String value = Writing.with(given.value(), given.symbol().unit(), Line.DIGITS);
    String number = "(" + setting.numbering().line() + ")";
    int tag =
        setting.tag(
            Role.FORMULA,
            String.format(Locale.ROOT, "%s %s = %s", number, given.symbol().symbol(), value));
    MathBox symbol = formulas.symbol(given.symbol().symbol());
    double column = Math.max(SYMBOL, symbol.width());
    List<Band> bands = new ArrayList<>();
    Band first = row(formulas.result(value), column, tag);
    bands.add(opened(first, symbol, column, tag, number));
    RichText meaning = RichText.plain(given.symbol().meaning() + ". ");
    bands.addAll(note(meaning.then(source(given.source())), column));
    return bands;
  }

  private List<Band> calculated(Line.Calculated line) {
    String number = "(" + setting.numbering().line() + ")";
    int tag = setting.tag(Role.FORMULA, alternative(number, line));
    MathBox symbol = formulas.symbol(line.formula().result().symbol());
    double column = Math.max(SYMBOL, symbol.width());
    double width = room() - column;
    String linear = line.formula().inSymbols();
    List<Band> bands =
        new ArrayList<>(rows(formulas.inSymbols(line.formula(), width), linear, column, tag));
    bands.set(0, opened(bands.get(0), symbol, column, tag, number));
    bands.addAll(rows(formulas.withNumbers(line, width), line.withNumbers(), column, tag));
    bands.add(row(formulas.result(line.resultText()), column, tag));
    bands.addAll(note(meanings(line).then(source(line.formula().source())), column));
    return bands;
  }

  private static String alternative(String number, Line.Calculated line) {
    return String.format(
        Locale.ROOT,
        "%s %s = %s = %s = %s",
        number,
        line.formula().result().symbol(),
        line.formula().inSymbols(),
        line.withNumbers(),
        line.resultText());
  }

  private List<Band> rows(Optional<List<MathBox>> boxes, String linear, double column, int tag) {
    if (boxes.isPresent()) {
      return boxes.get().stream().map(box -> row(box, column, tag)).toList();
    }
    RichText text = RichText.plain("= ").then(RichText.of(Digits.grouped(linear)));
    List<Band> lines =
        new TextLines(setting, Type.BODY, Ink.BLACK)
            .bands(text, tag, GUTTER + column + 1, room() - column - 1);
    return lines;
  }

  private Band row(MathBox box, double column, int tag) {
    double up = Math.max(box.ascent(), Type.BODY.baseline() - 0.6);
    double height = up + Math.max(box.descent(), 1.2) + ROW_GAP;
    return Band.of(height, List.of(new Piece(tag, box.at(GUTTER + column, up))));
  }

  /** The first row of a line, with its number and its symbol before the sign of equality. */
  private static Band opened(Band row, MathBox symbol, double column, int tag, String number) {
    double base = baseOf(row);
    Mark label =
        new Mark.Label(
            new Point(0, base),
            RichText.plain(number, Face.BOLD),
            Type.NOTE.points(),
            Align.LEFT,
            0,
            Ink.ACCENT);
    List<Piece> front =
        List.of(
            Piece.of(tag, label),
            new Piece(tag, symbol.at(GUTTER + column - symbol.width(), base)));
    return row.framed(front, 0, 0, row.height());
  }

  private static double baseOf(Band row) {
    return row.pieces().get(0).marks().stream()
        .filter(Mark.Label.class::isInstance)
        .mapToDouble(mark -> ((Mark.Label) mark).at().y())
        .findFirst()
        .orElse(row.height());
  }

  private List<Band> note(RichText text, double column) {
    return Bands.withoutOrphans(
        new TextLines(setting, Type.NOTE, Ink.DARK)
            .bands(text, setting.tag(Role.P), GUTTER + column + 1, room() - column - 1));
  }

  private static RichText meanings(Line.Calculated line) {
    RichText text = meaning(line.formula().result());
    for (Symbol symbol : line.formula().symbols()) {
      text = text.then(RichText.plain("; ")).then(meaning(symbol));
    }
    return text.then(RichText.plain(". "));
  }

  private static RichText meaning(Symbol symbol) {
    return SymbolText.of(symbol.symbol()).then(RichText.plain("\u00a0" + symbol.meaning()));
  }

  private static RichText source(Source source) {
    return RichText.plain("Source: ").then(RichText.plain(source.line(), Face.ITALIC));
  }

  private double room() {
    return setting.width() - GUTTER;
  }
}
