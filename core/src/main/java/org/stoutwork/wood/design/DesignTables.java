package org.stoutwork.wood.design;

import java.util.Optional;
import org.stoutwork.quantity.Unit;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.catalogue.ClassAssignments;
import org.stoutwork.wood.direction.WoodStiffness;
import org.stoutwork.wood.grade.GrowthRatios;
import org.stoutwork.wood.grade.Seasoning;
import org.stoutwork.wood.moisture.ClearMeans;
import org.stoutwork.wood.scatter.Variability;
import org.stoutwork.wood.surface.Gluing;
import org.stoutwork.wood.time.TimeFactors;

/** The tables that design values are made from. Load once and pass on. Immutable. */
public final class DesignTables {

  private final ClearMeans means;
  private final WoodStiffness stiffness;
  private final Variability variability;
  private final GrowthRatios growth;
  private final Seasoning seasoning;
  private final TimeFactors time;
  private final ClassAssignments assignments;
  private final Gluing gluing;
  private final Table divisors;

  private DesignTables() {
    means = ClearMeans.load();
    stiffness = new WoodStiffness(means);
    variability = Variability.load();
    growth = GrowthRatios.load();
    seasoning = Seasoning.load();
    time = TimeFactors.load();
    assignments = ClassAssignments.load();
    gluing = Gluing.load();
    divisors = Table.beside(Wood.class, "clear-wood-divisors.csv");
  }

  /**
   * Reads the tables.
   *
   * @throws org.stoutwork.table.TableFault if a table is damaged
   */
  public static DesignTables load() {
    return new DesignTables();
  }

  /** Means of clear wood at a moisture content. */
  public ClearMeans means() {
    return means;
  }

  /** Stiffness in the directions of wood. */
  public WoodStiffness stiffness() {
    return stiffness;
  }

  /** Scatter about the means. */
  public Variability variability() {
    return variability;
  }

  /** Ratios for growth. */
  public GrowthRatios growth() {
    return growth;
  }

  /** The most that knotty pieces gain by drying. */
  public Seasoning seasoning() {
    return seasoning;
  }

  /** Factors for time, service class and safety. */
  public TimeFactors time() {
    return time;
  }

  /** Strength classes that species are assigned to. */
  public ClassAssignments assignments() {
    return assignments;
  }

  /** Whether a wood bonds with difficulty. */
  public boolean gluesPoorly(Wood wood) {
    return gluing.difficult(wood).isPresent();
  }

  /** The divisor from a clear-wood value to an allowable stress. */
  Property divisor(String property, WoodGroup group) {
    Optional<Row> row =
        divisors.rows().stream().filter(r -> r.required("property").equals(property)).findFirst();
    return new Property(
        row.orElseThrow().requiredNumber(group.words()), Unit.ONE, row.orElseThrow().source());
  }

  /** The divisor for tension along the grain, which starts from the bending strength. */
  Property tensionDivisor(WoodGroup group) {
    return divisor("tension_parallel", group);
  }

  /** The divisor for a property of clear wood. */
  Property divisor(ClearProperty what, WoodGroup group) {
    String row =
        switch (what) {
          case BENDING -> "bending";
          case COMPRESSION_PARALLEL -> "compression_parallel";
          case COMPRESSION_PERPENDICULAR -> "compression_perpendicular";
          case SHEAR -> "shear";
          case TENSION_PERPENDICULAR -> "tension_perpendicular";
          default -> throw new IllegalArgumentException("no divisor for " + what.meaning());
        };
    return divisor(row, group);
  }
}
