package org.stoutwork.wood.design;

import java.util.List;
import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.design.DesignConditions.Situation;
import org.stoutwork.working.Pad;

/** Turns a characteristic strength of a product into a design strength. */
final class PartialFactorDesign {

  private final DesignBasis.PartialFactors basis;
  private final Product product;
  private final String grade;
  private final DesignConditions conditions;
  private final DesignTables tables;

  PartialFactorDesign(
      DesignBasis.PartialFactors basis,
      Product product,
      String grade,
      DesignConditions conditions,
      DesignTables tables) {
    this.basis = basis;
    this.product = product;
    this.grade = grade;
    this.conditions = conditions;
    this.tables = tables;
  }

  /** The design strength from a characteristic one, which is already on the pad. */
  Found design(DesignQuantity what, double characteristic, Pad pad) {
    Optional<Property> mod =
        tables.time().kMod(product, grade, conditions.service(), conditions.duration().european());
    Optional<Property> gamma = gammaM();
    if (mod.isEmpty()) {
      return missing(
          what,
          "%s %s has no k_mod in %s under a load of %s duration, so it is not to be used there"
              .formatted(
                  product.words(),
                  grade,
                  conditions.service().words(),
                  conditions.duration().european().words()),
          tables.time().placesOf(product, conditions.duration().european()));
    }
    if (gamma.isEmpty()) {
      return missing(
          what,
          "no partial factor is tabulated for " + product.words(),
          List.of("a partial factor of your own, with its source"));
    }
    double k = given("k_{mod}", modWords(), mod.get(), pad);
    double g = given("γ_M", "partial factor, " + product.words(), gamma.get(), pad);
    return new Found.Known(what, pad.take(PartialFormulas.design(what), k, characteristic, g));
  }

  private Optional<Property> gammaM() {
    if (conditions.situation() == Situation.ACCIDENTAL) {
      return Optional.of(tables.time().gammaMAccidental());
    }
    return basis.gammaM().or(() -> tables.time().gammaM(product));
  }

  private String modWords() {
    return "%s, %s duration"
        .formatted(conditions.service().words(), conditions.duration().european().words());
  }

  private static double given(String symbol, String meaning, Property factor, Pad pad) {
    return pad.given(symbol, meaning, factor.value(), Unit.ONE, factor.source());
  }

  private Found missing(DesignQuantity what, String reason, List<String> offers) {
    return new Found.Missing(what, basis.words(), reason, offers);
  }
}
