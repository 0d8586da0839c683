package org.stoutwork.wood;

import org.stoutwork.quantity.Unit;

/** A property that a strength class guarantees. Moduli are in MPa although tables print GPa. */
public enum ClassProperty {
  BENDING("fm_k_MPa", "f_{m,k}", "characteristic bending strength", Unit.MPA, 1),
  TENSION_PARALLEL("ft_0_k_MPa", "f_{t,0,k}", "characteristic tension along", Unit.MPA, 1),
  TENSION_PERPENDICULAR("ft_90_k_MPa", "f_{t,90,k}", "characteristic tension across", Unit.MPA, 1),
  COMPRESSION_PARALLEL("fc_0_k_MPa", "f_{c,0,k}", "characteristic compression along", Unit.MPA, 1),
  COMPRESSION_PERPENDICULAR(
      "fc_90_k_MPa", "f_{c,90,k}", "characteristic compression across", Unit.MPA, 1),
  SHEAR("fv_k_MPa", "f_{v,k}", "characteristic shear", Unit.MPA, 1),
  MODULUS_MEAN("E_0_mean_GPa", "E_{0,mean}", "mean modulus along", Unit.MPA, 1000),
  MODULUS_LOW("E_0_05_GPa", "E_{0,05}", "5 % modulus along", Unit.MPA, 1000),
  MODULUS_ACROSS("E_90_mean_GPa", "E_{90,mean}", "mean modulus across", Unit.MPA, 1000),
  SHEAR_MODULUS("G_mean_GPa", "G_{mean}", "mean shear modulus", Unit.MPA, 1000),
  DENSITY_LOW("rho_k_kg_m3", "ρ_k", "characteristic density", Unit.KG_PER_M3, 1),
  DENSITY_MEAN("rho_mean_kg_m3", "ρ_{mean}", "mean density", Unit.KG_PER_M3, 1);

  private final String column;
  private final String symbol;
  private final String meaning;
  private final Unit unit;
  private final double scale;

  ClassProperty(String column, String symbol, String meaning, Unit unit, double scale) {
    this.column = column;
    this.symbol = symbol;
    this.meaning = meaning;
    this.unit = unit;
    this.scale = scale;
  }

  /** Column of the table of strength classes. */
  public String column() {
    return column;
  }

  /** Symbol as the standard writes it. */
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

  /** How many of this unit one unit of the table's column is. */
  public double scale() {
    return scale;
  }
}
