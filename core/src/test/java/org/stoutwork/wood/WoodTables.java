package org.stoutwork.wood;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/** Any wood of the tables, for laws that must hold for all of them. */
public final class WoodTables extends DomainContextBase {

  private final WoodCatalogue woods = WoodCatalogue.load();

  @Provide
  Arbitrary<Species> species() {
    return Arbitraries.of(woods.species());
  }

  @Provide
  Arbitrary<StrengthClass> classes() {
    return Arbitraries.of(woods.strengthClasses());
  }

  @Provide
  Arbitrary<SheetGood> sheets() {
    return Arbitraries.of(woods.sheetGoods());
  }

  @Provide
  Arbitrary<ClearProperty> strengths() {
    return Arbitraries.of(
        List.of(
            ClearProperty.BENDING,
            ClearProperty.MODULUS,
            ClearProperty.COMPRESSION_PARALLEL,
            ClearProperty.COMPRESSION_PERPENDICULAR,
            ClearProperty.SHEAR,
            ClearProperty.TENSION_PERPENDICULAR));
  }
}
