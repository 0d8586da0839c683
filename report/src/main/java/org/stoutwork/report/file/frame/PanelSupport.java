package org.stoutwork.report.file.frame;

/**
 * A straight line on which a panel is held.
 *
 * @param line where it runs
 * @param hold how it holds the deflection w
 * @param slopeAlongFixed whether the section rotation that follows the line is fixed
 * @param slopeAcrossFixed whether the section rotation at right angles to the line is fixed
 */
public record PanelSupport(
    Line line, Hold hold, boolean slopeAlongFixed, boolean slopeAcrossFixed) {

  /**
   * A line over the whole panel.
   *
   * @param constantX true when x is constant (the line runs across), false when y is
   * @param at the constant coordinate, mm
   */
  public record Line(boolean constantX, double at) {}

  /** How the deflection is held. */
  public sealed interface Hold {
    /** Not at all. */
    record Free() implements Hold {}

    /** In both directions. */
    record Fixed() implements Hold {}

    /** Against sinking only. */
    record CompressionOnly() implements Hold {}

    /**
     * By a spring along the line.
     *
     * @param stiffness N/mm per mm of line, positive
     */
    record Elastic(double stiffness) implements Hold {}
  }
}
