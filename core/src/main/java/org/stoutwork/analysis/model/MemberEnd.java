package org.stoutwork.analysis.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The conditions of one member end, and the rigid arm that carries it.
 *
 * @param conditions six conditions in the member's local directions ux uy uz rx ry rz
 * @param offset rigid arm from the node to the flexible end, mm, global axes
 */
public record MemberEnd(List<EndCondition> conditions, Vec3 offset) {
  /** Rigid in all six directions, no offset. */
  public static final MemberEnd RIGID =
      new MemberEnd(Collections.nCopies(6, EndCondition.RIGID), Vec3.ZERO);

  /** Checks that there are six conditions. */
  public MemberEnd {
    conditions = List.copyOf(conditions);
    if (conditions.size() != 6) {
      throw new IllegalArgumentException("a member end has 6 conditions, not " + conditions.size());
    }
  }

  /** The condition in one local direction. */
  public EndCondition in(Direction direction) {
    return conditions.get(direction.index());
  }

  /** A copy with another condition in one local direction. */
  public MemberEnd with(Direction direction, EndCondition condition) {
    List<EndCondition> changed = new ArrayList<>(conditions);
    changed.set(direction.index(), condition);
    return new MemberEnd(changed, offset);
  }

  /** A copy that is free in the given local directions. */
  public MemberEnd free(Direction... directions) {
    MemberEnd changed = this;
    for (Direction direction : directions) {
      changed = changed.with(direction, EndCondition.FREE);
    }
    return changed;
  }

  /** A copy with a spring in one local direction (stiffness 0: free). */
  public MemberEnd spring(Direction direction, double stiffness) {
    return with(direction, EndCondition.elastic(stiffness));
  }

  /** A copy with a rigid arm from the node to the flexible end, global axes, mm. */
  public MemberEnd offset(Vec3 arm) {
    return new MemberEnd(conditions, arm);
  }

  /** A copy with a rigid arm from the node to the flexible end, global axes, mm. */
  public MemberEnd offset(double x, double y, double z) {
    return offset(new Vec3(x, y, z));
  }

  /** True when all six directions are rigid. */
  public boolean isRigid() {
    return conditions.stream().allMatch(c -> c instanceof EndCondition.Rigid);
  }
}
