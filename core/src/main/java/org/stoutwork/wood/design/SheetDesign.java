package org.stoutwork.wood.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.SheetGood.Basis;
import org.stoutwork.wood.SheetProperty;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.direction.PlateModuli;
import org.stoutwork.wood.direction.SheetStiffness;
import org.stoutwork.wood.grade.Growth;
import org.stoutwork.wood.grade.GrowthRatios.Ratio;
import org.stoutwork.wood.scatter.Variability;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Design values of a sheet. */
final class SheetDesign {

  private static final Formula DENSITY_FROM_LOW =
      Formula.define("ρ_{mean}")
          .meaning("mean density")
          .unit(Unit.KG_PER_M3)
          .where("ρ_k", "5 % density", Unit.KG_PER_M3)
          .as("1.1*ρ_k")
          .source(Source.projectDefault("density of sheets scatters by about 5 %"));

  private final SheetGood sheet;
  private final DesignBasis basis;
  private final DesignConditions conditions;
  private final DesignTables tables;

  SheetDesign(
      SheetGood sheet, DesignBasis basis, DesignConditions conditions, DesignTables tables) {
    this.sheet = sheet;
    this.basis = basis;
    this.conditions = conditions;
    this.tables = tables;
  }

  Found find(DesignQuantity what, Pad pad) {
    return what.isStrength() ? strength(what, pad) : plain(what, pad);
  }

  private Found strength(DesignQuantity what, Pad pad) {
    Optional<Property> value = printed(what).flatMap(sheet::value);
    if (value.isEmpty()) {
      return notPrinted(what);
    }
    if (basis instanceof DesignBasis.PartialFactors factors) {
      return sheet.basis() == Basis.CHARACTERISTIC
          ? new PartialFactorDesign(factors, sheet.product(), sheet.grade(), conditions, tables)
              .design(what, given(what, value.get(), pad), pad)
          : missing(
              what,
              "its strengths are mean values of tests and not characteristic",
              List.of("allowable values of this sheet under the clear-wood basis"));
    }
    return sheet.basis() == Basis.MEAN
        ? allowable(what, value.get(), pad)
        : missing(
            what,
            "its strengths are characteristic values and not means",
            List.of("design values of this sheet under partial factors"));
  }

  /** A mean ultimate strength is treated as that of a softwood without defects. */
  private Found allowable(DesignQuantity what, Property value, Pad pad) {
    boolean shear = what == DesignQuantity.SHEAR || what == DesignQuantity.ROLLING_SHEAR;
    ClearProperty like = shear ? ClearProperty.SHEAR : ClearProperty.BENDING;
    Formula formula = shear ? AllowableFormulas.SHEAR : AllowableFormulas.BENDING;
    pad.remark("Scatter and divisor are taken as those of a clear softwood (project default).");
    double mean = given(what, value, pad);
    Property v = tables.variability().coefficient(like);
    Property n = tables.divisor(like, WoodGroup.SOFTWOOD);
    Property c = tables.time().cD(conditions.duration().american());
    double low =
        pad.take(
            Variability.EXCLUSION_5,
            mean,
            pad.given("v", "coefficient of variation", v.value(), Unit.ONE, v.source()));
    return new Found.Known(
        what,
        pad.take(
            formula,
            low,
            pad.given("n", "divisor", n.value(), Unit.ONE, n.source()),
            tables.growth().ratio(Growth.CLEAR, Ratio.BENDING, pad),
            pad.given("C_D", "load duration", c.value(), Unit.ONE, c.source())));
  }

  private Found plain(DesignQuantity what, Pad pad) {
    Optional<Property> value = printed(what).flatMap(sheet::value);
    if (value.isPresent()) {
      return new Found.Known(what, given(what, value.get(), pad));
    }
    Optional<Property> low = sheet.value(SheetProperty.DENSITY_LOW);
    if (what == DesignQuantity.DENSITY_MEAN && low.isPresent()) {
      double k = given(DesignQuantity.DENSITY_LOW, low.get(), pad);
      return new Found.Known(what, pad.take(DENSITY_FROM_LOW, k));
    }
    return SheetStiffness.of(sheet)
        .flatMap(moduli -> filled(what, moduli, pad))
        .orElseGet(() -> notPrinted(what));
  }

  private Optional<Found> filled(DesignQuantity what, PlateModuli moduli, Pad pad) {
    double value =
        switch (what) {
          case MODULUS_ACROSS -> moduli.e2();
          case SHEAR_MODULUS_MEAN -> isTimber() ? moduli.g12() : moduli.g13();
          default -> 0;
        };
    return value > 0
        ? Optional.of(
            new Found.Known(
                what,
                pad.given(what.symbol(), what.meaning(), value, what.unit(), moduli.source())))
        : Optional.empty();
  }

  private static double given(DesignQuantity what, Property property, Pad pad) {
    return pad.given(
        what.symbol(), what.meaning(), property.value(), property.unit(), property.source());
  }

  private Optional<SheetProperty> printed(DesignQuantity what) {
    return Optional.ofNullable(
        switch (what) {
          case BENDING -> SheetProperty.BENDING_ALONG;
          case BENDING_ACROSS -> SheetProperty.BENDING_ACROSS;
          case TENSION_PARALLEL -> SheetProperty.TENSION_ALONG;
          case TENSION_PERPENDICULAR -> SheetProperty.TENSION_ACROSS;
          case COMPRESSION_PARALLEL -> SheetProperty.COMPRESSION_ALONG;
          case SHEAR -> SheetProperty.PANEL_SHEAR;
          case ROLLING_SHEAR -> SheetProperty.PLANAR_SHEAR_ALONG;
          case MODULUS_MEAN -> SheetProperty.MODULUS_ALONG;
          case MODULUS_ACROSS -> SheetProperty.MODULUS_ACROSS;
          case SHEAR_MODULUS_MEAN ->
              isTimber() ? SheetProperty.PANEL_SHEAR_MODULUS : SheetProperty.PLANAR_MODULUS_ALONG;
          case DENSITY_MEAN -> SheetProperty.DENSITY_MEAN;
          case DENSITY_LOW -> SheetProperty.DENSITY_LOW;
          case COMPRESSION_PERPENDICULAR, MODULUS_LOW, SHEAR_MODULUS_LOW -> null;
        });
  }

  /** Whether it is used as a member on edge, and not as a plate. */
  private boolean isTimber() {
    return sheet.product() == Product.LVL || sheet.product() == Product.GLULAM;
  }

  private Found notPrinted(DesignQuantity what) {
    String there =
        sheet.values().keySet().stream()
            .map(SheetProperty::meaning)
            .collect(Collectors.joining(", "));
    return missing(
        what,
        "the source of %s prints none".formatted(sheet.name()),
        List.of(there, "a sheet with a value of your own, with its source"));
  }

  private Found missing(DesignQuantity what, String reason, List<String> offers) {
    return new Found.Missing(what, basis.words(), reason, offers);
  }
}
