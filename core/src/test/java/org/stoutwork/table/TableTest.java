package org.stoutwork.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.stoutwork.source.Mark;

class TableTest {

  private static final String HEAD = "# title: t\n# units: none\n# source: s\n";

  private static Table read(String body) {
    return Table.read("t.csv", HEAD + body);
  }

  private static String fault(String body) {
    return assertThrows(TableFault.class, () -> read(body)).getMessage();
  }

  @Test
  void a_row_knows_its_line_its_cells_and_its_source() {
    Row row = read("key,f_MPa,source,mark,names\noak,7.25,Book,from memory,a; b\n").rows().get(0);
    assertEquals(5, row.line());
    assertEquals(7.25, row.requiredNumber("f_MPa"));
    assertEquals("Book (from memory)", row.source().line());
    assertEquals(List.of("a", "b"), row.list("names"));
  }

  @Test
  void an_empty_cell_is_nothing_and_not_zero() {
    Row row = read("key,f,names\noak,,\n").rows().get(0);
    assertTrue(row.number("f").isEmpty());
    assertEquals(List.of(), row.list("names"));
    assertEquals(
        "table t.csv, line 5: column \"f\" is empty",
        assertThrows(TableFault.class, () -> row.requiredNumber("f")).getMessage());
  }

  @Test
  void quoted_cells_may_hold_commas_and_quotes() {
    Row row = read("key,name\noak,\"Oak, \"\"white\"\"\"\n").rows().get(0);
    assertEquals("Oak, \"white\"", row.text("name"));
  }

  @Test
  void a_ragged_row_an_open_quote_a_word_for_a_number_and_a_strange_mark_are_refused_by_line() {
    assertEquals("table t.csv, line 6: 1 cells for 2 columns", fault("a,b\n1,2\n3\n"));
    assertEquals("table t.csv, line 5: a quoted cell is not closed", fault("a,b\n1,\"2\n"));
    assertEquals(
        "table t.csv, line 4: column names must be given and differ: [a, a]", fault("a,a\n1,2\n"));
    Row row = read("f,source,mark\nmuch,Book,certain\n").rows().get(0);
    assertEquals(
        "table t.csv, line 5: column \"f\" holds \"much\", which is no number",
        assertThrows(TableFault.class, () -> row.number("f")).getMessage());
    assertEquals(
        "table t.csv, line 5: \"certain\" is no mark of a value",
        assertThrows(TableFault.class, row::source).getMessage());
    assertEquals(
        "table t.csv, line 5: there is no column \"g\"; the columns are [f, source, mark]",
        assertThrows(TableFault.class, () -> row.text("g")).getMessage());
  }

  @Test
  void a_table_that_does_not_say_its_units_is_refused() {
    assertEquals(
        "table u.csv, line 1: the header says no \"units:\"",
        assertThrows(TableFault.class, () -> Table.read("u.csv", "# title: t\n# source: s\na\n1\n"))
            .getMessage());
  }

  @Test
  void the_census_counts_marks() {
    Table table = read("a,mark,source\n1,published,b\n2,published,b\n3,from memory,b\n4,,b\n");
    assertEquals(Map.of(Mark.PUBLISHED, 2, Mark.FROM_MEMORY, 1), table.census("mark"));
  }

  @Property
  void any_text_in_quotes_comes_back_as_it_was(@ForAll @StringLength(max = 12) String text) {
    String cell = text.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029]", " ").strip();
    String written = "\"" + cell.replace("\"", "\"\"") + "\"";
    assertEquals(cell, read("a,b\n1," + written + "\n").rows().get(0).text("b"));
  }
}
