package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.drawing.Ink;
import org.stoutwork.report.drawing.Markup;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Worked;
import org.stoutwork.report.sheet.math.Digits;
import org.stoutwork.report.sheet.math.FormulaSetter;
import org.stoutwork.report.sheet.math.MathBox;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.working.Line;

/**
 * Sets workings: the number of the line in a gutter, then formula, numbers and result in as few
 * rows as hold them, then the meaning of the symbols and the source, beside the rows where there is
 * room.
 */
final class WorkedSetter {

  private static final double SYMBOL = 13;
  private static final double BETWEEN = 2.2;

  private final Setting setting;
  private final FormulaSetter formulas;
  private final WorkedNotes notes;

  WorkedSetter(Setting setting) {
    this.setting = setting;
    this.formulas = new FormulaSetter(setting.measure(), Type.BODY.points());
    this.notes = new WorkedNotes(setting.numbering());
  }

  List<Band> set(Worked worked) {
    List<Band> bands = new ArrayList<>();
    int last = worked.lines().size() - 1;
    for (int i = 0; i <= last; i++) {
      Line line = worked.lines().get(i);
      List<Band> set = lines(line, worked.also().get(i));
      List<Band> kept = Bands.spaced(Bands.together(set, Bond.FIRM), BETWEEN);
      boolean introduces = line instanceof Line.Remark && i < last;
      bands.addAll(introduces ? Bands.last(kept, b -> b.bonded(Bond.FIRM)) : kept);
    }
    return bands;
  }

  private List<Band> lines(Line line, String also) {
    if (line instanceof Line.Calculated calculated) {
      return calculated(calculated, also);
    }
    return line instanceof Line.Given given ? given(given, also) : remark((Line.Remark) line);
  }

  private List<Band> remark(Line.Remark remark) {
    List<Band> lines =
        new TextLines(setting, Type.TABLE, Ink.BLACK)
            .bands(
                RichText.of(Markup.prose(remark.text())),
                setting.tag(Role.P),
                WorkedRows.GUTTER,
                setting.width() - WorkedRows.GUTTER);
    return Bands.withoutOrphans(lines);
  }

  private List<Band> given(Line.Given given, String also) {
    String value = Writing.with(given.value(), given.symbol().unit(), Line.DIGITS);
    String number = "(" + setting.numbering().line() + ")";
    int tag =
        setting.tag(
            Role.FORMULA,
            String.format(Locale.ROOT, "%s %s = %s", number, given.symbol().symbol(), value));
    MathBox symbol = formulas.symbol(given.symbol().symbol());
    WorkedRows rows = rows(symbol, tag, number);
    rows.add(formulas.result(value)).addPlain(formulas.words(also));
    return rows.with(notes.of(given), setting.tag(Role.P));
  }

  private List<Band> calculated(Line.Calculated line, String also) {
    int count = setting.numbering().line();
    String number = "(" + count + ")";
    int tag = setting.tag(Role.FORMULA, alternative(number, line));
    MathBox symbol = formulas.symbol(line.formula().result().symbol());
    WorkedRows rows = rows(symbol, tag, number);
    double width = rows.width();
    add(rows, formulas.inSymbols(line.formula(), width), line.formula().inSymbols());
    add(rows, formulas.withNumbers(line, width), line.withNumbers());
    rows.add(formulas.result(line.resultText())).addPlain(formulas.words(also));
    return rows.with(notes.of(line, count), setting.tag(Role.P));
  }

  private WorkedRows rows(MathBox symbol, int tag, String number) {
    return new WorkedRows(setting, symbol, Math.max(SYMBOL, symbol.width()), tag, number);
  }

  private static void add(WorkedRows rows, Optional<List<MathBox>> boxes, String linear) {
    if (boxes.isPresent()) {
      boxes.get().forEach(rows::add);
    } else {
      rows.addText(RichText.plain("= ").then(RichText.of(Digits.grouped(linear))));
    }
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
}
