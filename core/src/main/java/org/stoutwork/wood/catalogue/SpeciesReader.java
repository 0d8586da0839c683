package org.stoutwork.wood.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.ClearWood;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;

/** Puts the species together from their tables. */
final class SpeciesReader {

  private final Map<String, SpeciesNames> names;
  private final Map<String, Row> clear = new HashMap<>();
  private final Table intersections;
  private final ElasticReader elastic;
  private final ShrinkageReader shrinkage;

  SpeciesReader() {
    names = SpeciesNames.from(table("species.csv"));
    for (Row row : table("clear-wood.csv").rows()) {
      if (clear.put(row.required("key") + " " + row.required("moisture"), row) != null) {
        throw row.fault("this species and moisture stand twice");
      }
    }
    intersections = table("moisture-intersection.csv");
    elastic = new ElasticReader(new Kin(table("elastic-ratios.csv"), names, ElasticReader.COLUMNS));
    shrinkage =
        new ShrinkageReader(new Kin(table("shrinkage.csv"), names, ShrinkageReader.COLUMNS));
  }

  private static Table table(String name) {
    return Table.beside(Wood.class, name);
  }

  List<Species> all() {
    List<Species> all = new ArrayList<>();
    names.values().forEach(one -> all.add(species(one)));
    return all;
  }

  /** A species without any strength, with the elastic ratios and shrinkage of its group. */
  Species blank(String key, String commonName, WoodGroup group) {
    return new Species(
        key,
        commonName,
        "",
        group,
        List.of(),
        new ClearWood(Map.of(), Map.of(), ClearWood.AIR_DRY),
        intersection("default"),
        elastic.ofGroup(group),
        shrinkage.ofGroup(group));
  }

  private Species species(SpeciesNames one) {
    return new Species(
        one.key(),
        one.commonName(),
        one.botanicalName(),
        one.group(),
        one.others(),
        clearWood(one.key()),
        intersection(one.key()),
        elastic.of(one),
        shrinkage.of(one));
  }

  private ClearWood clearWood(String key) {
    Optional<Row> green = clearRow(key, "green");
    Optional<Row> dry = clearRow(key, "12pct");
    double moisture =
        dry.map(row -> row.number("test_mc_pct").orElse(ClearWood.AIR_DRY))
            .orElse(ClearWood.AIR_DRY);
    return new ClearWood(
        green.map(SpeciesReader::values).orElse(Map.of()),
        dry.map(SpeciesReader::values).orElse(Map.of()),
        moisture);
  }

  private Optional<Row> clearRow(String key, String moisture) {
    return Optional.ofNullable(clear.get(key + " " + moisture));
  }

  private static Map<ClearProperty, Property> values(Row row) {
    Map<ClearProperty, Property> values = new EnumMap<>(ClearProperty.class);
    Source source = row.source();
    for (ClearProperty what : ClearProperty.values()) {
      OptionalDouble printed = row.number(what.column());
      printed.ifPresent(v -> values.put(what, new Property(v * what.scale(), what.unit(), source)));
    }
    return values;
  }

  private Property intersection(String key) {
    Optional<Row> own =
        intersections.rows().stream().filter(row -> row.required("key").equals(key)).findFirst();
    return own.map(row -> new Property(row.requiredNumber("Mp_pct"), Unit.POINT, row.source()))
        .orElseGet(() -> intersection("default"));
  }
}
