package org.stoutwork.wood.design;

import java.util.List;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.ElasticRatios;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.direction.WoodStiffness;
import org.stoutwork.wood.grade.GrowthRatios.Ratio;
import org.stoutwork.wood.moisture.WoodDensity;
import org.stoutwork.wood.scatter.Variability;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Design values of a species from the means of its clear wood. */
final class ClearWoodDesign {

  private static final String BASIS = new DesignBasis.ClearWoodAllowable().words();

  private final Species species;
  private final DesignConditions conditions;
  private final DesignTables tables;
  private final SeasonedMeans means;

  ClearWoodDesign(Species species, DesignConditions conditions, DesignTables tables) {
    this.species = species;
    this.conditions = conditions;
    this.tables = tables;
    this.means = new SeasonedMeans(species, conditions, tables);
  }

  Found find(DesignQuantity what, Pad pad) {
    OptionalDouble value =
        switch (what) {
          case BENDING ->
              stress(ClearProperty.BENDING, Ratio.BENDING, AllowableFormulas.BENDING, pad);
          case TENSION_PARALLEL -> tension(pad);
          case COMPRESSION_PARALLEL ->
              stress(
                  ClearProperty.COMPRESSION_PARALLEL,
                  Ratio.COMPRESSION,
                  AllowableFormulas.COMPRESSION,
                  pad);
          case COMPRESSION_PERPENDICULAR -> compressionAcross(pad);
          case SHEAR -> stress(ClearProperty.SHEAR, Ratio.SHEAR, AllowableFormulas.SHEAR, pad);
          case ROLLING_SHEAR -> rollingShear(pad);
          case TENSION_PERPENDICULAR, BENDING_ACROSS -> tensionAcross(what, pad);
          case MODULUS_MEAN -> modulus(pad);
          case MODULUS_LOW -> low(modulus(pad), ClearProperty.MODULUS, pad);
          case MODULUS_ACROSS -> modulusAcross(pad);
          case SHEAR_MODULUS_MEAN -> shearModulus(pad);
          case SHEAR_MODULUS_LOW -> low(shearModulus(pad), ClearProperty.MODULUS, pad);
          case DENSITY_MEAN -> WoodDensity.mean(species, conditions.moisture(), pad);
          case DENSITY_LOW -> densityLow(pad);
        };
    return value.isPresent() ? new Found.Known(what, value.getAsDouble()) : nothing(what);
  }

  private Found nothing(DesignQuantity what) {
    return new Found.Missing(
        what,
        BASIS,
        "%s has neither a printed value nor a specific gravity to estimate it from"
            .formatted(species.key()),
        List.of("a value of your own, with its source"));
  }

  private OptionalDouble stress(ClearProperty what, Ratio ratio, Formula formula, Pad pad) {
    OptionalDouble exclusion = exclusion(what, pad);
    return exclusion.isEmpty()
        ? exclusion
        : OptionalDouble.of(
            pad.take(
                formula,
                exclusion.getAsDouble(),
                divisor(tables.divisor(what, species.group()), pad),
                tables.growth().ratio(conditions.growth(), ratio, pad),
                duration(pad)));
  }

  private OptionalDouble tension(Pad pad) {
    pad.remark("No tension along the grain is tabulated: it is taken from the bending strength.");
    OptionalDouble exclusion = exclusion(ClearProperty.BENDING, pad);
    return exclusion.isEmpty()
        ? exclusion
        : OptionalDouble.of(
            pad.take(
                AllowableFormulas.TENSION,
                exclusion.getAsDouble(),
                divisor(tables.tensionDivisor(species.group()), pad),
                tables.growth().ratio(conditions.growth(), Ratio.BENDING, pad),
                duration(pad)));
  }

  private OptionalDouble tensionAcross(DesignQuantity what, Pad pad) {
    pad.remark(
        what == DesignQuantity.BENDING_ACROSS
            ? "Bending across the grain is taken as no stronger than tension across the grain."
            : "Avoid tension across the grain: checks and movement may use it up.");
    return stress(
        ClearProperty.TENSION_PERPENDICULAR,
        Ratio.SHEAR,
        AllowableFormulas.TENSION_PERPENDICULAR,
        pad);
  }

