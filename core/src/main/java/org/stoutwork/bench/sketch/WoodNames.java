package org.stoutwork.bench.sketch;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stoutwork.bench.Timber;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.catalogue.Lookup;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.grade.Growth;

/** Finds the woods that a description names and keeps what is known of each. */
final class WoodNames {

  private static final int NEAREST = 3;
  private static final int CANDIDATES = 8;

  /** Density of a strength class over its specific gravity, kg/m³. */
  private static final double OVENDRY_OF_CLASS = 1000;

  private final Answers answers;
  private final WoodCatalogue catalogue;
  private final Optional<String> main;
  private final Growth growth;
  private final Optional<StrengthClass> graded;
  private final Map<String, Timber> timbers = new LinkedHashMap<>();
  private final Set<String> sheetsSaid = new HashSet<>();
  private boolean missingSaid;

  WoodNames(
      Answers answers,
      WoodCatalogue catalogue,
      Optional<String> main,
      Growth growth,
      Optional<String> gradedAs) {
    this.answers = answers;
    this.catalogue = catalogue;
    this.main = main;
    this.growth = growth;
    this.graded = gradedAs.flatMap(this::strengthClass);
  }

  private Optional<StrengthClass> strengthClass(String name) {
    Optional<Wood> found = catalogue.find(name).wood();
    if (found.isPresent() && found.get() instanceof StrengthClass known) {
      return Optional.of(known);
    }
    String all =
        catalogue.strengthClasses().stream()
            .map(StrengthClass::key)
            .collect(Collectors.joining(", "));
    answers.fault("gradedAs", "\"" + name + "\"", "a strength class is one of " + all);
    return Optional.empty();
  }

  /** The key of the wood of a part: its own, or that of the whole bench. */
  String of(String key, Optional<String> own) {
    Optional<String> asked = own.or(() -> main);
    if (asked.isEmpty()) {
      sayMissing();
      return "";
    }
    return resolve(own.isPresent() ? key : "wood", asked.get());
  }

  /**
   * What the places of dowels ask of a wood.
   *
   * @param gravity specific gravity; 0 where it is not known, for which they ask most
   * @param hardwood whether it is one
   */
  record Kind(double gravity, boolean hardwood) {}

  /** Gravity and group of a wood that was found before. */
  Kind kind(String found) {
    Timber timber = timbers.get(found);
    if (timber != null && timber.wood() instanceof Species species) {
      return new Kind(
          species.clear().dry(ClearProperty.SPECIFIC_GRAVITY).map(Property::value).orElse(0.0),
          species.group() == WoodGroup.HARDWOOD);
    }
    if (timber != null && timber.wood() instanceof StrengthClass timberClass) {
      return new Kind(
          timberClass.value(ClassProperty.DENSITY_MEAN).value() / OVENDRY_OF_CLASS,
          timberClass.group() == WoodGroup.HARDWOOD);
    }
    return new Kind(0, false);
  }

  /** The same for a part that is jointed, which no sheet can be. */
  String ofSolid(String key, Optional<String> own) {
    String found = of(key, own);
    if (timbers.containsKey(found) && timbers.get(found).wood() instanceof SheetGood) {
      saySheet(own.isPresent() ? key : "wood", found);
    }
    return found;
  }

  private void saySheet(String key, String sheet) {
    if (sheetsSaid.add(key)) {
      answers.fault(
          key,
          "\"" + sheet + "\", a sheet",
          "legs, rails, stretchers and feet need solid wood; name sheets under top only");
    }
  }

  private void sayMissing() {
    if (!missingSaid) {
      missingSaid = true;
      answers.fault(
          "wood", "missing", "name the wood, such as \"beech, European\", \"ash, white\" or C24");
    }
  }

  private String resolve(String key, String asked) {
    Lookup lookup = catalogue.find(asked);
    if (lookup.wood().isPresent()) {
      Wood wood = lookup.wood().get();
      timbers.computeIfAbsent(wood.key(), k -> timber(wood));
      return wood.key();
    }
    answers.fault(fault(key, asked, lookup));
    return "";
  }

  private static BenchFault fault(String key, String asked, Lookup lookup) {
    String given = "\"" + asked + "\"";
    if (lookup instanceof Lookup.Ambiguous several) {
      return BenchFault.of(
          key, given, "it could be any of " + names(several.candidates()) + "; say which");
    }
    Lookup.Unknown unknown = (Lookup.Unknown) lookup;
    String near =
        unknown.nearest().stream().limit(NEAREST).map(Wood::key).collect(Collectors.joining(", "));
    return BenchFault.of(key, given, "no such wood is known; the nearest names are " + near);
  }

  private static String names(List<Wood> candidates) {
    String shown =
        candidates.stream().limit(CANDIDATES).map(Wood::key).collect(Collectors.joining(", "));
    int more = candidates.size() - CANDIDATES;
    return more > 0 ? shown + " and %s more".formatted(more) : shown;
  }

  private Timber timber(Wood wood) {
    if (wood instanceof Species species) {
      return new Timber(wood, growth, graded.filter(g -> g.group() == species.group()));
    }
    return new Timber(wood, growth, Optional.empty());
  }

  Map<String, Timber> timbers() {
    return timbers;
  }

  /** Whether any wood of the bench is a strength class or was graded as one. */
  boolean anyGraded() {
    return graded.isPresent()
        || timbers.values().stream().anyMatch(t -> t.wood() instanceof StrengthClass);
  }

  /** The species that have no class, which the partial factors need. */
  String ungraded() {
    return timbers.values().stream()
        .filter(t -> t.wood() instanceof Species && t.gradedAs().isEmpty())
        .map(t -> t.wood().key() + " (" + letter(((Species) t.wood()).group()) + ")")
        .collect(Collectors.joining(", "));
  }

  /** What is known by its strength class, of which clear wood knows nothing. */
  String classed() {
    return timbers.values().stream()
        .filter(t -> t.wood() instanceof StrengthClass || t.gradedAs().isPresent())
        .map(t -> t.wood().key() + t.gradedAs().map(g -> " (graded as " + g.key() + ")").orElse(""))
        .collect(Collectors.joining(", "));
  }

  private static String letter(WoodGroup group) {
    return group == WoodGroup.HARDWOOD ? "a class D" : "a class C";
  }
}
