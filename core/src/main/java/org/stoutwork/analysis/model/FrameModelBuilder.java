package org.stoutwork.analysis.model;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects the pieces of a {@link FrameModel}; names may not be given twice. */
public final class FrameModelBuilder {
  private final Map<String, Vec3> nodes = new LinkedHashMap<>();
  private final Map<String, Material> materials = new LinkedHashMap<>();
  private final Map<String, CrossSection> sections = new LinkedHashMap<>();
  private final Map<String, Member> members = new LinkedHashMap<>();
  private final Map<String, Map<Direction, Restraint>> supports = new LinkedHashMap<>();
  private final Map<String, Tie> ties = new LinkedHashMap<>();
  private final Map<String, Double> masses = new LinkedHashMap<>();

  FrameModelBuilder() {}

  /** Adds a node; mm. */
  public FrameModelBuilder node(String name, double x, double y, double z) {
    return node(name, new Vec3(x, y, z));
  }

  /** Adds a node; mm. */
  public FrameModelBuilder node(String name, Vec3 at) {
    return put(nodes, "node", name, at);
  }

  /** Adds a material: E and G in MPa, density in kg/m³. */
  public FrameModelBuilder material(String name, double e, double g, double density) {
    return put(materials, "material", name, new Material(e, g, density));
  }

  /** Adds a section. */
  public FrameModelBuilder section(String name, CrossSection section) {
    return put(sections, "section", name, section);
  }

  /** Adds a member that is rigidly joined at both ends. */
  public FrameModelBuilder member(
      String name, String from, String to, String section, String material) {
    return member(name, from, to, section, material, 0, MemberEnd.RIGID, MemberEnd.RIGID);
  }

  /** Adds a member with roll (rad) and end conditions. */
  public FrameModelBuilder member(
      String name,
      String from,
      String to,
      String section,
      String material,
      double roll,
      MemberEnd start,
      MemberEnd end) {
    return member(new Member(name, from, to, section, material, roll, start, end));
  }

  /** Adds a member. */
  public FrameModelBuilder member(Member member) {
    return put(members, "member", member.name(), member);
  }

  /**
   * One length of a stepped member.
   *
   * @param until where it ends, as a part of the whole flexible length; the last one is 1
   * @param section name of its section
   */
  public record Step(double until, String section) {}

  /**
   * Adds a member whose section changes in steps, as a chain of members {@code name.1}, {@code
   * name.2} … with nodes {@code name@1} … between them on the straight line of the flexible part.
   */
  public FrameModelBuilder steppedMember(Member whole, List<Step> steps) {
    if (steps.isEmpty() || steps.get(steps.size() - 1).until() != 1) {
      throw new IllegalArgumentException(
          "the steps of member '" + whole.name() + "' must end at 1, the whole length");
    }
    Vec3 start = place(whole.from()).plus(whole.start().offset());
    Vec3 axis = place(whole.to()).plus(whole.end().offset()).minus(start);
    String from = whole.from();
    double last = 0;
    for (int k = 0; k < steps.size(); k++) {
      Step step = steps.get(k);
      if (!(step.until() > last) || step.until() > 1) {
        throw new IllegalArgumentException(
            "the steps of member '"
                + whole.name()
                + "' must rise from 0 to 1; found "
                + step.until()
                + " after "
                + last);
      }
      boolean isLast = k == steps.size() - 1;
      String to = isLast ? whole.to() : whole.name() + "@" + (k + 1);
      if (!isLast) {
        node(to, start.plus(axis.times(step.until())));
      }
      member(
          whole.name() + "." + (k + 1),
          from,
          to,
          step.section(),
          whole.material(),
          whole.roll(),
          k == 0 ? whole.start() : MemberEnd.RIGID,
          isLast ? whole.end() : MemberEnd.RIGID);
      from = to;
      last = step.until();
    }
    return this;
  }

  private Vec3 place(String node) {
    Vec3 at = nodes.get(node);
    if (at == null) {
      throw new IllegalArgumentException("node '" + node + "' must be added before it is used");
    }
    return at;
  }

  /** Holds a node in one global direction. */
  public FrameModelBuilder support(String node, Direction direction, Restraint restraint) {
    Map<Direction, Restraint> held =
        supports.computeIfAbsent(node, n -> new EnumMap<>(Direction.class));
    if (held.put(direction, restraint) != null) {
      throw new IllegalArgumentException(
          "node '" + node + "' is already held " + direction.inWords());
    }
    return this;
  }

  /** Fixes a node in the named directions, in all six when none is named. */
  public FrameModelBuilder fixed(String node, Direction... directions) {
    for (Direction d : directions.length == 0 ? Direction.values() : directions) {
      support(node, d, Restraint.FIXED);
    }
    return this;
  }

  /** Joins two nodes at the place of the upper one. */
  public FrameModelBuilder tie(
      String name, String lower, String upper, Map<Direction, Link> links) {
    return tie(new Tie(name, lower, upper, place(upper), links));
  }

  /** Adds a tie. */
  public FrameModelBuilder tie(Tie tie) {
    return put(ties, "tie", tie.name(), tie);
  }

  /** Adds a lumped mass, kg; it acts on the three translations of the node. */
  public FrameModelBuilder mass(String node, double kg) {
    masses.merge(node, kg, Double::sum);
    return this;
  }

  /** Checks every reference and makes the model. */
  public FrameModel build() {
    return new FrameModel(nodes, materials, sections, members, supports, ties, masses);
  }

  private <T> FrameModelBuilder put(Map<String, T> map, String kind, String name, T value) {
    Check.name(kind, name);
    if (map.put(name, value) != null) {
      throw new IllegalArgumentException("there are two " + kind + "s named '" + name + "'");
    }
    return this;
  }
}