  private OptionalDouble compressionAcross(Pad pad) {
    ClearProperty what = ClearProperty.COMPRESSION_PERPENDICULAR;
    OptionalDouble mean = means.of(what, pad);
    return mean.isEmpty()
        ? mean
        : OptionalDouble.of(
            pad.take(
                AllowableFormulas.COMPRESSION_PERPENDICULAR,
                mean.getAsDouble(),
                divisor(tables.divisor(what, species.group()), pad)));
  }

  private OptionalDouble rollingShear(Pad pad) {
    OptionalDouble shear = stress(ClearProperty.SHEAR, Ratio.SHEAR, AllowableFormulas.SHEAR, pad);
    return shear.isEmpty()
        ? shear
        : OptionalDouble.of(pad.take(AllowableFormulas.ROLLING_SHEAR, shear.getAsDouble()));
  }

  private OptionalDouble exclusion(ClearProperty what, Pad pad) {
    return low(means.of(what, pad), what, pad);
  }

  private OptionalDouble low(OptionalDouble mean, ClearProperty what, Pad pad) {
    if (mean.isEmpty()) {
      return mean;
    }
    return OptionalDouble.of(
        pad.take(Variability.EXCLUSION_5, mean.getAsDouble(), scatter(what, pad)));
  }

  private double scatter(ClearProperty what, Pad pad) {
    Property v = tables.variability().coefficient(what);
    return pad.given("v", "coefficient of variation", v.value(), Unit.ONE, v.source());
  }

  private static double divisor(Property n, Pad pad) {
    return pad.given("n", "divisor for safety and ten years", n.value(), Unit.ONE, n.source());
  }

  private double duration(Pad pad) {
    Property c = tables.time().cD(conditions.duration().american());
    String meaning = "load duration, " + conditions.duration().american().words();
    return pad.given("C_D", meaning, c.value(), Unit.ONE, c.source());
  }

  private OptionalDouble modulus(Pad pad) {
    OptionalDouble bending = means.of(ClearProperty.MODULUS, pad);
    if (bending.isEmpty()) {
      return bending;
    }
    double along = pad.take(WoodStiffness.SHEAR_FREE, bending.getAsDouble());
    double ratio = tables.growth().ratio(conditions.growth(), Ratio.MODULUS, pad);
    return OptionalDouble.of(pad.take(AllowableFormulas.MODULUS_MEAN, along, ratio));
  }

  private OptionalDouble shearModulus(Pad pad) {
    OptionalDouble e = modulus(pad);
    if (e.isEmpty()) {
      return e;
    }
    ElasticRatios r = species.ratios();
    double lr = pad.given("g_{LR}", "G_LR/E_L", r.glr(), Unit.ONE, r.source());
    double lt = pad.given("g_{LT}", "G_LT/E_L", r.glt(), Unit.ONE, r.source());
    return OptionalDouble.of(pad.take(AllowableFormulas.SHEAR_MODULUS, e.getAsDouble(), lr, lt));
  }

  private OptionalDouble modulusAcross(Pad pad) {
    OptionalDouble e = modulus(pad);
    if (e.isEmpty()) {
      return e;
    }
    ElasticRatios r = species.ratios();
    double radial = pad.given("e_R", "E_R/E_L", r.er(), Unit.ONE, r.source());
    double tangential = pad.given("e_T", "E_T/E_L", r.et(), Unit.ONE, r.source());
    return OptionalDouble.of(
        pad.take(AllowableFormulas.MODULUS_ACROSS, e.getAsDouble(), radial, tangential));
  }

  private OptionalDouble densityLow(Pad pad) {
    OptionalDouble mean = WoodDensity.mean(species, conditions.moisture(), pad);
    return mean.isEmpty()
        ? mean
        : OptionalDouble.of(
            pad.take(
                AllowableFormulas.DENSITY_LOW,
                mean.getAsDouble(),
                scatter(ClearProperty.SPECIFIC_GRAVITY, pad)));
  }
}
