package org.stoutwork.wood.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.source.Mark;

class CensusTest {

  @Test
  void the_counts_of_published_and_remembered_rows_are_printed_table_by_table() throws IOException {
    List<Census> all = Census.ofAllTables();
    StringBuilder text = new StringBuilder("rows by mark: published / from memory / other\n");
    int published = 0;
    int remembered = 0;
    for (Census one : all) {
      int total = one.counts().values().stream().mapToInt(Integer::intValue).sum();
      int read = one.rows(Mark.PUBLISHED);
      int memory = one.rows(Mark.FROM_MEMORY);
      text.append(
          "  %-38s %4d / %3d / %3d%n".formatted(one.table(), read, memory, total - read - memory));
      assertTrue(total > 0, one.table());
      published += read;
      remembered += memory;
    }
    text.append("  %-38s %4d / %3d%n".formatted("all", published, remembered));
    System.out.print(text);
    assertEquals(25, all.size());
    assertTrue(published >= 675, "rows lost their mark \"published\": " + text);
    assertTrue(remembered <= 301, "more rows are from memory than before: " + text);
    String readme = Files.readString(Path.of("..", "README.md"));
    String stated = "%s published marks and %s from memory".formatted(published, remembered);
    assertTrue(readme.replaceAll("\\s+", " ").contains(stated), "README.md lacks: " + stated);
  }

  @Test
  void every_row_of_clear_wood_and_of_the_strength_classes_is_published() {
    for (Census one : Census.ofAllTables()) {
      if (one.table().equals("clear-wood.csv") || one.table().equals("strength-classes.csv")) {
        assertEquals(1, one.counts().size(), one.table());
        assertTrue(one.rows(Mark.PUBLISHED) > 0, one.table());
      }
    }
  }
}
