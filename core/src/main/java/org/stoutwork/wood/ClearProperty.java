package org.stoutwork.wood;

import java.util.Arrays;
import java.util.Optional;
import org.stoutwork.quantity.Unit;

/**
 * A property of small clear specimens, as the tables of mean values list them. Moduli are in MPa
 * although the tables print GPa.
 */
public enum ClearProperty {
  /** Ovendry mass over volume at the moisture of the row, relative to water. */
  SPECIFIC_GRAVITY("specific_gravity", "specific_gravity", "G", "specific gravity", Unit.ONE, 1),
  /** Modulus of rupture. */
  BENDING("mor_MPa", "mor", "f_m", "bending strength (modulus of rupture)", Unit.MPA, 1),
  /** Modulus of elasticity in bending, shear deflection included. */
  MODULUS("moe_GPa", "moe", "E_m", "bending modulus, shear included", Unit.MPA, 1000),
  /** Work to maximum load; 1 kJ/m³ is 1 kPa. */
  WORK(
      "work_to_max_load_kJ_m3",
      "work_to_max_load",
      "U",
      "work to maximum load (1 kJ/m³ is 1 kPa)",
      Unit.KPA,
      1),
  /** Height of drop of the hammer in the impact bending test. */
  IMPACT("impact_bending_mm", "impact_bending", "h", "drop height in impact bending", Unit.MM, 1),
  /** Maximum crushing strength along the grain. */
  COMPRESSION_PARALLEL(
      "comp_parallel_MPa", "comp_parallel", "f_c0", "compression along the grain", Unit.MPA, 1),
  /** Stress at the proportional limit, across the grain. */
  COMPRESSION_PERPENDICULAR(
      "comp_perp_MPa",
      "comp_perp",
      "f_c90",
      "compression across the grain, at the proportional limit",
      Unit.MPA,
      1),
  /** Maximum shear strength along the grain. */
  SHEAR("shear_parallel_MPa", "shear_parallel", "f_v", "shear along the grain", Unit.MPA, 1),
  /** Maximum tension strength across the grain. */
  TENSION_PERPENDICULAR(
      "tension_perp_MPa", "tension_perp", "f_t90", "tension across the grain", Unit.MPA, 1),
  /** Load that presses an 11.3 mm ball to half its diameter into a side face. */
  HARDNESS("side_hardness_N", "side_hardness", "H", "side hardness", Unit.N, 1);

  private final String column;
  private final String row;
  private final String symbol;
  private final String meaning;
  private final Unit unit;
  private final double scale;

  ClearProperty(String column, String row, String symbol, String meaning, Unit unit, double scale) {
    this.column = column;
    this.row = row;
    this.symbol = symbol;
    this.meaning = meaning;
    this.unit = unit;
    this.scale = scale;
  }

  /** Column of the table of clear wood. */
  public String column() {
    return column;
  }

  /** Name of its row in tables that list properties. */
  public String row() {
    return row;
  }

  /** Symbol of the mean value. */
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

  /** The property whose row in other tables bears the name. */
  public static Optional<ClearProperty> ofRow(String name) {
    return Arrays.stream(values()).filter(property -> property.row.equals(name)).findFirst();
  }
}
