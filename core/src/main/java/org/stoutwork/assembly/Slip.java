package org.stoutwork.assembly;

/** How far screws give way in timber. */
final class Slip {

  private Slip() {}

  /**
   * Slip modulus K_ser of a screw in one shear plane, N/mm: ρ_m^1.5·d/23 with ρ_m = √(ρ_1·ρ_2) (EN
   * 1995-1-1 Table 7.1, from memory).
   *
   * @param d diameter, mm
   * @param density1 of one piece, kg/m³
   * @param density2 of the other, kg/m³
   */
  static double ofScrew(double d, double density1, double density2) {
    return Math.pow(density1 * density2, 0.75) * d / 23;
  }

  /**
   * Stiffness of a screw against being drawn out of the top across its grain, N/mm: 25·d·l_ef
   * (usual in European technical assessments of wood screws, from memory).
   *
   * @param d diameter, mm
   * @param thread in the top, mm
   */
  static double ofPulledScrew(double d, double thread) {
    return 25 * d * thread;
  }
}
