package org.stoutwork.wood.catalogue;

import java.util.List;
import org.stoutwork.quantity.Unit;
import org.stoutwork.table.Row;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Shrinkage;
import org.stoutwork.wood.WoodGroup;

/** Makes the shrinkage of a species from its row, its genus or its group. */
final class ShrinkageReader {

  /** The columns that are filled from kin. */
  static final List<String> COLUMNS = List.of("radial_pct", "tangential_pct");

  private final Kin kin;

  ShrinkageReader(Kin kin) {
    this.kin = kin;
  }

  Shrinkage of(SpeciesNames species) {
    Property radial = percent(species, "radial_pct");
    Property tangential = percent(species, "tangential_pct");
    return new Shrinkage(
        radial,
        tangential,
        coefficient(species, "C_R_per_pct_MC", radial),
        coefficient(species, "C_T_per_pct_MC", tangential));
  }

  Shrinkage ofGroup(WoodGroup group) {
    Property radial = percent(kin.groupMean(group, "radial_pct"));
    Property tangential = percent(kin.groupMean(group, "tangential_pct"));
    return new Shrinkage(
        radial, tangential, Shrinkage.coefficient(radial), Shrinkage.coefficient(tangential));
  }

  private Property percent(SpeciesNames species, String column) {
    return kin.own(species.key())
        .filter(row -> row.number(column).isPresent())
        .map(row -> printed(row, column, Unit.PERCENT, "mark_shrinkage"))
        .orElseGet(() -> percent(kin.mean(species, column)));
  }

  private static Property percent(Kin.Value mean) {
    return new Property(mean.value(), Unit.PERCENT, mean.source());
  }

  private Property coefficient(SpeciesNames species, String column, Property total) {
    return kin.own(species.key())
        .filter(row -> row.number(column).isPresent())
        .map(row -> printed(row, column, Unit.ONE, "mark_coefficients"))
        .orElseGet(() -> Shrinkage.coefficient(total));
  }

  private static Property printed(Row row, String column, Unit unit, String mark) {
    return new Property(row.requiredNumber(column), unit, row.source(mark));
  }
}
