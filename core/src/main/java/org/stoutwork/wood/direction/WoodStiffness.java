package org.stoutwork.wood.direction;

import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.ElasticRatios;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.moisture.ClearMeans;
import org.stoutwork.wood.moisture.RingDirection;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/** Mean stiffness of solid wood in its directions. */
public final class WoodStiffness {

  /** Modulus along the grain without shear deflection, from the modulus of the bending test. */
  public static final Formula SHEAR_FREE =
      Formula.define("E_L")
          .meaning("modulus along the grain, shear deflection taken out")
          .unit(Unit.MPA)
          .where("E_m", "bending modulus at span 14 times the depth", Unit.MPA)
          .as("1.1*E_m")
          .source(
              Source.published(
                  "Wood Handbook FPL-GTR-190 (2010)", "Table 5-3, footnote on the modulus"));

  private static final double ROLLING_PART = 0.1;
  private static final double CLASS_POISSON = 0.4;
  private static final Source CLASS_DIRECTIONS =
      Source.projectDefault(
          "a strength class has one modulus across and one shear modulus; rolling shear modulus a"
              + " tenth of it, Poisson ratios 0.4");

  private final ClearMeans means;

  /** Made with the means by which the modulus follows moisture. */
  public WoodStiffness(ClearMeans means) {
    this.means = means;
  }

  /**
   * The modulus E_L at a moisture content, MPa; empty if nothing is known of the species.
   *
   * @param species whose modulus is asked
   * @param moisture content, %, above 0
   * @param pad to write on
   */
  public OptionalDouble alongGrain(Species species, double moisture, Pad pad) {
    OptionalDouble bending = means.mean(species, ClearProperty.MODULUS, moisture, pad);
    return bending.isEmpty()
        ? bending
        : OptionalDouble.of(pad.take(SHEAR_FREE, bending.getAsDouble()));
  }

  /** All moduli of a species at a moisture content; the ratios to E_L are taken as constant. */
  public Optional<Orthotropic> of(Species species, double moisture, Pad pad) {
    OptionalDouble along = alongGrain(species, moisture, pad);
    return along.isEmpty()
        ? Optional.empty()
        : Optional.of(scaled(along.getAsDouble(), species.ratios()));
  }

  private static Orthotropic scaled(double e, ElasticRatios r) {
    return new Orthotropic(
        e,
        e * r.er(),
        e * r.et(),
        e * r.glr(),
        e * r.glt(),
        e * r.grt(),
        r.nuLr(),
        r.nuLt(),
        r.nuRt(),
        r.source());
  }

  /** All moduli of a strength class. */
  public static Orthotropic of(StrengthClass timber) {
    double across = timber.value(ClassProperty.MODULUS_ACROSS).value();
    double shear = timber.value(ClassProperty.SHEAR_MODULUS).value();
    return new Orthotropic(
        timber.value(ClassProperty.MODULUS_MEAN).value(),
        across,
        across,
        shear,
        shear,
        ROLLING_PART * shear,
        CLASS_POISSON,
        CLASS_POISSON,
        CLASS_POISSON,
        CLASS_DIRECTIONS);
  }

  /**
   * A plate whose grain runs along direction 1.
   *
   * @param wood its moduli
   * @param rings how the rings lie to the width; unknown takes the smaller of each pair
   */
  public static PlateModuli plate(Orthotropic wood, RingDirection rings) {
    return switch (rings) {
      case TANGENTIAL -> flatSawn(wood);
      case RADIAL -> quarterSawn(wood);
      case UNKNOWN -> smaller(flatSawn(wood), quarterSawn(wood));
    };
  }

  private static PlateModuli flatSawn(Orthotropic w) {
    return new PlateModuli(w.eL(), w.eT(), w.gLt(), w.gLr(), w.gRt(), w.nuLt(), w.source());
  }

  private static PlateModuli quarterSawn(Orthotropic w) {
    return new PlateModuli(w.eL(), w.eR(), w.gLr(), w.gLt(), w.gRt(), w.nuLr(), w.source());
  }

  private static PlateModuli smaller(PlateModuli a, PlateModuli b) {
    return new PlateModuli(
        a.e1(),
        Math.min(a.e2(), b.e2()),
        Math.min(a.g12(), b.g12()),
        Math.min(a.g13(), b.g13()),
        Math.min(a.g23(), b.g23()),
        Math.min(a.nu12(), b.nu12()),
        a.source());
  }
}
