package org.stoutwork.wood.design;

import java.util.List;
import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;
import org.stoutwork.working.Working;

/**
 * The design values of one wood under one basis and one set of conditions. Immutable; the working
 * of a value is made only on a pad that keeps lines.
 *
 * <pre>{@code
 * DesignValues beech =
 *     DesignValues.of(wood, new DesignBasis.ClearWoodAllowable(), conditions, tables);
 * Found bending = beech.find(DesignQuantity.BENDING, Pad.blank());
 * }</pre>
 */
public final class DesignValues {

  private static final Property WHOLE_WIDTH =
      new Property(
          1, Unit.ONE, Source.derived("the shear value already allows for checks, or has none"));

  private final Wood wood;
  private final DesignBasis basis;
  private final DesignConditions conditions;
  private final DesignTables tables;

  private DesignValues(
      Wood wood, DesignBasis basis, DesignConditions conditions, DesignTables tables) {
    this.wood = wood;
    this.basis = basis;
    this.conditions = conditions;
    this.tables = tables;
  }

  /** The values of a wood. */
  public static DesignValues of(
      Wood wood, DesignBasis basis, DesignConditions conditions, DesignTables tables) {
    return new DesignValues(wood, basis, conditions, tables);
  }

  /** The wood. */
  public Wood wood() {
    return wood;
  }

  /** The basis. */
  public DesignBasis basis() {
    return basis;
  }

  /** The conditions. */
  public DesignConditions conditions() {
    return conditions;
  }

  /** The same wood under a load of other duration or in another situation. */
  public DesignValues under(DesignConditions other) {
    return new DesignValues(wood, basis, other, tables);
  }

  /**
   * A design value.
   *
   * @param what is asked
   * @param pad on which the calculation is written, line by line
   * @return the value, or why the basis cannot give it
   */
  public Found find(DesignQuantity what, Pad pad) {
    if (wood instanceof Species species) {
      return ofSpecies(species, what, pad);
    }
    if (wood instanceof StrengthClass timber) {
      return ofClass(timber, what, pad);
    }
    return new SheetDesign((SheetGood) wood, basis, conditions, tables).find(what, pad);
  }

  /**
   * A design value with its working.
   *
   * @param found the value, or why there is none
   * @param working the lines that led to it; empty if there is none
   */
  public record Explained(Found found, Working working) {}

  /** A design value with its working. */
  public Explained explain(DesignQuantity what) {
    RecordingPad pad = Pad.recording();
    Found found = find(what, pad);
    return new Explained(found, found instanceof Found.Known ? pad.working() : Working.NONE);
  }

  /**
   * The part of the width that carries shear together with {@link DesignQuantity#SHEAR}: k_cr of EN
   * 1995-1-1 for a strength class of EN 338:2016, the whole width otherwise.
   */
  public Property crackFactor() {
    boolean solidClass =
        wood instanceof StrengthClass && basis instanceof DesignBasis.PartialFactors;
    return solidClass ? StrengthClass.CRACK_FACTOR : WHOLE_WIDTH;
  }

  /** The factor k_mod of this wood under its conditions; empty if it is not to be used there. */
  public Optional<Property> kMod() {
    return tables
        .time()
        .kMod(wood.product(), grade(), conditions.service(), conditions.duration().european());
  }

  /** The deformation factor k_def of this wood; empty if it is not to be used there. */
  public Optional<Property> kDef() {
    return tables.time().kDef(wood.product(), grade(), conditions.service());
  }

  private String grade() {
    return wood instanceof SheetGood sheet ? sheet.grade() : "";
  }

  private Found ofSpecies(Species species, DesignQuantity what, Pad pad) {
    if (basis instanceof DesignBasis.ClearWoodAllowable || what.isMean()) {
      return new ClearWoodDesign(species, conditions, tables).find(what, pad);
    }
    return new Found.Missing(
        what,
        basis.words(),
        "the species %s has means and no characteristic values; name a strength class"
            .formatted(species.key()),
        classesOf(species));
  }

  private List<String> classesOf(Species species) {
    List<String> classes = tables.assignments().of(species).stream().map(a -> a.words()).toList();
    return classes.isEmpty()
        ? List.of("the strength class on the grade stamp of the timber")
        : classes;
  }

  private Found ofClass(StrengthClass timber, DesignQuantity what, Pad pad) {
    ClassDesign values = new ClassDesign(timber);
    if (basis instanceof DesignBasis.PartialFactors factors) {
      return what.isStrength()
          ? new PartialFactorDesign(factors, timber.product(), "", conditions, tables)
              .design(what, values.characteristic(what, pad), pad)
          : new Found.Known(what, values.plain(what, pad));
    }
    if (what.isMean()) {
      return new Found.Known(what, values.plain(what, pad));
    }
    return new Found.Missing(
        what,
        basis.words(),
        "class %s has characteristic values and no means of clear wood".formatted(timber.key()),
        List.of("name the species", "use partial factors for this bench"));
  }
}
