package org.stoutwork.report.file.field;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.stoutwork.quantity.Angle;
import org.stoutwork.quantity.Density;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.LineLoad;
import org.stoutwork.quantity.Mass;
import org.stoutwork.quantity.Moment;
import org.stoutwork.quantity.Quantity;
import org.stoutwork.quantity.Stress;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.KeyPath;
import org.stoutwork.report.file.tree.MapNode;
import org.stoutwork.report.file.tree.Spot;

/**
 * One map of a file, asked key by key. Every key asked for is known; the others are reported when
 * the whole file has been read.
 *
 * <pre>{@code
 * Got<Leg> leg(Fields fields) {
 *   Got<Length> width = fields.length("width").required();
 *   Got<Length> depth = fields.length("depth").orDefault(width, "legs are square unless stated");
 *   return fields.build(() -> new Leg(width.get(), depth.get()));
 * }
 * }</pre>
 */
public final class Fields {

  private final Reading reading;
  private final Fields parent;
  private final MapNode map;
  private final Set<String> known = new LinkedHashSet<>();
  private final Set<String> ignored = new LinkedHashSet<>();
  private final List<Fields> children = new ArrayList<>();
  private boolean restLeft;
  private boolean faulty;

  Fields(Reading reading, Fields parent, MapNode map) {
    this.reading = reading;
    this.parent = parent;
    this.map = map;
    if (parent != null) {
      parent.children.add(this);
    }
    reading.open(this);
  }

  /** Text; what looks like a number must stand in quotes. */
  public Field<String> text(String key) {
    return scalar(key, Kinds.text());
  }

  /** A number without unit. */
  public Field<Double> number(String key, Range range) {
    return scalar(key, Kinds.number(range));
  }

  /** A whole number, both ends allowed. */
  public Field<Integer> wholeNumber(String key, int min, int max) {
    return scalar(key, Kinds.wholeNumber(min, max));
  }

  /** Yes or no. */
  public Field<Boolean> yesNo(String key) {
    return scalar(key, Kinds.yesNo());
  }

  /** One of an enum's constants, written in lower case with hyphens. */
  public <E extends Enum<E>> Field<E> choice(String key, Class<E> type) {
    return scalar(key, Kinds.choice(type));
  }

  /** One of some words. */
  public <T> Field<T> choice(String key, Map<String, T> words) {
    return scalar(key, Kinds.choice(words));
  }

  /** A scalar of any kind. */
  public <T> Field<T> scalar(String key, Kind<T> kind) {
    return new Field<>(this, key, kind.noun(), value -> value.as(kind), kind.words());
  }

  /** A quantity; a bare number is read if the file has set a unit for its kind. */
  public <Q extends Quantity> Field<Q> quantity(String key, QuantityKind<Q> kind) {
    return scalar(key, kind.orBareIn(reading.bareUnit(kind.dimension())).kind());
  }

  /** A length above 0. */
  public Field<Length> length(String key) {
    return quantity(key, Quantities.length().above(Length.ofMm(0)));
  }

  /** A mass above 0. */
  public Field<Mass> mass(String key) {
    return quantity(key, Quantities.mass().above(Mass.ofKg(0)));
  }

  /** A force above 0. */
  public Field<Force> force(String key) {
    return quantity(key, Quantities.force().above(Force.ofNewtons(0)));
  }

  /** A stress, strength, modulus or pressure above 0. */
  public Field<Stress> stress(String key) {
    return quantity(key, Quantities.stress().above(Stress.ofMpa(0)));
  }

  /** A line load above 0. */
  public Field<LineLoad> lineLoad(String key) {
    return quantity(key, Quantities.lineLoad().above(LineLoad.ofNPerMm(0)));
  }

  /** A moment above 0. */
  public Field<Moment> moment(String key) {
    return quantity(key, Quantities.moment().above(Moment.ofNmm(0)));
  }

  /** A density above 0. */
  public Field<Density> density(String key) {
    return quantity(key, Quantities.density().above(Density.ofKgPerM3(0)));
  }

  /** An angle of any sign. */
  public Field<Angle> angle(String key) {
    return quantity(key, Quantities.angle());
  }

  /** A moisture content in percent of the dry mass, written with its percent sign. */
  public Field<Double> moisture(String key, double minPercent, double maxPercent) {
    return scalar(key, Quantities.percent("a moisture content", minPercent, maxPercent));
  }

  /** A list of numbers of a given length. */
  public Field<List<Double>> numbers(String key, int count, Range range) {
    String noun = "a list of " + count + " numbers";
    return new Field<>(this, key, noun, v -> v.numbers(count, range), String::valueOf);
  }

  /** A list; {@code item} reads one of its values. */
  public <T> Field<List<T>> list(String key, Function<Value, Got<T>> item) {
    return new Field<>(this, key, "a list", value -> value.list(item), String::valueOf);
  }

