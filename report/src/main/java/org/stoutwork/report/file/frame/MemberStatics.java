package org.stoutwork.report.file.frame;

/** The results of one member, local axes. */
public interface MemberStatics {

  /** Length of the flexible part, mm. */
  double length();

  /** Fx Fy Fz Mx My Mz on the flexible part at its start. */
  double[] start();

  /** Fx Fy Fz Mx My Mz on the flexible part at its end. */
  double[] end();

  /**
   * N Vy Vz T My Mz on the positive face of what lies before a place.
   *
   * @param quarter the place, in quarters of the length: 0 to 4
   */
  double[] internal(int quarter);

  /** The values that are largest in size, with their places. */
  MemberExtremes extremes();
}
