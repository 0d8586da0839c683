package org.stoutwork.reference.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/**
 * The clear-wood table against the inch-pound tables of the USDA Wood Handbook, FPL-GTR-282 (2021),
 * Tables 5-3b and 5-5b: all green rows and the 12 % rows of the woods used for benches, 1417 cells.
 *
 * <p>The product's table is metric, rounded as the handbook rounds its metric table; a cell agrees
 * if it is within 0.65 of the last printed digit (half a digit, and the handbook's own rounding).
 */
class HandbookClearWoodTest {

  private static final double DIGITS = 0.65;

  /** A column of the reference: its property, the exact factor to the product's unit, the digit. */
  private record Column(String name, ClearProperty what, double factor, double digit) {}

  private static final List<Column> COLUMNS =
      List.of(
          new Column("specific_gravity", ClearProperty.SPECIFIC_GRAVITY, 1, 0.01),
          new Column("mor_psi", ClearProperty.BENDING, 6.894757e-3, 1),
          new Column("moe_million_psi", ClearProperty.MODULUS, 6894.757, 100),
          new Column("work_in_lbf_per_in3", ClearProperty.WORK, 6.894757, 1),
          new Column("impact_in", ClearProperty.IMPACT, 25.4, 10),
          new Column("comp_parallel_psi", ClearProperty.COMPRESSION_PARALLEL, 6.894757e-3, 0.1),
          new Column("comp_perp_psi", ClearProperty.COMPRESSION_PERPENDICULAR, 6.894757e-3, 0.1),
          new Column("shear_psi", ClearProperty.SHEAR, 6.894757e-3, 0.1),
          new Column("tension_perp_psi", ClearProperty.TENSION_PERPENDICULAR, 6.894757e-3, 0.1),
          new Column("hardness_lbf", ClearProperty.HARDNESS, 4.448222, 100));

  /** Cells in which the 2010 metric table, which the product follows, and 2021 differ, and why. */
  private static final Map<String, String> EDITIONS =
      Map.of(
          "ash-white 12pct BENDING", "103 MPa in 2010, also in its worked example; 106 in 2021",
          "spruce-white 12pct MODULUS", "9.6 GPa in 2010; 9.9 in 2021",
          "spruce-red 12pct HARDNESS", "2200 N in 2010; 2400 in 2021",
          "cedar-eastern-red 12pct HARDNESS", "4000 N in 2010; not printed in 2021",
          "hemlock-western 12pct COMPRESSION_PARALLEL", "49.0 MPa in 2010; 49.6 in 2021",
          "hemlock-western 12pct SHEAR", "8.6 MPa in 2010; 8.9 in 2021");

  private final WoodCatalogue woods = WoodCatalogue.load();
  private int cells;
  private final List<String> differing = new ArrayList<>();

  @Test
  void every_cell_agrees_with_the_handbook_but_for_the_known_differences_between_editions() {
    for (Row row : Table.beside(getClass(), "clear-wood-inch-pound.csv").rows()) {
      Species species = (Species) woods.byKey(row.required("key")).orElseThrow();
      COLUMNS.forEach(column -> compare(species, row, column));
    }
    assertEquals(1417, cells);
    assertEquals(
        EDITIONS.keySet().stream().sorted().collect(Collectors.toList()),
        differing.stream().sorted().collect(Collectors.toList()));
  }

  private void compare(Species species, Row row, Column column) {
    OptionalDouble printed = row.number(column.name());
    boolean green = row.required("moisture").equals("green");
    Optional<Property> ours =
        green ? species.clear().green(column.what()) : species.clear().dry(column.what());
    cells += printed.isPresent() ? 1 : 0;
    boolean agrees =
        printed.isPresent() == ours.isPresent()
            && (printed.isEmpty()
                || Math.abs(printed.getAsDouble() * column.factor() - ours.get().value())
                    <= DIGITS * column.digit());
    if (!agrees) {
      differing.add("%s %s %s".formatted(species.key(), row.required("moisture"), column.what()));
    }
  }

  @Test
  void the_european_woods_agree_with_the_records_of_the_report() {
    int compared = 0;
    for (Row row : Table.beside(getClass(), "clear-wood-br241.csv").rows()) {
      Species species = (Species) woods.byKey(row.required("key")).orElseThrow();
      ClearProperty what =
          List.of(ClearProperty.values()).stream()
              .filter(p -> p.column().equals(row.text("column")))
              .findFirst()
              .orElseThrow();
      Property ours =
          (row.required("moisture").equals("green")
                  ? species.clear().green(what)
                  : species.clear().dry(what))
              .orElseThrow();
      assertEquals(row.requiredNumber("value") * what.scale(), ours.value(), 1e-9, species.key());
      assertTrue(
          ours.source().document().contains("record " + row.required("record")),
          ours.source().line());
      compared++;
    }
    assertEquals(12, compared);
  }

  @Test
  void where_the_source_prints_nothing_there_is_nothing() {
    Species honeylocust = (Species) woods.byKey("honeylocust").orElseThrow();
    // FPL-GTR-190 Table 5-3a prints no specific gravity of honeylocust at 12 %.
    assertTrue(honeylocust.clear().dry(ClearProperty.SPECIFIC_GRAVITY).isEmpty());
  }
}
