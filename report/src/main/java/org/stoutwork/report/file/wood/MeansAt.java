package org.stoutwork.report.file.wood;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.moisture.ClearMeans;
import org.stoutwork.wood.moisture.WoodDensity;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** The means of a species at a moisture content, each with what it was worked out from. */
final class MeansAt {

  private static final Set<ClearProperty> WITH_A_LAW =
      Collections.unmodifiableSet(
          EnumSet.of(
              ClearProperty.BENDING,
              ClearProperty.MODULUS,
              ClearProperty.COMPRESSION_PARALLEL,
              ClearProperty.COMPRESSION_PERPENDICULAR,
              ClearProperty.SHEAR,
              ClearProperty.TENSION_PERPENDICULAR));

  private MeansAt() {}

  static Optional<WoodFact> mean(Species species, ClearProperty what, double moisture) {
    if (!WITH_A_LAW.contains(what)) {
      return Optional.empty();
    }
    RecordingPad pad = Pad.recording();
    OptionalDouble mean = ClearMeans.load().mean(species, what, moisture, pad);
    return fact(WoodFacts.camel(what), what.meaning(), what.unit(), moisture, mean, pad);
  }

  static Optional<WoodFact> density(Species species, double moisture) {
    RecordingPad pad = Pad.recording();
    OptionalDouble mean = WoodDensity.mean(species, moisture, pad);
    return fact("density", "density", Unit.KG_PER_M3, moisture, mean, pad);
  }

  private static Optional<WoodFact> fact(
      String key,
      String meaning,
      Unit unit,
      double moisture,
      OptionalDouble mean,
      RecordingPad pad) {
    if (mean.isEmpty()) {
      return Optional.empty();
    }
    String at = "at " + Writing.number(moisture, 3) + " %";
    Mark mark = pad.working().weakestMark().ofWorkedOut();
    Source source =
        new Source("worked out " + at + " moisture content from the values named here", "", mark);
    return Optional.of(
        new WoodFact(key, meaning, at, new Property(mean.getAsDouble(), unit, source)));
  }
}
