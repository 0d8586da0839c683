package org.stoutwork.analysis.element;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.Material;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.linear.SmallDense;

/**
 * The beam seen as a cantilever from its start, with the six forces q at its end as unknowns.
 *
 * <p>Stiff end springs add flexibility; soft springs and releases add unknowns for their slip. So
 * neither a nearly rigid nor a nearly free joint loses digits. Local axes throughout.
 */
final class BasicSystem {
  private final double length;
  private final CrossSection section;
  private final Material material;
  private final MemberEnd startEnd;
  private final MemberEnd endEnd;
  private final double[] startCompliance = new double[6];
  private final double[] endCompliance = new double[6];
  private final int[] softStart;
  private final int[] softEnd;
  private final double[][] inverse;
  private final double[][] stiffness = new double[6][6];
  private final CantileverTip tip;

  /** Forces at both ends and how far the springs at both ends have slipped. */
  @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
  record Answer(double[] startForces, double[] endForces, double[] startSlip, double[] endSlip) {}

  BasicSystem(
      double length, CrossSection section, Material material, MemberEnd start, MemberEnd end) {
    this.length = length;
    this.section = section;
    this.material = material;
    this.startEnd = start;
    this.endEnd = end;
    this.tip = new CantileverTip(length, section, material);
    double[][] f = flexibility();
    double[] own = new double[6];
    for (int i = 0; i < 6; i++) {
      own[i] = f[i][i];
    }
    List<Integer> softAtStart = new ArrayList<>();
    List<Integer> softAtEnd = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double ks = stiffnessOf(start.in(Direction.of(i)));
      if (ks * own[i] < 1) {
        softAtStart.add(i);
      } else {
        startCompliance[i] = 1 / ks;
        addStartCompliance(f, i);
      }
      double ke = stiffnessOf(end.in(Direction.of(i)));
      if (ke * own[i] < 1) {
        softAtEnd.add(i);
      } else {
        endCompliance[i] = 1 / ke;
        f[i][i] += endCompliance[i];
      }
    }
    softStart = softAtStart.stream().mapToInt(Integer::intValue).toArray();
    softEnd = softAtEnd.stream().mapToInt(Integer::intValue).toArray();
    inverse = invert(f, start, end);
    if (inverse != null) {
      for (int i = 0; i < 6; i++) {
        System.arraycopy(inverse[i], 0, stiffness[i], 0, 6);
      }
    }
  }

  private static double stiffnessOf(EndCondition condition) {
    if (condition instanceof EndCondition.Elastic spring) {
      return spring.stiffness();
    }
    return condition instanceof EndCondition.Free ? 0 : Double.POSITIVE_INFINITY;
  }

  private double[][] flexibility() {
    double[][] f = new double[6][6];
    double l = length;
    double ei = material.e() * section.iz();
    double shear = section.asy() == 0 ? 0 : l / (material.g() * section.asy());
    f[0][0] = l / (material.e() * section.area());
    f[3][3] = l / (material.g() * section.j());
    f[1][1] = l * l * l / (3 * ei) + shear;
    f[1][5] = l * l / (2 * ei);
    f[5][1] = f[1][5];
    f[5][5] = l / ei;
    ei = material.e() * section.iy();
    shear = section.asz() == 0 ? 0 : l / (material.g() * section.asz());
    f[2][2] = l * l * l / (3 * ei) + shear;
    f[2][4] = -l * l / (2 * ei);
    f[4][2] = f[2][4];
    f[4][4] = l / ei;
    return f;
  }

  /** Row i of the matrix that moves forces from the end to the start. */
  private double[] carried(int i) {
    double[] h = new double[6];
    h[i] = 1;
    if (i == 4) {
      h[2] = -length;
    } else if (i == 5) {
      h[1] = length;
    }
    return h;
  }

  private void addStartCompliance(double[][] f, int i) {
    double[] h = carried(i);
    for (int r = 0; r < 6; r++) {
      for (int c = 0; c < 6; c++) {
        f[r][c] += startCompliance[i] * h[r] * h[c];
      }
    }
  }

  private double[][] invert(double[][] f, MemberEnd start, MemberEnd end) {
    int n = 6 + softEnd.length + softStart.length;
    double[][] a = new double[n][n];
    for (int i = 0; i < 6; i++) {
      System.arraycopy(f[i], 0, a[i], 0, 6);
    }
    int at = 6;
    for (int i : softEnd) {
      a[i][at] = 1;
      a[at][i] = 1;
      a[at][at] = -stiffnessOf(end.in(Direction.of(i)));
      at++;
    }
    for (int i : softStart) {
      double[] h = carried(i);
      for (int r = 0; r < 6; r++) {
        a[r][at] = h[r];
        a[at][r] = h[r];
      }
      a[at][at] = -stiffnessOf(start.in(Direction.of(i)));
      at++;
    }
    if (looseMotion(start, end, length) != null) {
      return null;
    }
    return SmallDense.inverseOfSymmetric(a);
  }

  double[][] stiffness() {
    return stiffness;
  }

  double[] forces(double[] d) {
    double[] q = new double[6];
    for (int i = 0; i < 6; i++) {
      double[] k = stiffness[i];
      q[i] = k[0] * d[0] + k[1] * d[1] + k[2] * d[2] + k[3] * d[3] + k[4] * d[4] + k[5] * d[5];
    }
    return q;
  }

  /** The answer to a relative motion {@code d} of the end and loads along the beam. */
  Answer answer(double[] d, SpanLoad load) {
    double[] w = load.resultant();
    double[] asked = load.isNone() ? d : asked(d, load, w);
    double[] z = new double[inverse.length];
    for (int i = 0; i < z.length; i++) {
      double[] row = inverse[i];
      double sum = 0;
      for (int j = 0; j < asked.length; j++) {
        sum += row[j] * asked[j];
      }
      z[i] = sum;
    }
    return answerOf(z, w);
  }

  /** The motion that the forces at the end have to bring about, then what soft springs bear. */
  private double[] asked(double[] d, SpanLoad load, double[] w) {
    double[] asked = new double[inverse.length];
    double[] own = tip.under(load);
    for (int i = 0; i < 6; i++) {
      asked[i] = d[i] - own[i];
      if (w[i] != 0) {
        double[] h = carried(i);
        for (int r = 0; r < 6; r++) {
          asked[r] -= startCompliance[i] * h[r] * w[i];
        }
      }
    }
    for (int k = 0; k < softStart.length; k++) {
      asked[6 + softEnd.length + k] = -w[softStart[k]];
    }
    return asked;
  }

  private Answer answerOf(double[] z, double[] w) {
    double[] q = java.util.Arrays.copyOf(z, 6);
    double[] start = {
      -q[0] - w[0],
      -q[1] - w[1],
      -q[2] - w[2],
      -q[3] - w[3],
      -q[4] + length * q[2] - w[4],
      -q[5] - length * q[1] - w[5]
    };
    double[] slip = new double[6];
    for (int i = 0; i < 6; i++) {
      slip[i] = startCompliance[i] * start[i];
    }
    for (int k = 0; k < softStart.length; k++) {
      int i = softStart[k];
      slip[i] = -z[6 + softEnd.length + k];
      // What a soft spring passes on is a small remainder of large moments: its slip knows better.
      start[i] = stiffnessOf(startEnd.in(Direction.of(i))) * slip[i];
    }
    double[] endSlip = new double[6];
    for (int i = 0; i < 6; i++) {
      endSlip[i] = endCompliance[i] * q[i];
    }
    for (int k = 0; k < softEnd.length; k++) {
      endSlip[softEnd[k]] = z[6 + k];
      q[softEnd[k]] = stiffnessOf(endEnd.in(Direction.of(softEnd[k]))) * z[6 + k];
    }
    return new Answer(start, q, slip, endSlip);
  }

  /** Which rigid motion the releases leave to the beam itself, in words, or null. */
  static String looseMotion(MemberEnd start, MemberEnd end, double length) {
    if (free(start, Direction.UX) && free(end, Direction.UX)) {
      return "along its own axis (free at both ends)";
    }
    if (free(start, Direction.RX) && free(end, Direction.RX)) {
      return "about its own axis (free to twist at both ends)";
    }
    if (loosePlane(start, end, Direction.UY, Direction.RZ, length)) {
      return "along its local y (too many releases)";
    }
    if (loosePlane(start, end, Direction.UZ, Direction.RY, length)) {
      return "along its local z (too many releases)";
    }
    return null;
  }

  /** Held translations and rotations must stop both a shift a and a turn b of the rigid beam. */
  private static boolean loosePlane(
      MemberEnd start, MemberEnd end, Direction shift, Direction turn, double length) {
    int shifts = (free(start, shift) ? 0 : 1) + (free(end, shift) ? 0 : 1);
    boolean turns = !free(start, turn) || !free(end, turn);
    return shifts == 0 || (shifts == 1 && !turns) || !(length > 0);
  }

  private static boolean free(MemberEnd end, Direction direction) {
    return end.in(direction) instanceof EndCondition.Free;
  }
}
