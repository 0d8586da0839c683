package org.stoutwork.check.joint;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Timber;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Strengths;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.setting.TimberStrength;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.LoadDuration;

/** The strengths of the pieces of a joint as plain numbers, from the woods of the bench. */
final class JointStrengths {

  private static final double STEEL_GAMMA = 1.25;
  private static final double HARDWOOD_DIVISOR = 2.3;
  private static final double SOFTWOOD_DIVISOR = 2.1;
  private static final double OVENDRY_OF_CLASS = 1000;

  private record Asked(String rail, String post, DurationClass duration) {}

  private final Inquiry inquiry;
  private final Map<Asked, JointStrength> found = new HashMap<>();

  JointStrengths(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  JointStrength of(String rail, String post, DurationClass duration) {
    return found.computeIfAbsent(new Asked(rail, post, duration), this::make);
  }

  private JointStrength make(Asked asked) {
    String rail = asked.rail();
    String post = asked.post();
    DurationClass duration = asked.duration();
    return new JointStrength(
        timber(rail, duration),
        timber(post, duration),
        family(rail, duration),
        lasts(duration),
        gluesPoorly(rail) || gluesPoorly(post));
  }

  /** Whether glue that creeps has the time to. */
  static boolean lasts(DurationClass duration) {
    return duration == DurationClass.PERMANENT || duration == DurationClass.LONG;
  }

  /** The family of formulas and its factors, for a sheet as for solid wood. */
  StrengthFamily family(String wood, DurationClass duration) {
    if (inquiry.bench().basis() == BasisChoice.PARTIAL_FACTORS) {
      double kMod =
          inquiry
              .strengths()
              .tables()
              .time()
              .kMod(
                  Product.SOLID_TIMBER,
                  "",
                  inquiry.bench().air().climate().serviceClass(),
                  duration)
              .orElseThrow()
              .value();
      double gamma = inquiry.strengths().tables().time().gammaMConnections().value();
      return new StrengthFamily.PartialFactors(kMod, gamma, STEEL_GAMMA);
    }
    LoadDuration load = LoadDuration.of(duration).forConnection();
    double cD = inquiry.strengths().tables().time().cD(load.american()).value();
    return new StrengthFamily.Allowable(cD, hardwood(wood) ? HARDWOOD_DIVISOR : SOFTWOOD_DIVISOR);
  }

  /** Whether a wood is known to bond with difficulty. */
  boolean gluesPoorly(String wood) {
    return inquiry.strengths().tables().gluesPoorly(named(wood));
  }

  private TimberStrength timber(String wood, DurationClass duration) {
    Strengths s = inquiry.strengths();
    return new TimberStrength(
        need(s, wood, duration, DesignQuantity.BENDING),
        need(s, wood, duration, DesignQuantity.TENSION_PARALLEL),
        need(s, wood, duration, DesignQuantity.TENSION_PERPENDICULAR),
        need(s, wood, duration, DesignQuantity.COMPRESSION_PARALLEL),
        need(s, wood, duration, DesignQuantity.COMPRESSION_PERPENDICULAR),
        need(s, wood, duration, DesignQuantity.SHEAR),
        clear(wood, ClearProperty.SHEAR),
        need(s, wood, duration, DesignQuantity.DENSITY_LOW),
        gravity(wood),
        hardwood(wood),
        need(s, wood, duration, DesignQuantity.MODULUS_MEAN),
        breaking(wood));
  }

  private static double need(
      Strengths s, String wood, DurationClass duration, DesignQuantity what) {
    return s.value(wood, duration, what).orElseThrow();
  }

  /** A wood of the bench. */
  Wood named(String wood) {
    Timber timber = inquiry.bench().timbers().get(wood);
    return timber.wood();
  }

  private boolean hardwood(String wood) {
    if (named(wood) instanceof Species species) {
      return species.group() == WoodGroup.HARDWOOD;
    }
    return !(named(wood) instanceof StrengthClass timber) || timber.group() == WoodGroup.HARDWOOD;
  }

  /** A mean of clear wood; 0 where the species is not known. */
  private double clear(String wood, ClearProperty what) {
    return named(wood) instanceof Species species
        ? species.clear().dry(what).map(Property::value).orElse(0.0)
        : 0;
  }

  /** Bending strength at the moment of breaking: nobody counts on it for long. */
  private double breaking(String wood) {
    double mean = clear(wood, ClearProperty.BENDING);
    return mean == 0 && named(wood) instanceof StrengthClass timber
        ? timber.value(ClassProperty.BENDING).value()
        : mean;
  }

  private double gravity(String wood) {
    double fromClear = clear(wood, ClearProperty.SPECIFIC_GRAVITY);
    if (fromClear > 0) {
      return fromClear;
    }
    OptionalDouble low =
        inquiry.strengths().value(wood, DurationClass.PERMANENT, DesignQuantity.DENSITY_MEAN);
    return low.orElseThrow() / OVENDRY_OF_CLASS;
  }
}
