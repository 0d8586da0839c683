package org.stoutwork.wood.moisture;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * The moisture content that wood takes on in still air (Hailwood and Horrobin, two hydrates).
 *
 * <p>Holds for relative humidity from 0 to below 1 and temperatures from 0 to 100 °C. The constants
 * were read in a copy of the equations of the research note; so was a published evaluation (60 °C,
 * 55 %: 8.4 %).
 */
public final class EquilibriumMoisture {

  private static final Source EQUATION =
      Source.published(
          "Simpson 1998, FPL-RN-0268", "equilibrium moisture content; Wood Handbook eq. 4-5");

  private static final Formula W =
      constant("W", "349 + 1.29*T + 0.0135*T^2", "molar weight of wood per sorption site");
  private static final Formula K =
      constant("K", "0.805 + 0.000736*T - 0.00000273*T^2", "constant of the dissolved water");
  private static final Formula K1 =
      constant("K_1", "6.27 - 0.00938*T - 0.000303*T^2", "constant of the first hydrate");
  private static final Formula K2 =
      constant("K_2", "1.91 + 0.0407*T - 0.000293*T^2", "constant of the second hydrate");

  private static final Formula EMC =
      Formula.define("M")
          .meaning("equilibrium moisture content")
          .unit(Unit.POINT)
          .where("H", "relative humidity as a fraction", Unit.ONE)
          .where("W", "molar weight", Unit.ONE)
          .where("K", "constant of the dissolved water", Unit.ONE)
          .where("K_1", "constant of the first hydrate", Unit.ONE)
          .where("K_2", "constant of the second hydrate", Unit.ONE)
          .as(
              "1800/W*(K*H/(1 - K*H) + (K_1*K*H + 2*K_1*K_2*K^2*H^2)"
                  + "/(1 + K_1*K*H + K_1*K_2*K^2*H^2))")
          .source(EQUATION);

  private EquilibriumMoisture() {}

  private static Formula constant(String symbol, String text, String meaning) {
    return Formula.define(symbol)
        .meaning(meaning)
        .where("T", "temperature in degrees Celsius", Unit.ONE)
        .as(text)
        .source(EQUATION);
  }

  /**
   * The equilibrium moisture content in percent.
   *
   * @param humidity relative humidity as a fraction, from 0 to 0.99
   * @param celsius temperature, from 0 to 100 °C
   * @param pad to write on
   * @throws IllegalArgumentException if humidity or temperature is outside its range
   */
  public static double percent(double humidity, double celsius, Pad pad) {
    if (!(humidity >= 0 && humidity <= 0.99)) {
      throw new IllegalArgumentException(
          "relative humidity is a fraction from 0 to 0.99; it was %s".formatted(humidity));
    }
    if (!(celsius >= 0 && celsius <= 100)) {
      throw new IllegalArgumentException(
          "the temperature of the air must lie from 0 to 100 °C; it was %s".formatted(celsius));
    }
    double w = pad.take(W, celsius);
    double k = pad.take(K, celsius);
    double k1 = pad.take(K1, celsius);
    double k2 = pad.take(K2, celsius);
    return pad.take(EMC, humidity, w, k, k1, k2);
  }
}
