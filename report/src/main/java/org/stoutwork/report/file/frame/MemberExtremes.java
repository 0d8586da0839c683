package org.stoutwork.report.file.frame;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.analysis.solve.MemberResult.Force;

/**
 * The values of one member that are largest in size, with their signs and places.
 *
 * @param forces every internal force, N or N mm
 * @param deflection larger displacement of the axis across the member, mm, displacements of its
 *     nodes included; empty where only forces are known
 * @param sag larger distance of the axis from the line between its displaced ends, mm; empty where
 *     only forces are known
 */
public record MemberExtremes(
    Map<Force, Extreme> forces, Optional<Component> deflection, Optional<Component> sag) {

  /** Copies the map. */
  public MemberExtremes {
    forces = Collections.unmodifiableMap(new EnumMap<>(forces));
  }

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

  /** The larger shear force. */
  public Component shear() {
    return Component.larger(forces.get(Force.VY), forces.get(Force.VZ));
  }

  /** The larger bending moment. */
  public Component moment() {
    return Component.larger(forces.get(Force.MY), forces.get(Force.MZ));
  }

  /**
   * Finds them, anywhere along a member.
   *
   * @param member a member's first-order results
   * @return its extremes
   */
  static MemberExtremes of(MemberResult member) {
    Map<Force, Extreme> forces = new EnumMap<>(Force.class);
    for (Force force : Force.values()) {
      forces.put(force, member.along(force).largest());
    }
    Component deflection =
        Component.larger(member.deflectionAlong(1).largest(), member.deflectionAlong(2).largest());
    Component sag = Component.larger(member.sag(1), member.sag(2));
    return new MemberExtremes(forces, Optional.of(deflection), Optional.of(sag));
  }
}
