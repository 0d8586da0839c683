package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.stream.Collectors;
import org.stoutwork.bench.Air;
import org.stoutwork.quantity.Writing;
import org.stoutwork.wood.moisture.Climate;
import org.stoutwork.wood.moisture.MoistureRange;
import org.stoutwork.working.Pad;

/** Completes the room and the moisture of the wood. */
final class AirCompletion {

  private static final String USUAL = "heated-workshop";
  private static final double DRIEST = 3;
  private static final double WETTEST = 30;

  private final Answers answers;

  AirCompletion(Answers answers) {
    this.answers = answers;
  }

  Air complete(Optional<AirSketch> given) {
    AirSketch a = given.orElseGet(AirSketch::new);
    Climate climate = new ClimateEdit(answers, a).of(preset(a));
    MoistureRange fromAir = climate.moisture(Pad.blank());
    MoistureRange range = range(a, fromAir);
    double usual = Math.round(range.middle() * 10) / 10.0;
    double atAssembly =
        answers.or(
            "air.moistureAtAssembly",
            a.moistureAtAssembly,
            usual,
            percent(usual),
            "the middle of the year's range");
    if (!inRange(atAssembly)) {
      answers.fault("air.moistureAtAssembly", percent(atAssembly), "3 % to 30 % is allowed");
    }
    return new Air(climate, atAssembly, range);
  }

  private Climate preset(AirSketch a) {
    String key = answers.or("air.climate", a.climate, USUAL, USUAL, "the usual place of a bench");
    return Climate.presets().stream()
        .filter(c -> c.key().equals(key))
        .findFirst()
        .orElseGet(
            () -> {
              answers.fault(
                  "air.climate",
                  "\"" + key + "\"",
                  "choose one of "
                      + Climate.presets().stream()
                          .map(Climate::key)
                          .collect(Collectors.joining(", ")));
              return Climate.presets().get(0);
            });
  }

  private MoistureRange range(AirSketch a, MoistureRange fromAir) {
    double low = a.driest.orElse(fromAir.low());
    double high = a.wettest.orElse(fromAir.high());
    if (!inRange(low) || !inRange(high) || low > high) {
      answers.fault(
          "air.driest",
          "%s and air.wettest is %s".formatted(percent(low), percent(high)),
          "both must lie from 3 % to 30 %, the driest below the wettest");
      return fromAir;
    }
    return new MoistureRange(low, high);
  }

  private static String percent(double moisture) {
    return Writing.number(moisture, 3) + " %";
  }

  private static boolean inRange(double moisture) {
    return moisture >= DRIEST && moisture <= WETTEST;
  }
}
