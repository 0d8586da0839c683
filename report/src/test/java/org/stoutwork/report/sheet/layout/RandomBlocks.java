package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.Stroke;
import org.stoutwork.report.sheet.Bars;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.Caution;
import org.stoutwork.report.sheet.Cell;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.SignOff;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.report.sheet.Utilisation;
import org.stoutwork.report.sheet.Verdict;
import org.stoutwork.report.sheet.Worked;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** Makes flows of all kinds of blocks; every text begins with a token that occurs once. */
final class RandomBlocks {

  private static final String[] WORDS = {
    "tenon",
    "of",
    "the",
    "shoulder",
    "mortise-and-tenon",
    "σ_m",
    "k_{mod}",
    "a",
    "stretcher",
    "10^-3",
    "Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen",
    "rail",
    "**grain**"
  };

  private static final Formula STRESS =
      Formula.define("σ_m")
          .meaning("stress")
          .unit(Unit.MPA)
          .where("M", "moment", Unit.N_MM)
          .where("b", "width", Unit.MM)
          .where("h", "depth", Unit.MM)
          .as("6*M/(b*h^2)")
          .source(Source.derived("beam theory"));

  private final Random random;
  private final List<String> tokens = new ArrayList<>();
  private int headings;

  RandomBlocks(long seed) {
    this.random = new Random(seed);
  }

  List<String> tokens() {
    return tokens;
  }

  List<Block> flow(int count) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      blocks.add(block(true));
    }
    return blocks;
  }

  private Block block(boolean deep) {
    return switch (random.nextInt(deep ? 14 : 11)) {
      case 0, 1 -> Heading.of(level(), words(1 + random.nextInt(9)));
      case 2, 3 -> Paragraph.of(words(1 + random.nextInt(180)));
      case 4 -> Paragraph.note(words(1 + random.nextInt(60)));
      case 5 -> Bullets.of(words(3), words(1 + random.nextInt(40)));
      case 6, 7 -> table();
      case 8 -> figure();
      case 9 -> caution();
      case 10 -> bars();
      case 11 -> new Block.Spacer(random.nextInt(40));
      case 12 -> together();
      default -> random.nextInt(3) == 0 ? SignOff.of(words(2)) : worked();
    };
  }

  private int level() {
    int deepest = Math.min(3, headings + 1);
    headings = 1 + random.nextInt(deepest);
    return headings;
  }

  private String words(int count) {
    StringBuilder text = new StringBuilder(token());
    for (int i = 0; i < count; i++) {
      text.append(' ').append(WORDS[random.nextInt(WORDS.length)]);
    }
    return text.toString();
  }

  private String token() {
    String token = "t" + tokens.size() + "t";
    tokens.add(token);
    return token;
  }

  private Block table() {
    Table.Builder table =
        Table.of(
            Column.mm(22, "First"), Column.share(2, "Second"), Column.share(3, "Third").right());
    if (random.nextBoolean()) {
      table.caption(words(4));
    }
    if (random.nextBoolean()) {
      table.dense();
    }
    int rows = 1 + random.nextInt(30);
    for (int i = 0; i < rows; i++) {
      if (random.nextInt(6) == 0) {
        table.group(words(2));
      }
      int longest = random.nextInt(25) == 0 ? 700 : 12;
      table.row(
          List.of(
              Cell.of(token()),
              Cell.of(words(random.nextInt(longest))),
              random.nextBoolean() ? Cell.of(utilisation()) : Cell.of(words(3))));
    }
    return table.build();
  }

  private Utilisation utilisation() {
    double value = random.nextDouble() * 3;
    return random.nextInt(5) == 0
        ? Utilisation.notChecked()
        : Utilisation.between(
            value * 0.6, value, value > 1 ? Verdict.INADEQUATE : Verdict.ADEQUATE);
  }

  private Block figure() {
    double width = 60 + random.nextInt(90);
    double height = 15 + random.nextInt(120);
    Sketch sketch =
        new Sketch().line(new Point(1, 1), new Point(width - 1, height - 1), Stroke.THIN);
    String token = token();
    sketch.text(new Point(width / 2, height / 2), RichText.of(token), 9, Align.CENTRE, 0);
    return Figures.of(
        Figures.Figure.of(sketch.drawing(width, height), words(12), "a slanting line", ""));
  }

  private Block caution() {
    Caution.Grade[] grades = Caution.Grade.values();
    return Caution.of(
        grades[random.nextInt(grades.length)],
        words(4),
        words(random.nextInt(90)),
        words(random.nextInt(20)));
  }

  private Block bars() {
    List<Bars.Bar> bars = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      bars.add(Bars.Bar.of(words(random.nextInt(12)), utilisation()));
    }
    return new Bars(bars);
  }

  private Block together() {
    List<Block> inner = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      inner.add(block(false));
    }
    return new Block.Together(inner);
  }

  private Block worked() {
    RecordingPad pad = Pad.recording();
    pad.remark(token());
    pad.take(STRESS, 1000 + random.nextInt(900_000), 38, 92);
    pad.remark(token());
    return Worked.of(pad.working());
  }
}
