package org.stoutwork.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Optional;

/**
 * The closed set of units that the product reads and writes. Each is defined from others by an
 * exact factor, so that converting an inch to millimetres gives 25.4 and nothing near it.
 *
 * <p>Not covered on purpose: temperatures with an offset, currencies, anything a bench does not
 * need.
 */
public enum Unit {
  ONE("", Dimension.RATIO, "1"),
  PERCENT("%", Dimension.RATIO, "0.01"),
  /** Percentage points of moisture content; a scale of its own, so that it is not taken as 0.01. */
  POINT("% MC", Dimension.RATIO, "1"),

  M("m", new Dimension(1, 0, 0, 0), "1"),
  MM("mm", M, "0.001"),
  CM("cm", M, "0.01"),
  IN("in", M, "0.0254"),
  FT("ft", M, "0.3048"),
  MM2("mm²", M.dimension.power(2), "1e-6"),
  MM3("mm³", M.dimension.power(3), "1e-9"),
  MM4("mm⁴", M.dimension.power(4), "1e-12"),
  M3("m³", M.dimension.power(3), "1"),
  PER_MM("1/mm", M.dimension.power(-1), "1e3"),

  KG("kg", new Dimension(0, 1, 0, 0), "1"),
  G("g", KG, "0.001"),
  LB("lb", KG, "0.45359237"),
  KG_PER_M3("kg/m³", new Dimension(-3, 1, 0, 0), "1"),
  KG_PER_MM3("kg/mm³", KG_PER_M3, "1e9"),
  LB_PER_FT3("lb/ft³", KG_PER_M3, "16.018463373960139580"),

  S("s", new Dimension(0, 0, 1, 0), "1"),
  HZ("Hz", new Dimension(0, 0, -1, 0), "1"),
  M_PER_S("m/s", new Dimension(1, 0, -1, 0), "1"),
  M_PER_S2("m/s²", new Dimension(1, 0, -2, 0), "1"),

  N("N", new Dimension(1, 1, -2, 0), "1"),
  KN("kN", N, "1000"),
  LBF("lbf", N, "4.4482216152605"),
  KIP("kip", N, "4448.2216152605"),

  J("J", new Dimension(2, 1, -2, 0), "1"),
  N_M("N·m", J, "1"),
  N_MM("N·mm", J, "0.001"),
  KN_M("kN·m", J, "1000"),
  LBF_FT("lbf·ft", J, "1.3558179483314004"),
  LBF_IN("lbf·in", J, "0.1129848290276167"),

  PA("Pa", new Dimension(-1, 1, -2, 0), "1"),
  KPA("kPa", PA, "1e3"),
  MPA("MPa", PA, "1e6"),
  GPA("GPa", PA, "1e9"),
  KN_PER_M2("kN/m²", PA, "1e3"),
  PSI("psi", PA, "6894.757293168361336722673"),
  PSF("lbf/ft²", PA, "47.88025898033584261613"),

  N_PER_M("N/m", new Dimension(0, 1, -2, 0), "1"),
  N_PER_MM("N/mm", N_PER_M, "1e3"),
  KN_PER_M("kN/m", N_PER_M, "1e3"),
  KN_PER_MM("kN/mm", N_PER_M, "1e6"),
  LBF_PER_FT("lbf/ft", N_PER_M, "14.59390293720636482940"),
  LBF_PER_IN("lbf/in", N_PER_M, "175.1268352464763779528"),
  N_PER_MM3("N/mm³", new Dimension(-2, 1, -2, 0), "1e9"),

  N_MM2("N·mm²", new Dimension(3, 1, -2, 0), "1e-6"),
  KN_M2("kN·m²", N_MM2, "1e3"),
  N_MM_PER_RAD("N·mm/rad", new Dimension(2, 1, -2, -1), "0.001"),
  KN_M_PER_RAD("kN·m/rad", N_MM_PER_RAD, "1000"),

  RAD("rad", new Dimension(0, 0, 0, 1), "1"),
  DEG("°", RAD, "0.01745329251994329576923690768488612713");

  private final String symbol;
  private final Dimension dimension;
  private final BigDecimal toSi;

  Unit(String symbol, Dimension dimension, String toSi) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.toSi = new BigDecimal(toSi);
  }

  Unit(String symbol, Unit like, String toSi) {
    this(symbol, like.dimension, toSi);
  }

  /** The unit as printed, with a true multiplication dot and superscripts. */
  public String symbol() {
    return symbol;
  }

  /** What the unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** The exact number of coherent SI units (m, kg, s, rad) in one of this unit. */
  public double toSi() {
    return toSi.doubleValue();
  }

  /**
   * A value in this unit expressed in another.
   *
   * @param value in this unit
   * @param target a unit of the same dimension
   * @throws IllegalArgumentException if the two units measure different things
   */
  public double convert(double value, Unit target) {
    if (!dimension.equals(target.dimension)) {
      throw new IllegalArgumentException(
          "%s cannot be expressed in %s".formatted(symbol, target.symbol));
    }
    return this == target ? value : value * factorTo(target);
  }

  /** The exact ratio of this unit to another of the same dimension, rounded once to a double. */
  private double factorTo(Unit target) {
    return toSi.divide(target.toSi, MathContext.DECIMAL128).doubleValue();
  }

  /** The unit that a person means by a text such as {@code mm}, {@code N*m} or {@code lbf/ft}. */
  public static Optional<Unit> named(String text) {
    String plain = Spelling.plain(text);
    return Arrays.stream(values())
        .filter(unit -> unit != ONE && unit != POINT)
        .filter(unit -> Spelling.plain(unit.symbol).equals(plain))
        .findFirst()
        .or(() -> Spelling.alias(plain));
  }
}
