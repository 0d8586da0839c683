package org.stoutwork.wood.design;

import org.stoutwork.quantity.Unit;

/** What a check may ask of a wood. Stresses and moduli are in MPa, densities in kg/m³. */
public enum DesignQuantity {
  BENDING("f_m", "bending strength along the grain", Unit.MPA),
  /** Of a sheet across its face grain; of solid wood no more than its tension across the grain. */
  BENDING_ACROSS("f_{m,90}", "bending strength across the grain", Unit.MPA),
  TENSION_PARALLEL("f_{t,0}", "tension strength along the grain", Unit.MPA),
  TENSION_PERPENDICULAR("f_{t,90}", "tension strength across the grain", Unit.MPA),
  COMPRESSION_PARALLEL("f_{c,0}", "compression strength along the grain", Unit.MPA),
  COMPRESSION_PERPENDICULAR("f_{c,90}", "compression strength across the grain", Unit.MPA),
  SHEAR("f_v", "shear strength along the grain", Unit.MPA),
  ROLLING_SHEAR("f_r", "rolling shear strength", Unit.MPA),
  /** Along the grain, shear deflection not included. */
  MODULUS_MEAN("E_{mean}", "mean modulus along the grain", Unit.MPA),
  /** The 5 % value, for buckling. */
  MODULUS_LOW("E_{05}", "5 % modulus along the grain", Unit.MPA),
  MODULUS_ACROSS("E_{90}", "mean modulus across the grain", Unit.MPA),
  SHEAR_MODULUS_MEAN("G_{mean}", "mean shear modulus", Unit.MPA),
  SHEAR_MODULUS_LOW("G_{05}", "5 % shear modulus", Unit.MPA),
  DENSITY_MEAN("ρ_{mean}", "mean density", Unit.KG_PER_M3),
  DENSITY_LOW("ρ_k", "5 % density", Unit.KG_PER_M3);

  private final String symbol;
  private final String meaning;
  private final Unit unit;

  DesignQuantity(String symbol, String meaning, Unit unit) {
    this.symbol = symbol;
    this.meaning = meaning;
    this.unit = unit;
  }

  /** Symbol as printed. */
  public String symbol() {
    return symbol;
  }

  /** What it is, in words. */
  public String meaning() {
    return meaning;
  }

  /** Unit of its values. */
  public Unit unit() {
    return unit;
  }

  /** Whether it is a strength, to which safety and duration apply. */
  public boolean isStrength() {
    return compareTo(ROLLING_SHEAR) <= 0;
  }

  /** Whether it is a mean that both bases share. */
  public boolean isMean() {
    return switch (this) {
      case MODULUS_MEAN, MODULUS_ACROSS, SHEAR_MODULUS_MEAN, DENSITY_MEAN -> true;
      default -> false;
    };
  }
}
