package org.stoutwork.wood.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stoutwork.source.Mark;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Wood;

/**
 * How many rows of one wood table bear each mark.
 *
 * @param table name of the table; for a table with several marks in a row, with the column
 * @param counts by mark
 */
public record Census(String table, Map<Mark, Integer> counts) {

  private static final List<String> SINGLE =
      List.of(
          "clear-wood.csv",
          "elastic-ratios.csv",
          "moisture-intersection.csv",
          "moisture-change.csv",
          "density-relations.csv",
          "variability.csv",
          "scatter.csv",
          "strength-classes.csv",
          "class-assignments.csv",
          "k-mod.csv",
          "k-def.csv",
          "gamma-m.csv",
          "load-duration-us.csv",
          "clear-wood-divisors.csv",
          "growth-ratios.csv",
          "slope-of-grain.csv",
          "seasoning.csv",
          "sheet-movement.csv",
          "friction.csv",
          "gluing.csv",
          "climates.csv");

  /** Keeps its own copy. */
  public Census {
    counts = Map.copyOf(counts);
  }

  /** The count of rows with a mark. */
  public int rows(Mark mark) {
    return counts.getOrDefault(mark, 0);
  }

  /** The counts of every wood table. */
  public static List<Census> ofAllTables() {
    List<Census> all = new ArrayList<>();
    SINGLE.forEach(name -> all.add(of(name, "mark")));
    all.add(of("shrinkage.csv", "mark_shrinkage"));
    all.add(of("shrinkage.csv", "mark_coefficients"));
    all.add(of("sheet-goods.csv", "mark"));
    all.add(of("sheet-goods.csv", "mark_density"));
    return List.copyOf(all);
  }

  private static Census of(String name, String column) {
    String shown = column.equals("mark") ? name : name + " " + column;
    return new Census(shown, Table.beside(Wood.class, name).census(column));
  }
}
