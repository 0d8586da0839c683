package org.stoutwork.bench.sketch;

import java.util.Optional;
import org.stoutwork.quantity.Writing;
import org.stoutwork.source.Source;
import org.stoutwork.wood.moisture.Climate;
import org.stoutwork.wood.time.ServiceClass;

/** Changes a preset climate by what a maker knows better of the room. */
final class ClimateEdit {

  private static final double DAMPEST = 95;
  private static final double COLDEST = 0;
  private static final double HOTTEST = 60;

  private final Answers answers;
  private final AirSketch given;

  ClimateEdit(Answers answers, AirSketch given) {
    this.answers = answers;
    this.given = given;
  }

  Climate of(Climate preset) {
    ServiceClass service = service(preset);
    boolean changed =
        given.lowHumidity.isPresent()
            || given.highHumidity.isPresent()
            || given.celsius.isPresent();
    if (!changed && service == preset.serviceClass()) {
      return preset;
    }
    double low = given.lowHumidity.map(percent -> percent / 100).orElse(preset.lowHumidity());
    double high = given.highHumidity.map(percent -> percent / 100).orElse(preset.highHumidity());
    double celsius = given.celsius.orElse(preset.celsius());
    if (!(low >= 0 && low <= high && high <= DAMPEST / 100)) {
      answers.fault(
          "air.lowHumidity",
          "%s %% and air.highHumidity is %s %%".formatted(percent(low), percent(high)),
          "both must lie from 0 % to 95 %, the lower one first");
      return preset;
    }
    if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
      answers.fault("air.temperature", celsius + " °C", "0 °C to 60 °C is allowed");
      return preset;
    }
    Source yours = Source.yours("air in your description, on the preset " + preset.key());
    return new Climate(preset.key(), preset.words(), low, high, celsius, service, yours);
  }

  private static String percent(double fraction) {
    return Writing.number(100 * fraction, 3);
  }

  /** The class that was stated, or else the one that the stated air and moisture ask for. */
  private ServiceClass service(Climate preset) {
    ServiceClass ofAir =
        given
            .highHumidity
            .map(percent -> ServiceClass.ofHumidity(percent / 100))
            .orElse(preset.serviceClass());
    ServiceClass needed = given.wettest.map(ServiceClass::ofMoisture).orElse(ofAir).damper(ofAir);
    if (given.serviceClass.isEmpty() && needed != preset.serviceClass()) {
      return answers.or(
          "air.serviceClass",
          Optional.empty(),
          needed,
          Integer.toString(needed.number()),
          "what was said of the air or of the wettest wood asks for it");
    }
    return given.serviceClass.orElse(preset.serviceClass());
  }
}
