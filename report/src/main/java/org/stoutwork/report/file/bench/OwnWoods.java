package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.catalogue.Lookup;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/**
 * The woods that a maker brings along: new ones with their values, or known ones with some values
 * replaced. Every value is marked as the maker's and carries the source they name.
 */
final class OwnWoods {

  private static final int NEAREST = 3;
  private static final List<OwnValue> HEAVINESS =
      List.of(OwnValue.SPECIFIC_GRAVITY, OwnValue.DENSITY);

  private final Set<String> named = new HashSet<>();
  private WoodCatalogue woods;

  OwnWoods(WoodCatalogue known) {
    this.woods = known;
  }

  WoodCatalogue read(Fields file) {
    Take.parts(file, "woods", (place, fields) -> wood(fields));
    return woods;
  }

  private void wood(Fields fields) {
    Got<String> name = fields.text("name").required();
    Got<Optional<WoodGroup>> group = fields.scalar("group", group()).optional();
    Got<String> source = fields.text("source").required();
    List<Value> values = new ArrayList<>();
    for (OwnValue what : OwnValue.values()) {
      Take.value(what.field(fields), number -> values.add(new Value(what, number)));
    }
    if (name.isThere() && group.isThere() && isNew(fields, name.get())) {
      start(fields, name.get(), group.get())
          .ifPresent(species -> add(fields, species, source, values));
    }
  }

  private record Value(OwnValue what, double number) {}

  private static Kind<WoodGroup> group() {
    return WordKinds.of(WoodGroup.class, WoodGroup::words);
  }

  private boolean isNew(Fields fields, String name) {
    if (named.add(name)) {
      return true;
    }
    fields.fault("name", "is \"" + name + "\" for the second time", "say all of a wood once", "");
    return false;
  }

  /** The species to which the values are added: the known one of that name, or a blank one. */
  private Optional<Species> start(Fields fields, String name, Optional<WoodGroup> group) {
    Lookup lookup = woods.find(name);
    if (lookup.wood().isPresent()) {
      return known(fields, lookup.wood().get(), group);
    }
    if (lookup instanceof Lookup.Ambiguous several) {
      String names = keys(several.candidates());
      fields.fault(
          "name",
          "is \"" + name + "\"",
          "it could be any of " + names + "; say which, or choose a name of your own",
          "");
      return Optional.empty();
    }
    return blank(fields, name, group, lookup);
  }

  private static Optional<Species> known(Fields fields, Wood wood, Optional<WoodGroup> group) {
    if (!(wood instanceof Species species)) {
      fields.fault(
          "name",
          "is a known " + wood.kind(),
          "the values of %s go together and are not changed one by one; choose a name of your own"
              .formatted(wood.key()),
          "");
      return Optional.empty();
    }
    if (group.isPresent() && group.get() != species.group()) {
      fields.fault(
          "group",
          "is " + group.get().words(),
          species.key() + " is a " + species.group().words() + "; leave the group out",
          "");
      return Optional.empty();
    }
    return Optional.of(species);
  }

  private Optional<Species> blank(
      Fields fields, String name, Optional<WoodGroup> group, Lookup lookup) {
    boolean weighed = HEAVINESS.stream().anyMatch(value -> fields.has(value.key()));
    String why = "a wood that is not in the tables needs ";
    String near = lookup instanceof Lookup.Unknown unknown ? nearest(unknown) : "";
    if (group.isEmpty()) {
      fields.fault("group", "is missing", why + "hardwood or softwood", near);
    }
    if (!weighed) {
      fields.fault(
          "specificGravity", "is missing", why + "at least this value, or a density", near);
    }
    return group.map(g -> woods.blankSpecies(slug(name), name, g));
  }

  private static String nearest(Lookup.Unknown unknown) {
    return unknown.nearest().isEmpty()
        ? ""
        : "Known woods with names like it are " + keys(unknown.nearest()) + ".";
  }

  private static String keys(List<Wood> woods) {
    return woods.stream().limit(NEAREST).map(Wood::key).collect(Collectors.joining(", "));
  }

  private static String slug(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String slug = plain.replaceAll("^-+|-+$", "");
    return slug.isEmpty() ? "own-wood" : slug;
  }

  private void add(Fields fields, Species start, Got<String> source, List<Value> values) {
    if (!source.isThere()) {
      return;
    }
    if (Arrays.stream(OwnValue.values()).noneMatch(value -> fields.has(value.key()))) {
      fields.fault("has no values", "give at least one, such as `modulus: 11.2 GPa`", "");
    }
    if (HEAVINESS.stream().allMatch(value -> fields.has(value.key()))) {
      fields.fault(
          OwnValue.DENSITY.key(),
          "stands beside a specific gravity",
          "the two say the same; give one of them",
          "");
      return;
    }
    Species species = start;
    for (Value value : values) {
      species = value.what().give(species, value.number(), source.get());
    }
    woods = woods.with(species);
  }
}
