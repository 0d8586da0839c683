package org.stoutwork.report.file.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.ElasticRatios;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.SheetProperty;
import org.stoutwork.wood.Shrinkage;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;

/** Lists everything that is known of a wood. Thread-safe. */
public final class WoodFacts {

  /** The state of a value found on green wood. */
  public static final String GREEN = "green";

  /** The state of a value found on air-dry wood. */
  public static final String DRY = "dry";

  private WoodFacts() {}

  /**
   * The facts of a wood, in the order in which tables list them.
   *
   * @param wood any wood
   * @param moisture content at which means are wanted as well, %; counts for species only
   */
  public static List<WoodFact> of(Wood wood, OptionalDouble moisture) {
    if (wood instanceof Species species) {
      return ofSpecies(species, moisture);
    }
    return wood instanceof StrengthClass one ? ofClass(one) : ofSheet((SheetGood) wood);
  }

  private static List<WoodFact> ofSpecies(Species species, OptionalDouble moisture) {
    List<WoodFact> facts = new ArrayList<>();
    for (ClearProperty what : ClearProperty.values()) {
      String key = camel(what);
      add(facts, key, what.meaning(), GREEN, species.clear().green(what));
      add(facts, key, what.meaning(), DRY, species.clear().dry(what));
      moisture.ifPresent(at -> MeansAt.mean(species, what, at).ifPresent(facts::add));
    }
    moisture.ifPresent(at -> MeansAt.density(species, at).ifPresent(facts::add));
    add(facts, "intersectionMoisture", "intersection moisture", "", species.intersection());
    ratios(facts, species.ratios());
    shrinkage(facts, species.shrinkage());
    return facts;
  }

  private static void ratios(List<WoodFact> facts, ElasticRatios r) {
    ratio(facts, "ratioEtEl", "E_T/E_L, modulus along the rings", r.et(), r);
    ratio(facts, "ratioErEl", "E_R/E_L, modulus across them", r.er(), r);
    ratio(facts, "ratioGlrEl", "G_LR/E_L", r.glr(), r);
    ratio(facts, "ratioGltEl", "G_LT/E_L", r.glt(), r);
    ratio(facts, "ratioGrtEl", "G_RT/E_L", r.grt(), r);
    ratio(facts, "poissonLr", "ν_LR", r.nuLr(), r);
    ratio(facts, "poissonLt", "ν_LT", r.nuLt(), r);
    ratio(facts, "poissonRt", "ν_RT", r.nuRt(), r);
  }

  private static void ratio(
      List<WoodFact> facts, String key, String meaning, double value, ElasticRatios ratios) {
    add(facts, key, meaning, "", new Property(value, Unit.ONE, ratios.source()));
  }

  private static void shrinkage(List<WoodFact> facts, Shrinkage s) {
    add(facts, "shrinkageRadial", "shrinkage across the rings", "", s.radial());
    add(facts, "shrinkageTangential", "shrinkage along the rings", "", s.tangential());
    add(facts, "movementRadial", "movement across, per % MC", "", s.radialCoefficient());
    add(facts, "movementTangential", "movement along, per % MC", "", s.tangentialCoefficient());
  }

  private static List<WoodFact> ofClass(StrengthClass one) {
    List<WoodFact> facts = new ArrayList<>();
    for (ClassProperty what : ClassProperty.values()) {
      String key = "class" + capital(camel(what));
      add(facts, key, what.meaning(), "", one.value(what));
    }
    String crack = "k_cr, part of the width in shear";
    add(facts, "classCrackFactor", crack, "", StrengthClass.CRACK_FACTOR);
    return facts;
  }

  private static List<WoodFact> ofSheet(SheetGood sheet) {
    List<WoodFact> facts = new ArrayList<>();
    for (SheetProperty what : SheetProperty.values()) {
      String key = "sheet" + capital(camel(what));
      sheet.value(what).ifPresent(value -> add(facts, key, what.meaning(), "", value));
    }
    return facts;
  }

  private static void add(
      List<WoodFact> facts, String key, String meaning, String state, Optional<Property> value) {
    value.ifPresent(property -> add(facts, key, meaning, state, property));
  }

  private static void add(
      List<WoodFact> facts, String key, String meaning, String state, Property value) {
    facts.add(new WoodFact(key, meaning, state, value));
  }

  static String camel(Enum<?> constant) {
    StringBuilder camel = new StringBuilder();
    for (String word : constant.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      camel.append(camel.isEmpty() ? word : capital(word));
    }
    return camel.toString();
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
