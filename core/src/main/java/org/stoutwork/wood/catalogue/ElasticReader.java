package org.stoutwork.wood.catalogue;

import java.util.List;
import java.util.Optional;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.wood.ElasticRatios;
import org.stoutwork.wood.WoodGroup;

/** Makes the elastic ratios of a species from its row, its genus or its group. */
final class ElasticReader {

  /** The columns that are read, in the order of the ratios. */
  static final List<String> COLUMNS =
      List.of("ET_EL", "ER_EL", "GLR_EL", "GLT_EL", "GRT_EL", "nu_LR", "nu_LT", "nu_RT");

  private final Kin kin;

  ElasticReader(Kin kin) {
    this.kin = kin;
  }

  ElasticRatios of(SpeciesNames species) {
    Optional<Row> own = kin.own(species.key());
    double[] values = new double[COLUMNS.size()];
    Source filler = null;
    for (int i = 0; i < values.length; i++) {
      String column = COLUMNS.get(i);
      if (own.isPresent() && own.get().number(column).isPresent()) {
        values[i] = own.get().requiredNumber(column);
      } else {
        Kin.Value mean = kin.mean(species, column);
        values[i] = mean.value();
        filler = mean.source();
      }
    }
    return ratios(values, source(own, filler));
  }

  ElasticRatios ofGroup(WoodGroup group) {
    double[] values = COLUMNS.stream().mapToDouble(c -> kin.groupMean(group, c).value()).toArray();
    return ratios(values, kin.groupMean(group, COLUMNS.get(0)).source());
  }

  private static Source source(Optional<Row> own, Source filler) {
    if (own.isEmpty()) {
      return filler;
    }
    Source printed = own.get().source();
    return filler == null
        ? printed
        : new Source(
            printed.document() + "; ratios that are not printed there are means of kin",
            "",
            Mark.PROJECT_DEFAULT);
  }

  private static ElasticRatios ratios(double[] v, Source source) {
    return new ElasticRatios(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], source);
  }
}
