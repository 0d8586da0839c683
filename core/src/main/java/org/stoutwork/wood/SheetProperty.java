package org.stoutwork.wood;

import org.stoutwork.quantity.Unit;

/**
 * A property of a sheet. "Along" is along the face grain or the strength axis. Panel shear is in
 * the plane of the sheet; planar shear slides its layers over each other (rolling shear). Moduli of
 * bending are in MPa although tables print GPa.
 */
public enum SheetProperty {
  BENDING_ALONG("fm_par_MPa", "f_{m,0}", "bending strength along", Unit.MPA, 1),
  BENDING_ACROSS("fm_perp_MPa", "f_{m,90}", "bending strength across", Unit.MPA, 1),
  MODULUS_ALONG("Em_par_GPa", "E_{m,0}", "bending modulus along", Unit.MPA, 1000),
  MODULUS_ACROSS("Em_perp_GPa", "E_{m,90}", "bending modulus across", Unit.MPA, 1000),
  TENSION_ALONG("ft_par_MPa", "f_{t,0}", "tension along", Unit.MPA, 1),
  TENSION_ACROSS("ft_perp_MPa", "f_{t,90}", "tension across", Unit.MPA, 1),
  COMPRESSION_ALONG("fc_par_MPa", "f_{c,0}", "compression along", Unit.MPA, 1),
  COMPRESSION_ACROSS("fc_perp_MPa", "f_{c,90}", "compression across, in the plane", Unit.MPA, 1),
  PANEL_SHEAR("fv_panel_MPa", "f_v", "panel shear", Unit.MPA, 1),
  PANEL_SHEAR_MODULUS("Gv_panel_MPa", "G_v", "panel shear modulus", Unit.MPA, 1),
  PLANAR_SHEAR_ALONG("fr_planar_par_MPa", "f_{r,0}", "planar shear along", Unit.MPA, 1),
  PLANAR_SHEAR_ACROSS("fr_planar_perp_MPa", "f_{r,90}", "planar shear across", Unit.MPA, 1),
  PLANAR_MODULUS_ALONG("Gr_planar_par_MPa", "G_{r,0}", "planar shear modulus along", Unit.MPA, 1),
  PLANAR_MODULUS_ACROSS(
      "Gr_planar_perp_MPa", "G_{r,90}", "planar shear modulus across", Unit.MPA, 1),
  DENSITY_MEAN("rho_mean_kg_m3", "ρ_{mean}", "mean density", Unit.KG_PER_M3, 1),
  DENSITY_LOW("rho_k_kg_m3", "ρ_k", "characteristic density", Unit.KG_PER_M3, 1);

  private final String column;
  private final String symbol;
  private final String meaning;
  private final Unit unit;
  private final double scale;

  SheetProperty(String column, String symbol, String meaning, Unit unit, double scale) {
    this.column = column;
    this.symbol = symbol;
    this.meaning = meaning;
    this.unit = unit;
    this.scale = scale;
  }

  /** Column of the table of sheet goods. */
  public String column() {
    return column;
  }

  /** Symbol of the property. */
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

  /** Whether it is one of the two densities, whose source is marked apart. */
  public boolean isDensity() {
    return unit == Unit.KG_PER_M3;
  }
}
