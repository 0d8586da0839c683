package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.working.Pad;

/**
 * The strength check of one section of one member, under either basis, on any pad.
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
 * @param lateral what lateral buckling leaves of the strength in bending about the stronger axis
 */
public record Stresses(
    BasisChoice basis,
    double fm,
    double ft,
    double fc,
    double fv,
    double fc0k,
    double e05,
    double kcr,
    double lengthY,
    double lengthZ,
    Lateral lateral) {

  /** Stresses in one section, MPa, none of them negative. */
  private record Acting(NetSizes upDown, NetSizes sideways, double axial, double my, double mz) {

    /** Whether bending up and down is that about the stronger axis. */
    boolean strongUpDown() {
      return upDown.gross().h() > upDown.gross().b();
    }

    boolean square() {
      return upDown.gross().h() == upDown.gross().b();
    }

    double strong() {
      return strongUpDown() ? my : mz;
    }

    double weak() {
      return strongUpDown() ? mz : my;
    }

    double depth(boolean y) {
      return y ? upDown.gross().h() : sideways.gross().h();
    }
  }

  /** Utilisation of a cut by axial force and bending. */
  double bending(Cut cut, double[] forces, Pad pad) {
    return bending(cut.upDown(), cut.sideways(), forces, pad);
  }

  /**
   * Utilisation by axial force and bending, with buckling and lateral buckling; what governs is
   * written last.
   *
   * @param upDown the section as it bends in the local x-z plane
   * @param sideways the section as it bends in the local x-y plane
   * @param forces N, Vy, Vz, T, My, Mz in N and N·mm; tension positive
   * @return 0 or more; the largest number there is where the member buckles or is refused
   */
  public double bending(NetSizes upDown, NetSizes sideways, double[] forces, Pad pad) {
    double n = forces[0];
    Acting acting =
        new Acting(
            upDown,
            sideways,
            pad.take(MemberFormulas.AXIAL, Math.abs(n), upDown.area()),
            pad.take(MemberFormulas.BENDING_Y, Math.abs(forces[4]), upDown.sectionModulus()),
            pad.take(MemberFormulas.BENDING_Z, Math.abs(forces[5]), sideways.sectionModulus()));
    if (lateral.tooSlender()) {
      pad.remark("The member is more slender than the code allows: R_B is above 50.");
      return Double.MAX_VALUE;
    }
    boolean european = basis == BasisChoice.PARTIAL_FACTORS;
    if (n >= 0) {
      return european ? europeanTension(acting, pad) : americanTension(acting, pad);
    }
    return european ? european(acting, pad) : american(acting, pad);
  }

  private double europeanTension(Acting a, Pad pad) {
    return lateral.counts()
        ? pad.take(
            LateralSums.of(a.strongUpDown()).tension,
            a.axial(),
            ft,
            a.strong(),
            a.weak(),
            fm,
            lateral.factor())
        : pad.take(MemberFormulas.TENSION, a.axial(), ft, a.my(), a.mz(), fm);
  }

  private double americanTension(Acting a, Pad pad) {
    if (!lateral.asked()) {
      return pad.take(MemberFormulas.AMERICAN_TENSION, a.axial(), ft, a.my(), a.mz(), fm);
    }
    if (a.strong() >= lateral.critical()) {
      return gone(pad);
    }
    return pad.take(
        LateralSums.of(a.strongUpDown()).americanTension,
        a.axial(),
        ft,
        a.strong(),
        a.weak(),
        fm,
        lateral.factor(),
        lateral.critical());
  }

  private static double gone(Pad pad) {
    pad.remark("The stresses reach those at which the member buckles laterally.");
    return Double.MAX_VALUE;
  }

  /** Buckling both ways, and lateral buckling; the one that governs is written last. */
  private double european(Acting acting, Pad pad) {
    List<ToDoubleFunction<Pad>> sums = new ArrayList<>();
    sums.add(on -> buckling(acting, true, on));
    sums.add(on -> buckling(acting, false, on));
    sums.addAll(0, laterally(acting));
    if (pad.keepsLines()) {
      sums.sort(Comparator.comparingDouble(sum -> sum.applyAsDouble(Pad.blank())));
    }
    double most = 0;
    for (ToDoubleFunction<Pad> sum : sums) {
      most = Math.max(most, sum.applyAsDouble(pad));
    }
    return most;
  }

  private double kept(Acting a, boolean y, Pad pad) {
    return Column.european(pad, y ? lengthY : lengthZ, a.depth(y), fc0k, e05);
  }

  private double buckling(Acting a, boolean y, Pad pad) {
    double k = kept(a, y, pad);
    if (!lateral.counts()) {
      return pad.take(
          y ? MemberFormulas.COMPRESSION_Y : MemberFormulas.COMPRESSION_Z,
          a.axial(),
          k,
          fc,
          a.my(),
          a.mz(),
          fm);
    }
    LateralSums sums = LateralSums.of(a.strongUpDown());
    return pad.take(
        y == a.strongUpDown() ? sums.strong : sums.weak,
        a.axial(),
        k,
        fc,
        a.strong(),
        a.weak(),
        fm,
        lateral.factor());
  }

  /**
   * Compression with bending about the stronger axis, of a member that keeps its whole strength in
   * bending too; about either axis where neither is the stronger.
   */
  private List<ToDoubleFunction<Pad>> laterally(Acting a) {
    List<ToDoubleFunction<Pad>> out = new ArrayList<>();
    for (boolean upDown : a.square() ? List.of(true, false) : List.of(a.strongUpDown())) {
      double bent = upDown ? a.my() : a.mz();
      if (bent > 0) {
        out.add(
            pad ->
                pad.take(
                    LateralSums.of(upDown).lateral,
                    a.axial(),
                    kept(a, !upDown, Pad.blank()),
                    fc,
                    bent,
                    fm,
                    lateral.factor()));
      }
    }
    return out;
  }

  private double american(Acting a, Pad pad) {
    double hy = a.depth(true);
    double hz = a.depth(false);
    double eMin = Column.minimum(pad, e05);
    boolean yGoverns = lengthY / hy >= lengthZ / hz;
    double criticalY = Column.critical(yGoverns ? pad : Pad.blank(), lengthY, hy, eMin);
    double criticalZ = Column.critical(yGoverns ? Pad.blank() : pad, lengthZ, hz, eMin);
    double cp = Column.american(pad, yGoverns ? criticalY : criticalZ, fc);
    if (a.axial() >= Math.min(criticalY, criticalZ)) {
      pad.remark(
          "The compression stress exceeds the critical buckling stress: the member buckles.");
      return Double.MAX_VALUE;
    }
    if (!lateral.asked()) {
      return pad.take(
          MemberFormulas.AMERICAN_COMPRESSION,
          a.axial(),
          cp,
          fc,
          a.my(),
          criticalY,
          a.mz(),
          criticalZ,
          fm);
    }
    return americanLateral(a, cp, criticalY, criticalZ, pad);
  }

  private double americanLateral(Acting a, double cp, double criticalY, double criticalZ, Pad pad) {
    double strong = a.strongUpDown() ? criticalY : criticalZ;
    double weak = a.strongUpDown() ? criticalZ : criticalY;
    if (a.axial() / weak + Math.pow(a.strong() / lateral.critical(), 2) >= 1) {
      return gone(pad);
    }
    return pad.take(
        LateralSums.of(a.strongUpDown()).americanCompression,
        a.axial(),
        cp,
        fc,
        a.strong(),
        a.weak(),
        fm,
        lateral.factor(),
        lateral.critical(),
        strong,
        weak);
  }

  /** Shear stress in a cut over shear strength. */
  double shear(Cut cut, double[] forces, Pad pad) {
    return shear(cut.upDown(), cut.sideways(), forces, pad);
  }

  /** {@link #shearStress} over shear strength. */
  public double shear(NetSizes upDown, NetSizes sideways, double[] forces, Pad pad) {
    return shearStress(upDown, sideways, forces, pad) / fv;
  }

  /** Shear stress in a cut, MPa. */
  double shearStress(Cut cut, double[] forces, Pad pad) {
    return shearStress(cut.upDown(), cut.sideways(), forces, pad);
  }

  /**
   * Greatest shear stress, both directions together, MPa.
   *
   * @param upDown the section as it bends in the local x-z plane
   * @param sideways the section as it bends in the local x-y plane
   * @param forces N, Vy, Vz, T, My, Mz in N and N·mm
   */
  public double shearStress(NetSizes upDown, NetSizes sideways, double[] forces, Pad pad) {
    return pad.take(
        MemberFormulas.SHEAR,
        Math.abs(forces[2]),
        upDown.shearArea(),
        Math.abs(forces[1]),
        sideways.shearArea(),
        kcr);
  }
}
