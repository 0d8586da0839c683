package org.stoutwork.report.sheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.drawing.Align;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Point;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Figures;
import org.stoutwork.report.sheet.Furniture;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.PageSetup;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.report.sheet.page.Page;
import org.stoutwork.report.sheet.page.PagedSheet;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

class LayouterTest {

  private static final TextMeasure MEASURE = new EmMeasure();

  private static PagedSheet set(Block... blocks) {
    return new Layouter(MEASURE).layOut(Sheets.of(blocks));
  }

  private static String text(Page page) {
    return page.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(m -> ((Mark.Label) m).text().characters())
        .collect(Collectors.joining(" "));
  }

  private static Block filler(double mm) {
    return new Block.Spacer(mm);
  }

  @Test
  void a_heading_moves_to_the_page_of_what_it_heads() {
    PagedSheet sheet =
        set(
            Paragraph.of("start"),
            filler(100),
            filler(100),
            filler(22),
            Heading.of(1, "Stranded"),
            Paragraph.of("body"));
    assertEquals(2, sheet.pages().size());
    assertTrue(!text(sheet.pages().get(0)).contains("Stranded"));
    assertTrue(text(sheet.pages().get(1)).contains("Stranded"));
  }

  @Test
  void the_head_of_a_table_is_repeated_as_decoration() {
    Table.Builder table = Table.of(Column.mm(30, "Member"), Column.share(1, "Wood"));
    for (int i = 0; i < 90; i++) {
      table.row("leg " + i, "ash");
    }
    PagedSheet sheet = set(table.build());
    assertTrue(sheet.pages().size() >= 3);
    for (Page page : sheet.pages()) {
      assertEquals(2, text(page).split("Member", -1).length, "page " + page.number());
    }
    assertEquals(2, sheet.tags().stream().filter(tag -> tag.role() == Role.HEAD_CELL).count());
    assertEquals(91, sheet.tags().stream().filter(tag -> tag.role() == Role.ROW).count());
  }

  @Test
  void a_row_is_not_split_where_a_page_can_hold_it() {
    Table table =
        Table.of(Column.share(1, "A"), Column.share(1, "B"))
            .row("one", "word ".repeat(300) + "last")
            .build();
    PagedSheet sheet = set(Paragraph.of("start"), filler(100), filler(60), table);
    assertTrue(text(sheet.pages().get(1)).contains("one"));
    assertTrue(text(sheet.pages().get(1)).contains("last"));
  }

  @Test
  void a_row_taller_than_a_page_runs_on_under_its_head() {
    Table table =
        Table.of(Column.mm(20, "Head"), Column.share(1, "B"))
            .row("one", "word ".repeat(2500) + "last")
            .build();
    PagedSheet sheet = set(table);
    assertTrue(sheet.pages().size() >= 2);
    assertTrue(text(sheet.pages().get(1)).startsWith("Head"));
    assertTrue(text(sheet.pages().get(sheet.pages().size() - 1)).contains("last"));
  }

  @Test
  void blocks_asked_to_stay_together_do() {
    PagedSheet sheet =
        set(
            Paragraph.of("start"),
            filler(100),
            filler(100),
            filler(20),
            Block.Together.of(Paragraph.of("first"), filler(8), Paragraph.of("second")));
    assertTrue(text(sheet.pages().get(1)).contains("first second"));
  }

  @Test
  void a_last_page_of_a_few_rows_takes_more_from_the_page_before() {
    int rowsOfOnePage = rowsOnTheFirstPage(60);
    PagedSheet sheet = set(rows(rowsOfOnePage + 3));
    assertEquals(2, sheet.pages().size());
    int first = rowsOnTheFirstPage(rowsOfOnePage + 3);
    assertTrue(rowsOfOnePage + 3 - first > 8, first + " rows on the first page");
    assertEquals(1, set(rows(rowsOfOnePage)).pages().size());
  }

  private static int rowsOnTheFirstPage(int rows) {
    return text(set(rows(rows)).pages().get(0)).split("leg ", -1).length - 1;
  }

  private static Table rows(int count) {
    Table.Builder table = Table.of(Column.mm(30, "Member"), Column.share(1, "Wood"));
    for (int i = 0; i < count; i++) {
      table.row("leg " + i, "ash");
    }
    return table.build();
  }

  @Test
  void a_page_break_begins_a_page_and_never_makes_an_empty_one() {
    PagedSheet sheet =
        set(
            new Block.PageBreak(),
            Paragraph.of("first"),
            new Block.PageBreak(),
            new Block.PageBreak(),
            Paragraph.of("second"),
            new Block.PageBreak());
    assertEquals(2, sheet.pages().size());
    assertTrue(text(sheet.pages().get(1)).contains("second"));
  }

