package org.stoutwork.report.sheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.page.Page;
import org.stoutwork.report.sheet.page.PagedSheet;
import org.stoutwork.report.sheet.page.Piece;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

class LayoutLawsTest {

  private static final TextMeasure MEASURE = new EmMeasure();

  @Property(tries = 120)
  void any_flow_stays_in_the_printable_area_and_keeps_every_block_once_and_in_order(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 30) int blocks, @ForAll Paper paper) {
    RandomBlocks source = new RandomBlocks(seed);
    PageSetup setup = PageSetup.usual(paper);
    PagedSheet sheet = new Layouter(MEASURE).layOut(Sheets.of(setup, source.flow(blocks)));
    for (Page page : sheet.pages()) {
      assertTrue(page.marks().stream().allMatch(m -> inside(m, setup)));
    }
    String text = textOf(sheet);
    List<String> found =
        Pattern.compile("t\\d+t").matcher(text).results().map(m -> m.group()).toList();
    assertEquals(source.tokens(), found);
  }

  @Property(tries = 60)
  void no_heading_is_the_last_thing_on_a_page(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 40) int blocks) {
    PagedSheet sheet =
        new Layouter(MEASURE)
            .layOut(Sheets.of(PageSetup.usual(Paper.A4), new RandomBlocks(seed).flow(blocks)));
    List<Page> pages = sheet.pages();
    for (Page page : pages.subList(0, pages.size() - 1)) {
      int last =
          page.pieces().stream()
              .filter(piece -> piece.tag() != Tag.NONE)
              .mapToInt(Piece::tag)
              .reduce((a, b) -> b)
              .orElse(Tag.NONE);
      Role role = last == Tag.NONE ? Role.DOCUMENT : sheet.tags().get(last - 1).role();
      assertTrue(role != Role.H1 && role != Role.H2 && role != Role.H3, "page " + page.number());
    }
  }

  @Property(tries = 60)
  void the_same_flow_gives_the_same_pages(@ForAll long seed) {
    PageSetup setup = PageSetup.usual(Paper.LETTER);
    PagedSheet once =
        new Layouter(MEASURE).layOut(Sheets.of(setup, new RandomBlocks(seed).flow(12)));
    PagedSheet again =
        new Layouter(MEASURE).layOut(Sheets.of(setup, new RandomBlocks(seed).flow(12)));
    assertEquals(once, again);
  }

  @Property
  void lines_are_never_wider_than_asked_and_lose_nothing(
      @ForAll @StringLength(max = 200) String text,
      @ForAll @DoubleRange(min = 4, max = 120) double width) {
    List<RichText> lines = LineBreaker.lines(RichText.plain(text), 10.5, width, MEASURE);
    for (RichText line : lines) {
      assertTrue(MEASURE.width(line, 10.5) <= width + 1e-6, line.characters());
    }
    String kept = lines.stream().map(RichText::characters).collect(Collectors.joining());
    assertEquals(text.replace(" ", ""), kept.replace(" ", ""));
  }

  private static boolean inside(Mark mark, PageSetup setup) {
    Bounds reach = Extent.of(mark, MEASURE);
    return setup.printable().holds(reach, 0.35);
  }

  private static String textOf(PagedSheet sheet) {
    return sheet.pages().stream()
        .flatMap(page -> page.pieces().stream())
        .filter(piece -> piece.tag() != Tag.NONE)
        .flatMap(piece -> piece.marks().stream())
        .filter(Mark.Label.class::isInstance)
        .map(mark -> ((Mark.Label) mark).text().characters())
        .collect(Collectors.joining(" "));
  }
}
