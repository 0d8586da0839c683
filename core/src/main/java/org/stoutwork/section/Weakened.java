package org.stoutwork.section;

/** A rectangle from which something is cut, bent about the axis along its side b. */
public sealed interface Weakened permits NetSection, PiercedSection {

  /** The whole rectangle. */
  Rectangle gross();

  /** Net area, mm². */
  double area();

  /** Smaller net section modulus, mm³. */
  double sectionModulus();

  /** Area with which 1.5·V/A is the greatest shear stress, mm². */
  double shearArea();
}
