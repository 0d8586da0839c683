package org.stoutwork.wood.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;
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
import org.stoutwork.wood.moisture.ClearMeans;
import org.stoutwork.wood.moisture.WoodDensity;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/** Lists the facts about a wood, in the order of the tables. */
public final class WoodCard {

  private static final List<ClearProperty> WITH_MOISTURE =
      List.of(
          ClearProperty.BENDING,
          ClearProperty.MODULUS,
          ClearProperty.COMPRESSION_PARALLEL,
          ClearProperty.COMPRESSION_PERPENDICULAR,
          ClearProperty.SHEAR,
          ClearProperty.TENSION_PERPENDICULAR);

  private WoodCard() {}

  /** What the tables say of a wood. */
  public static List<Fact> of(Wood wood) {
    if (wood instanceof Species species) {
      return ofSpecies(species);
    }
    if (wood instanceof StrengthClass timber) {
      return ofClass(timber);
    }
    return ofSheet((SheetGood) wood);
  }

  /**
   * The means of a species at a moisture content, worked out or estimated where the tables do not
   * print them; the mark of each is the weakest of those it rests on.
   *
   * @param species of clear wood
   * @param moisture content, %, above 0 and up to 30
   * @param means by which values follow moisture
   */
  public static List<Fact> at(Species species, double moisture, ClearMeans means) {
    List<Fact> facts = new ArrayList<>();
    RecordingPad weighing = Pad.recording();
    add(
        facts,
        "density",
        "density",
        "ρ",
        Unit.KG_PER_M3,
        WoodDensity.mean(species, moisture, weighing),
        weighing);
    for (ClearProperty what : WITH_MOISTURE) {
      RecordingPad pad = Pad.recording();
      OptionalDouble value = means.mean(species, what, moisture, pad);
      add(facts, camel(what.name()), what.meaning(), what.symbol(), what.unit(), value, pad);
    }
    return List.copyOf(facts);
  }

  private static void add(
      List<Fact> facts,
      String key,
      String words,
      String symbol,
      Unit unit,
      OptionalDouble value,
      RecordingPad pad) {
    if (value.isPresent()) {
      Mark mark = pad.working().weakestMark();
      Source source = new Source("worked out at the moisture content from the tables", "", mark);
      facts.add(new Fact(key, words, symbol, new Property(value.getAsDouble(), unit, source)));
    }
  }

  private static List<Fact> ofSpecies(Species species) {
    List<Fact> facts = new ArrayList<>();
    for (ClearProperty what : ClearProperty.values()) {
      species.clear().green(what).ifPresent(p -> facts.add(clear(what, "Green", "green", p)));
      String dry = "at %s %% moisture".formatted(species.clear().dryMoisture());
      species.clear().dry(what).ifPresent(p -> facts.add(clear(what, "Dry", dry, p)));
    }
    facts.add(
        new Fact(
            "intersectionMoisture",
            "intersection moisture content",
            "M_p",
            species.intersection()));
    addShrinkage(facts, species.shrinkage());
    addRatios(facts, species.ratios());
    return List.copyOf(facts);
  }

  private static Fact clear(ClearProperty what, String state, String words, Property property) {
    return new Fact(
        camel(what.name()) + state,
        "%s, %s".formatted(what.meaning(), words),
        what.symbol(),
        property);
  }

  private static void addShrinkage(List<Fact> facts, Shrinkage s) {
    facts.add(new Fact("shrinkageRadial", "shrinkage, radial", "S_R", s.radial()));
    facts.add(new Fact("shrinkageTangential", "shrinkage, tangential", "S_T", s.tangential()));
    facts.add(
        new Fact("movementRadial", "movement per 1 % MC, radial", "C_R", s.radialCoefficient()));
    facts.add(
        new Fact(
            "movementTangential",
            "movement per 1 % MC, tangential",
            "C_T",
            s.tangentialCoefficient()));
  }

  private static void addRatios(List<Fact> facts, ElasticRatios r) {
    addRatio(facts, "ratioET", "E_T/E_L", r.et(), r);
    addRatio(facts, "ratioER", "E_R/E_L", r.er(), r);
    addRatio(facts, "ratioGLR", "G_LR/E_L", r.glr(), r);
    addRatio(facts, "ratioGLT", "G_LT/E_L", r.glt(), r);
    addRatio(facts, "ratioGRT", "G_RT/E_L", r.grt(), r);
    addRatio(facts, "poissonLR", "ν_LR", r.nuLr(), r);
    addRatio(facts, "poissonLT", "ν_LT", r.nuLt(), r);
    addRatio(facts, "poissonRT", "ν_RT", r.nuRt(), r);
  }

  private static void addRatio(
      List<Fact> facts, String key, String symbol, double value, ElasticRatios ratios) {
    String words = key.startsWith("poisson") ? "Poisson ratio" : "elastic ratio";
    facts.add(new Fact(key, words, symbol, new Property(value, Unit.ONE, ratios.source())));
  }

  private static List<Fact> ofClass(StrengthClass timber) {
    List<Fact> facts = new ArrayList<>();
    for (ClassProperty what : ClassProperty.values()) {
      facts.add(new Fact(camel(what.name()), what.meaning(), what.symbol(), timber.value(what)));
    }
    facts.add(
        new Fact("crackFactor", "part of the width in shear", "k_cr", StrengthClass.CRACK_FACTOR));
    return List.copyOf(facts);
  }

  private static List<Fact> ofSheet(SheetGood sheet) {
    List<Fact> facts = new ArrayList<>();
    for (SheetProperty what : SheetProperty.values()) {
      sheet
          .value(what)
          .ifPresent(
              p -> facts.add(new Fact(camel(what.name()), what.meaning(), what.symbol(), p)));
    }
    return List.copyOf(facts);
  }

  /** {@code SHEAR_MODULUS} as {@code shearModulus}. */
  private static String camel(String constant) {
    StringBuilder out = new StringBuilder();
    boolean upper = false;
    for (char c : constant.toLowerCase(Locale.ROOT).toCharArray()) {
      if (c == '_') {
        upper = true;
      } else {
        out.append(upper ? Character.toUpperCase(c) : c);
        upper = false;
      }
    }
    return out.toString();
  }
}