  @Test
  void references_stand_for_pages_sections_figures_and_tables() {
    Sketch sketch = new Sketch().text(new Point(20, 8), "inside", Align.CENTRE);
    PagedSheet sheet =
        set(
            Paragraph.of("see {section:late}, p. {page:late}, fig. {figure:f}, tab. {table:t}"),
            Heading.of(1, "Early"),
            Figures.of(Figures.Figure.of(sketch.drawing(40, 12), "c", "a", "f")),
            Table.of(Column.share(1, "A")).caption("cap").anchor("t").row("x").build(),
            new Block.PageBreak(),
            Heading.of(1, "Late", "late"),
            Heading.of(2, "Deeper"));
    assertTrue(text(sheet.pages().get(0)).contains("see 2, p. 2, fig. 1, tab. 1"));
    assertEquals(
        List.of("1 Early", "2 Late", "2.1 Deeper"),
        sheet.outline().stream().map(b -> b.text()).toList());
    assertEquals(2, sheet.outline().get(1).page());
  }

  @Test
  void a_reference_to_nothing_is_refused_with_the_names_there_are() {
    LayoutFault fault =
        assertThrows(
            LayoutFault.class,
            () -> set(Heading.of(1, "A", "here"), Paragraph.of("see {page:there}")));
    assertEquals(
        "text refers to {page:there}, which no place is called; known names are "
            + "[page:here, pages, section:here]",
        fault.getMessage());
  }

  @Test
  void one_name_for_two_places_is_refused() {
    LayoutFault fault =
        assertThrows(
            LayoutFault.class, () -> set(Heading.of(1, "A", "same"), Heading.of(1, "B", "same")));
    assertEquals("two places are called \"same\"; give each its own name", fault.getMessage());
  }

  @Test
  void a_heading_that_skips_a_level_is_refused() {
    LayoutFault fault =
        assertThrows(LayoutFault.class, () -> set(Heading.of(1, "A"), Heading.of(3, "B")));
    assertEquals(
        "a heading of level 3 follows one of level 1; put one of level 2 between",
        fault.getMessage());
  }

  @Test
  void a_figure_whose_lettering_would_shrink_below_8_points_is_refused() {
    Sketch sketch = new Sketch().text(new Point(100, 8), "inside", Align.CENTRE);
    Block figure = Figures.of(Figures.Figure.of(sketch.drawing(240, 30), "wide", "a", ""));
    LayoutFault fault = assertThrows(LayoutFault.class, () -> set(figure));
    assertEquals(
        "figure \"wide\" is 240.0 mm by 30.0 mm; scaled to 166.0 mm its lettering falls below 8"
            + " points; draw it for that width",
        fault.getMessage());
  }

  @Test
  void a_drawing_that_leaves_its_frame_and_the_paper_is_refused() {
    Sketch sketch = new Sketch().text(new Point(5, 8), "far too long for it", Align.RIGHT);
    Block figure = Figures.of(Figures.Figure.of(sketch.drawing(160, 30), "c", "a", ""));
    LayoutFault fault = assertThrows(LayoutFault.class, () -> set(figure));
    assertTrue(fault.getMessage().startsWith("on page 1 something leaves the printable area"));
  }

  @Test
  void lettering_that_overlaps_is_refused() {
    Sketch sketch =
        new Sketch()
            .text(new Point(20, 8), "over", Align.CENTRE)
            .text(new Point(22, 9), "under", Align.CENTRE);
    Block figure = Figures.of(Figures.Figure.of(sketch.drawing(60, 30), "c", "a", ""));
    LayoutFault fault = assertThrows(LayoutFault.class, () -> set(figure));
    assertEquals("on page 1 \"over\" and \"under\" overlap", fault.getMessage());
  }

  @Test
  void columns_that_do_not_fit_are_refused() {
    Block table = Table.of(Column.mm(150, "A"), Column.mm(60, "B")).row("a", "b").build();
    LayoutFault fault = assertThrows(LayoutFault.class, () -> set(table));
    assertTrue(fault.getMessage().startsWith("column \"B\" would get 60.0 mm"));
  }

  @Test
  void running_texts_that_would_meet_are_refused() {
    Sheet sheet =
        new Sheet(
            Sheets.of().about(),
            PageSetup.usual(Paper.A4),
            Furniture.of("left ".repeat(20), "right ".repeat(12), ""),
            List.of(Paragraph.of("body")));
    LayoutFault fault = assertThrows(LayoutFault.class, () -> new Layouter(MEASURE).layOut(sheet));
    assertTrue(fault.getMessage().startsWith("running texts \"left left"));
  }

  @Test
  void margins_below_15_mm_are_refused() {
    assertThrows(IllegalArgumentException.class, () -> new PageSetup(Paper.A4, 14.9, 20, 15, 15));
  }

  @Test
  void every_page_says_its_number_and_how_many_there_are() {
    PagedSheet sheet = set(Paragraph.of("a"), new Block.PageBreak(), Paragraph.of("b"));
    assertTrue(text(sheet.pages().get(0)).endsWith("Page 1 of 2"));
    assertTrue(text(sheet.pages().get(1)).endsWith("Page 2 of 2"));
    assertEquals(Tag.ROOT, sheet.tags().get(0).id());
  }
}
