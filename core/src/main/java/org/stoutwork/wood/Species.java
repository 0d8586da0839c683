package org.stoutwork.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Mark;

/**
 * A species of tree, or a commercial group of species, known by the means of its clear wood. The
 * means say nothing about knots and are not design values.
 *
 * @param key short name, such as {@code oak-white}
 * @param commonName as the tables print it, such as {@code Oak, white}
 * @param botanicalName may be empty for a wood of the user's own
 * @param group hardwood or softwood
 * @param otherNames further names in use
 * @param clear mean values of clear wood
 * @param intersection moisture content at which strength begins to rise with drying, %
 * @param ratios elastic ratios; their source says whether they are the species' own
 * @param shrinkage size and moisture; the sources say whether they are the species' own
 */
public record Species(
    String key,
    String commonName,
    String botanicalName,
    WoodGroup group,
    List<String> otherNames,
    ClearWood clear,
    Property intersection,
    ElasticRatios ratios,
    Shrinkage shrinkage)
    implements Wood {

  /**
   * Keeps its own copy of the names.
   *
   * @throws IllegalArgumentException if the key is blank or the intersection moisture content is
   *     outside 15 to 35 % or not above that of the air-dry values
   */
  public Species {
    if (key.isBlank() || commonName.isBlank()) {
      throw new IllegalArgumentException("a species needs a key and a name; one was blank");
    }
    otherNames = List.copyOf(otherNames);
    Objects.requireNonNull(clear, "clear");
    Objects.requireNonNull(ratios, "ratios");
    Objects.requireNonNull(shrinkage, "shrinkage");
    if (intersection.unit() != Unit.POINT
        || !(intersection.value() >= 15 && intersection.value() <= 35)) {
      throw new IllegalArgumentException(
          "the intersection moisture content lies from 15 to 35 %%; it was %s"
              .formatted(intersection.line()));
    }
    if (intersection.value() - clear.dryMoisture() < 1) {
      throw new IllegalArgumentException(
          "air-dry values must be found below the intersection moisture content %s %%; it was %s"
              .formatted(intersection.value(), clear.dryMoisture()));
    }
  }

  @Override
  public String name() {
    return commonName;
  }

  @Override
  public List<String> names() {
    List<String> names = new ArrayList<>();
    names.add(commonName);
    names.addAll(otherNames);
    if (!botanicalName.isEmpty()) {
      names.add(botanicalName);
    }
    return List.copyOf(names);
  }

  @Override
  public Product product() {
    return Product.SOLID_TIMBER;
  }

  @Override
  public String kind() {
    return "species, " + group.words();
  }

  /**
   * The same species with one air-dry mean of the user's own, at the moisture content of the other
   * air-dry values.
   *
   * @throws IllegalArgumentException if the value is not marked as the user's
   */
  public Species withDry(ClearProperty what, Property yours) {
    return withClear(clear.withDry(what, requireYours(yours)));
  }

  /**
   * The same species with one green mean of the user's own.
   *
   * @throws IllegalArgumentException if the value is not marked as the user's
   */
  public Species withGreen(ClearProperty what, Property yours) {
    return withClear(clear.withGreen(what, requireYours(yours)));
  }

  /**
   * The same species with shrinkage of the user's own, in one direction or in both.
   *
   * @throws IllegalArgumentException if a changed value is not marked as the user's
   */
  public Species withShrinkage(Shrinkage yours) {
    if (!yours.radial().equals(shrinkage.radial())) {
      requireYours(yours.radial());
    }
    if (!yours.tangential().equals(shrinkage.tangential())) {
      requireYours(yours.tangential());
    }
    return new Species(
        key, commonName, botanicalName, group, otherNames, clear, intersection, ratios, yours);
  }

  /** Whether any mean or shrinkage is the user's own. */
  public boolean hasOwnValues() {
    Stream<Property> means =
        Stream.concat(clear.green().values().stream(), clear.dry().values().stream());
    Stream<Property> sizes = Stream.of(shrinkage.radial(), shrinkage.tangential());
    return Stream.concat(means, sizes).anyMatch(property -> property.mark() == Mark.YOURS);
  }

  private Species withClear(ClearWood changed) {
    return new Species(
        key,
        commonName,
        botanicalName,
        group,
        otherNames,
        changed,
        intersection,
        ratios,
        shrinkage);
  }

  private static Property requireYours(Property property) {
    if (property.mark() != Mark.YOURS) {
      throw new IllegalArgumentException(
          "a changed value must be marked \"%s\"; it was %s"
              .formatted(Mark.YOURS.words(), property.line()));
    }
    return property;
  }
}
