package org.stoutwork.wood.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Shrinkage;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;

/**
 * All woods that are known: species, strength classes, sheet goods, and what the user adds.
 *
 * <p>Loading reads the tables once; keep the catalogue and pass it on. Immutable and thread-safe.
 */
public final class WoodCatalogue {

  private final Map<String, Wood> woods;
  private final SpeciesReader reader;
  private final NameIndex index;

  private WoodCatalogue(Map<String, Wood> woods, SpeciesReader reader) {
    this.woods = woods;
    this.reader = reader;
    this.index = new NameIndex(List.copyOf(woods.values()));
  }

  /**
   * Reads the tables.
   *
   * @throws org.stoutwork.table.TableFault if a table is damaged
   */
  public static WoodCatalogue load() {
    SpeciesReader reader = new SpeciesReader();
    Map<String, Wood> woods = new LinkedHashMap<>();
    reader.all().forEach(one -> woods.put(one.key(), one));
    ProductReader.classes().forEach(one -> woods.put(one.key(), one));
    ProductReader.sheets().forEach(one -> woods.put(one.key(), one));
    return new WoodCatalogue(woods, reader);
  }

  /** The same catalogue with a wood added, or put in the place of the one with the same key. */
  public WoodCatalogue with(Wood wood) {
    Map<String, Wood> more = new LinkedHashMap<>(woods);
    more.put(wood.key(), wood);
    return new WoodCatalogue(more, reader);
  }

  /**
   * A species of the user's own to start from: it has no strengths yet, and the elastic ratios and
   * shrinkage of its group. Add values with {@link Species#withDry}, then {@link #with(Wood)}.
   */
  public Species blankSpecies(String key, String commonName, WoodGroup group) {
    return reader.blank(key, commonName, group);
  }

  /**
   * Searches by key, common name in British or American use, botanical name; hyphens, commas,
   * plurals and the order of the words do not matter.
   */
  public Lookup find(String name) {
    return index.find(name);
  }

  /** The wood with exactly this key. */
  public Optional<Wood> byKey(String key) {
    return Optional.ofNullable(woods.get(key));
  }

  /** All woods, species first, in the order of the tables. */
  public List<Wood> all() {
    return List.copyOf(woods.values());
  }

  /** All species. */
  public List<Species> species() {
    return only(Species.class);
  }

  /** All strength classes. */
  public List<StrengthClass> strengthClasses() {
    return only(StrengthClass.class);
  }

  /** All sheet goods. */
  public List<SheetGood> sheetGoods() {
    return only(SheetGood.class);
  }

  /** Shrinkage of a strength class: the mean of its group, since a class names no species. */
  public Shrinkage shrinkageOf(StrengthClass strengthClass) {
    return reader.blank("any", "any", strengthClass.group()).shrinkage();
  }

  /** The sheets of a product whose values hold for a thickness in mm. */
  public List<SheetGood> sheets(Product product, double thickness) {
    return sheetGoods().stream()
        .filter(sheet -> sheet.product() == product && sheet.covers(thickness))
        .toList();
  }

  private <T> List<T> only(Class<T> kind) {
    return woods.values().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
