package org.stoutwork.check.member;

import org.stoutwork.bench.BasisChoice;
import org.stoutwork.working.Pad;

/**
 * The strength check of one cut of one member, under either basis, on any pad.
 *
 * @param basis of the strengths
 * @param fm bending strength along the member, MPa
 * @param ft tension strength, MPa
 * @param fc compression strength, MPa
 * @param fv shear strength, MPa
 * @param fc0k characteristic compression strength, for slenderness under partial factors, MPa
 * @param e05 5 % modulus, MPa
 * @param kcr part of the width that carries shear
 * @param lengthY buckling length in the local x-z plane, mm
 * @param lengthZ buckling length in the local x-y plane, mm
 */
record Stresses(
    BasisChoice basis,
    double fm,
    double ft,
    double fc,
    double fv,
    double fc0k,
    double e05,
    double kcr,
    double lengthY,
    double lengthZ) {

  /** Utilisation by axial force and bending. */
  double bending(Cut cut, double[] forces, Pad pad) {
    double n = forces[0];
    double axial = pad.take(MemberFormulas.AXIAL, Math.abs(n), cut.area());
    double my =
        pad.take(MemberFormulas.BENDING_Y, Math.abs(forces[4]), cut.upDown().sectionModulus());
    double mz =
        pad.take(MemberFormulas.BENDING_Z, Math.abs(forces[5]), cut.sideways().sectionModulus());
    if (n >= 0) {
      return pad.take(
          basis == BasisChoice.PARTIAL_FACTORS
              ? MemberFormulas.TENSION
              : MemberFormulas.AMERICAN_TENSION,
          axial,
          ft,
          my,
          mz,
          fm);
    }
    return basis == BasisChoice.PARTIAL_FACTORS
        ? european(cut, axial, my, mz, pad)
        : american(cut, axial, my, mz, pad);
  }

  /** Buckling both ways; the one that governs is written last. */
  private double european(Cut cut, double axial, double my, double mz, Pad pad) {
    boolean yGoverns =
        buckling(cut, true, axial, my, mz, Pad.blank())
            > buckling(cut, false, axial, my, mz, Pad.blank());
    buckling(cut, !yGoverns, axial, my, mz, pad);
    return buckling(cut, yGoverns, axial, my, mz, pad);
  }

  private double buckling(Cut cut, boolean y, double axial, double my, double mz, Pad pad) {
    double h = y ? cut.upDown().gross().h() : cut.sideways().gross().h();
    double k = Column.european(pad, y ? lengthY : lengthZ, h, fc0k, e05);
    return pad.take(
        y ? MemberFormulas.COMPRESSION_Y : MemberFormulas.COMPRESSION_Z, axial, k, fc, my, mz, fm);
  }

  private double american(Cut cut, double axial, double my, double mz, Pad pad) {
    double hy = cut.upDown().gross().h();
    double hz = cut.sideways().gross().h();
    boolean yGoverns = lengthY / hy >= lengthZ / hz;
    double cp =
        yGoverns
            ? Column.american(pad, lengthY, hy, fc, e05)
            : Column.american(pad, lengthZ, hz, fc, e05);
    double criticalY = Column.AMERICAN_CRITICAL.value(e05 / 1.66, lengthY, hy);
    double criticalZ = Column.AMERICAN_CRITICAL.value(e05 / 1.66, lengthZ, hz);
    if (axial >= Math.min(criticalY, criticalZ)) {
      pad.remark(
          "The compression stress exceeds the critical buckling stress: the member buckles.");
      return Double.MAX_VALUE;
    }
    return pad.take(
        MemberFormulas.AMERICAN_COMPRESSION, axial, cp, fc, my, criticalY, mz, criticalZ, fm);
  }

  /** Shear stress over shear strength. */
  double shear(Cut cut, double[] forces, Pad pad) {
    return shearStress(cut, forces, pad) / fv;
  }

  /** Shear stress, MPa. */
  double shearStress(Cut cut, double[] forces, Pad pad) {
    return pad.take(
        MemberFormulas.SHEAR,
        Math.abs(forces[2]),
        cut.upDown().shearArea(),
        Math.abs(forces[1]),
        cut.sideways().shearArea(),
        kcr);
  }
}
