package org.stoutwork.reference.beams;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.FrameSolver;
import org.stoutwork.analysis.solve.MemberResult;

/**
 * Single spans against numerical integration of w' = ψ - V/κGA, ψ' = M/EI, M' = V, V' = -q (S. P.
 * Timoshenko 1921) by Apache Commons Math 3.6.1, end conditions met by shooting.
 */
class IntegratedBeamsTest {
  private static final int STATIONS = 40;

  @ParameterizedTest
  @ValueSource(strings = {"B13", "B17", "B28", "B34", "B38", "B44", "B55", "B56"})
  void deflection_and_moment_follow_the_integrated_equations(String id) {
    Map<String, String> row =
        Csv.read("beams/beams.csv").stream()
            .filter(r -> r.get("id").equals(id))
            .findFirst()
            .orElseThrow();
    StraightBeam beam = new StraightBeam(row);
    FrameResult result = FrameSolver.prepare(beam.model()).prepared().solve(beam.loads()).result();
    MemberResult member = result.member("b0");
    List<double[]> integrated = new Shooting(row).solve();
    double w = 0;
    double m = 0;
    for (double[] s : integrated) {
      w = Math.max(w, Math.abs(s[1]));
      m = Math.max(m, Math.abs(s[3]));
    }
    for (double[] s : integrated) {
      assertEquals(s[1], member.deflectionAt(s[0])[2], 1e-8 * w, id + " w at " + s[0]);
      assertEquals(s[2], -member.deflectionAt(s[0])[4], 1e-8 * w / 100, id + " ψ at " + s[0]);
      assertEquals(s[3], -member.internalAt(s[0])[4], 1e-8 * m, id + " M at " + s[0]);
    }
  }

  /** Three integrations: loads alone, and one for each unknown at the left end. */
  private static final class Shooting {
    private final double length;
    private final double bending;
    private final double shear;
    private final List<double[]> lines = new ArrayList<>();
    private final List<double[]> jumps = new ArrayList<>();
    private final String[] left;
    private final String[] right;
    private final TreeSet<Double> stops = new TreeSet<>();

    Shooting(Map<String, String> row) {
      length = Double.parseDouble(row.get("L_mm"));
      bending = Double.parseDouble(row.get("EI_Nmm2"));
      shear = row.get("shear").equals("yes") ? 1 / Double.parseDouble(row.get("kappaGA_N")) : 0;
      for (String load : row.get("loads").split(";", -1)) {
        String[] p = load.split(":", -1);
        double[] v = new double[p.length];
        for (int i = 1; i < p.length; i++) {
          v[i] = Double.parseDouble(p[i]);
        }
        stops.add(v[1]);
        switch (p[0]) {
          case "Q" -> {
            lines.add(v);
            stops.add(v[2]);
          }
          case "P" -> jumps.add(new double[] {v[1], 0, -v[2]});
          default -> jumps.add(new double[] {v[1], -v[2], 0});
        }
      }
      for (int k = 0; k <= STATIONS; k++) {
        stops.add(length * k / STATIONS);
      }
      String[] free = {"0", "free"};
      String[] first = free;
      String[] last = free;
      for (String s : row.get("supports").split(";", -1)) {
        String[] p = s.split(":", -1);
        if (Double.parseDouble(p[0]) == 0) {
          first = p;
        } else {
          last = p;
        }
      }
      left = first;
      right = last;
    }

    List<double[]> solve() {
      double[][] start = starts();
      List<double[]> loaded = integrate(new double[4], true);
      List<double[]> one = integrate(start[0], false);
      List<double[]> two = integrate(start[1], false);
      int last = loaded.size() - 1;
      double[] r0 = endErrors(loaded.get(last));
      double[] r1 = endErrors(one.get(last));
      double[] r2 = endErrors(two.get(last));
      double[] c =
          new LUDecomposition(
                  new Array2DRowRealMatrix(new double[][] {{r1[0], r2[0]}, {r1[1], r2[1]}}), 1e-300)
              .getSolver()
              .solve(new ArrayRealVector(new double[] {-r0[0], -r0[1]}))
              .toArray();
      List<double[]> sum = new ArrayList<>();
      for (int i = 0; i < last; i++) {
        double[] s = loaded.get(i).clone();
        for (int j = 1; j < 5; j++) {
          s[j] += c[0] * one.get(i)[j] + c[1] * two.get(i)[j];
        }
        sum.add(s);
      }
      return sum;
    }

    private double spring(String[] support) {
      return Double.parseDouble(support[2]);
    }

    /** Two independent states (w, ψ, M, V) that the left support allows. */
    private double[][] starts() {
      return switch (left[1]) {
        case "pin" -> new double[][] {{0, 1e-3, 0, 0}, {0, 0, 0, 1000}};
        case "fix" -> new double[][] {{0, 0, 1e5, 0}, {0, 0, 0, 1000}};
        case "rot" -> new double[][] {{0, 1e-3, 1e-3 * spring(left), 0}, {0, 0, 0, 1000}};
        case "spring" -> new double[][] {{1, 0, 0, -spring(left)}, {0, 1e-3, 0, 0}};
        default -> new double[][] {{1, 0, 0, 0}, {0, 1e-3, 0, 0}};
      };
    }

    private double[] endErrors(double[] s) {
      return switch (right[1]) {
        case "pin" -> new double[] {s[1], s[3] / 1e5};
        case "fix" -> new double[] {s[1], s[2] * 1e3};
        case "rot" -> new double[] {s[1], (s[3] + spring(right) * s[2]) / 1e5};
        case "spring" -> new double[] {s[3] / 1e5, (s[4] - spring(right) * s[1]) / 1e3};
        default -> new double[] {s[3] / 1e5, s[4] / 1e3};
      };
    }

    /** Rows x, w, ψ, M, V just before the jump at x; one more for the state after the last jump. */
    private List<double[]> integrate(double[] start, boolean withLoads) {
      List<double[]> states = new ArrayList<>();
      double[] y = start.clone();
      double x = 0;
      for (double stop : stops) {
        if (stop > x) {
          double middle = (x + stop) / 2;
          DormandPrince853Integrator integrator =
              new DormandPrince853Integrator(1e-3, length, 1e-11, 1e-12);
          integrator.integrate(equations(withLoads, middle), x, y, stop, y);
          x = stop;
        }
        states.add(new double[] {x, y[0], y[1], y[2], y[3]});
        for (double[] jump : jumps) {
          if (withLoads && jump[0] == stop) {
            y[2] += jump[1];
            y[3] += jump[2];
          }
        }
      }
      states.add(new double[] {x, y[0], y[1], y[2], y[3]});
      return states;
    }

    private FirstOrderDifferentialEquations equations(boolean withLoads, double middle) {
      return new FirstOrderDifferentialEquations() {
        @Override
        public int getDimension() {
          return 4;
        }

        @Override
        public void computeDerivatives(double x, double[] y, double[] slope) {
          double q = 0;
          for (double[] v : lines) {
            if (withLoads && middle > v[1] && middle < v[2]) {
              q += v[3] + (v[4] - v[3]) * (x - v[1]) / (v[2] - v[1]);
            }
          }
          slope[0] = y[1] - shear * y[3];
          slope[1] = y[2] / bending;
          slope[2] = y[3];
          slope[3] = -q;
        }
      };
    }
  }
}
