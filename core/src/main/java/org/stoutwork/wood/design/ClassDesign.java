package org.stoutwork.wood.design;

import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.working.Pad;

/** Values of a strength class: characteristic values, and means for both bases. */
final class ClassDesign {

  private final StrengthClass timber;

  ClassDesign(StrengthClass timber) {
    this.timber = timber;
  }

  /** The characteristic value of a strength, written on the pad. */
  double characteristic(DesignQuantity what, Pad pad) {
    return switch (what) {
      case BENDING -> given(ClassProperty.BENDING, pad);
      case TENSION_PARALLEL -> given(ClassProperty.TENSION_PARALLEL, pad);
      case TENSION_PERPENDICULAR -> given(ClassProperty.TENSION_PERPENDICULAR, pad);
      case COMPRESSION_PARALLEL -> given(ClassProperty.COMPRESSION_PARALLEL, pad);
      case COMPRESSION_PERPENDICULAR -> given(ClassProperty.COMPRESSION_PERPENDICULAR, pad);
      case SHEAR -> shear(pad);
      case ROLLING_SHEAR ->
          pad.take(PartialFormulas.ROLLING_SHEAR, given(ClassProperty.TENSION_PERPENDICULAR, pad));
      case BENDING_ACROSS -> bendingAcross(pad);
      default -> throw new IllegalArgumentException(what.meaning() + " is no strength");
    };
  }

  private double shear(Pad pad) {
    pad.remark("This shear strength goes with the crack factor k_cr = 0.67 on the width.");
    return given(ClassProperty.SHEAR, pad);
  }

  private double bendingAcross(Pad pad) {
    pad.remark("Bending across the grain is taken as no stronger than tension across the grain.");
    return given(ClassProperty.TENSION_PERPENDICULAR, pad);
  }

  /** A mean, or a 5 % value of stiffness or density, to which no safety applies. */
  double plain(DesignQuantity what, Pad pad) {
    return switch (what) {
      case MODULUS_MEAN -> given(ClassProperty.MODULUS_MEAN, pad);
      case MODULUS_LOW -> given(ClassProperty.MODULUS_LOW, pad);
      case MODULUS_ACROSS -> given(ClassProperty.MODULUS_ACROSS, pad);
      case SHEAR_MODULUS_MEAN -> given(ClassProperty.SHEAR_MODULUS, pad);
      case SHEAR_MODULUS_LOW ->
          pad.take(
              PartialFormulas.SHEAR_MODULUS_LOW,
              given(ClassProperty.SHEAR_MODULUS, pad),
              given(ClassProperty.MODULUS_LOW, pad),
              given(ClassProperty.MODULUS_MEAN, pad));
      case DENSITY_MEAN -> given(ClassProperty.DENSITY_MEAN, pad);
      case DENSITY_LOW -> given(ClassProperty.DENSITY_LOW, pad);
      default -> throw new IllegalArgumentException(what.meaning() + " needs a safety factor");
    };
  }

  private double given(ClassProperty what, Pad pad) {
    Property property = timber.value(what);
    return pad.given(
        what.symbol(),
        "%s of %s".formatted(what.meaning(), timber.key()),
        property.value(),
        property.unit(),
        property.source());
  }
}
