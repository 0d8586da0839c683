package org.stoutwork.report.file.frame;

import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.MemberResult.Force;

/**
 * The values of one member that are largest in size, with their signs and places.
 *
 * @param n axial force, N, tension positive
 * @param v larger shear force, N
 * @param t torque, N mm
 * @param m larger bending moment, N mm
 * @param deflection larger displacement of the axis across the member, mm
 * @param sag larger distance of the axis from the line between its displaced ends, mm
 */
public record MemberExtremes(
    Extreme n, Component v, Extreme t, Component m, Component deflection, Component sag) {

  /**
   * The larger of the components along or about local y and z.
   *
   * @param axis {@code y} or {@code z}
   * @param extreme value and place
   */
  public record Component(String axis, Extreme extreme) {
    static Component larger(Extreme y, Extreme z) {
      return Math.abs(y.value()) > Math.abs(z.value())
          ? new Component("y", y)
          : new Component("z", z);
    }
  }

  /**
   * Finds them.
   *
   * @param member a member's results
   * @return its extremes
   */
  public static MemberExtremes of(MemberResult member) {
    return new MemberExtremes(
        member.along(Force.N).largest(),
        Component.larger(member.along(Force.VY).largest(), member.along(Force.VZ).largest()),
        member.along(Force.T).largest(),
        Component.larger(member.along(Force.MY).largest(), member.along(Force.MZ).largest()),
        Component.larger(member.deflectionAlong(1).largest(), member.deflectionAlong(2).largest()),
        Component.larger(member.sag(1), member.sag(2)));
  }
}
