package org.stoutwork.check.member;

import org.stoutwork.section.Rectangle;
import org.stoutwork.section.Weakened;

/**
 * Figures of a net section, worked out once: every combination of loads asks for them again.
 *
 * @param gross the whole rectangle
 * @param area net, mm²
 * @param sectionModulus smaller net one, mm³
 * @param shearArea with which 1.5·V/A is the greatest shear stress, mm²
 */
public record NetSizes(Rectangle gross, double area, double sectionModulus, double shearArea) {

  /** The figures of a section. */
  public static NetSizes of(Weakened section) {
    return new NetSizes(
        section.gross(), section.area(), section.sectionModulus(), section.shearArea());
  }
}