  /** A list of scalars of one kind. */
  public <T> Field<List<T>> scalars(String key, Kind<T> kind) {
    return new Field<>(
        this,
        key,
        "a list",
        value -> value.list(item -> item.as(kind)),
        list -> String.join(", ", list.stream().map(kind.words()).toList()));
  }

  /** A map with keys of its own. */
  public <T> Field<T> map(String key, Mapping<T> mapping) {
    return new Field<>(this, key, "a map of keys", value -> value.map(mapping), String::valueOf);
  }

  /** A map whose keys are names chosen by the writer of the file. */
  public <T> Field<Map<String, T>> entries(String key, BiFunction<String, Value, Got<T>> entry) {
    return new Field<>(this, key, "a map of names", v -> v.entries(entry), String::valueOf);
  }

  /**
   * A value that may be of several kinds.
   *
   * @param key the key
   * @param noun what is needed, with its article
   * @param reader looks at the value and reads it
   */
  public <T> Field<T> either(String key, String noun, Function<Value, Got<T>> reader) {
    return new Field<>(this, key, noun, reader, String::valueOf);
  }

  /** Declares keys that may be there and are not read. */
  public void ignore(String... keys) {
    ignored.addAll(List.of(keys));
  }

  /** Leaves the keys not asked for alone, because a mistake noted already decides about them. */
  public void leaveRest() {
    restLeft = true;
  }

  /**
   * From here on, bare numbers are read in these units where their kind of quantity is asked for.
   */
  public void bareNumbersIn(Unit... units) {
    List.of(units).forEach(reading::bareUnit);
  }

  /** Whether a key is there; asking does not make it known. */
  public boolean has(String key) {
    return map.entry(key).isPresent();
  }

  /**
   * The names given as keys of the map under a key, whatever their values are worth: so that a
   * mistake in one entry does not make every reference to it a mistake as well.
   *
   * @param key the key
   * @return the names in file order; none where there is no such map
   */
  public Set<String> namesIn(String key) {
    Set<String> names = new LinkedHashSet<>();
    map.entry(key)
        .filter(entry -> entry.value() instanceof MapNode)
        .ifPresent(entry -> ((MapNode) entry.value()).entries().forEach(e -> names.add(e.key())));
    return names;
  }

  /**
   * Builds what the map describes. Gives nothing when a mistake of this map has been noted with
   * {@code fault}, or when a value asked for within is missing; when the builder refuses a value
   * with an {@code IllegalArgumentException}, its message becomes a mistake of this map.
   *
   * @param builder calls {@link Got#get} on the values read before
   * @return what was built
   */
  public <T> Got<T> build(Supplier<T> builder) {
    if (faulty) {
      return Got.nothing();
    }
    try {
      return Got.of(builder.get());
    } catch (Got.NotThere e) {
      return Got.nothing();
    } catch (IllegalArgumentException e) {
      String message = String.valueOf(e.getMessage());
      String clause = message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
      reading.add(Fault.of(spot(), path(), "cannot be used as it stands", clause, ""));
      return Got.nothing();
    }
  }

  /**
   * Notes a mistake that concerns a key's value, or the map where the key is absent.
   *
   * @param key the key
   * @param given what is there, as the middle of a sentence: {@code is above `max`}
   * @param allowed what would be right, as a clause
   * @param suggestion a whole sentence that offers a repair, or empty
   * @return nothing
   */
  public <T> Got<T> fault(String key, String given, String allowed, String suggestion) {
    faulty = true;
    Spot spot = map.entry(key).map(entry -> entry.value().spot()).orElse(map.spot());
    reading.add(Fault.of(spot, path().key(key), given, allowed, suggestion));
    return Got.nothing();
  }

  /** Notes a mistake that concerns the map as a whole. */
  public <T> Got<T> fault(String given, String allowed, String suggestion) {
    faulty = true;
    reading.add(Fault.of(spot(), path(), given, allowed, suggestion));
    return Got.nothing();
  }

  /** Where the map begins. */
  public Spot spot() {
    return map.spot();
  }

  /** Where the map stands. */
  public KeyPath path() {
    return map.path();
  }

  Optional<Value> find(String key) {
    known.add(key);
    return map.entry(key).map(entry -> new Value(reading, this, entry.value()));
  }

  void noteMissing(String key, String allowed) {
    reading.add(Fault.of(spot(), path().key(key), "is missing", allowed, ""));
  }

  void noteDefault(String key, String value, String why) {
    reading.add(new DefaultTaken(path().key(key).text(), value, why));
  }

  /** The keys not asked for, in file order. */
  List<MapNode.Entry> unknown() {
    return restLeft
        ? List.of()
        : map.entries().stream()
            .filter(entry -> !known.contains(entry.key()) && !ignored.contains(entry.key()))
            .toList();
  }

  Set<String> known() {
    return known;
  }

  List<Fields> children() {
    return children;
  }

  Optional<Fields> parent() {
    return Optional.ofNullable(parent);
  }
}
