package org.stoutwork.analysis.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A structure of beams in space, without its loads. Every name in it is known: it is complete or
 * not built. Maps keep the order in which things were added.
 *
 * @param nodes places by name, mm
 * @param materials by name
 * @param sections by name
 * @param members by name
 * @param supports restraints by node and global direction
 * @param ties by name
 * @param masses lumped mass by node, kg
 */
public record FrameModel(
    Map<String, Vec3> nodes,
    Map<String, Material> materials,
    Map<String, CrossSection> sections,
    Map<String, Member> members,
    Map<String, Map<Direction, Restraint>> supports,
    Map<String, Tie> ties,
    Map<String, Double> masses) {

  /** Copies the maps and checks every reference. */
  public FrameModel {
    nodes = copy(nodes);
    materials = copy(materials);
    sections = copy(sections);
    members = copy(members);
    supports = deepCopy(supports);
    ties = copy(ties);
    masses = copy(masses);
    for (Member member : members.values()) {
      String who = "member '" + member.name() + "'";
      known(nodes, member.from(), who, "node");
      known(nodes, member.to(), who, "node");
      known(sections, member.section(), who, "section");
      known(materials, member.material(), who, "material");
      Vec3 start = nodes.get(member.from()).plus(member.start().offset());
      Vec3 end = nodes.get(member.to()).plus(member.end().offset());
      if (!(end.minus(start).length() > 1e-6)) {
        throw new IllegalArgumentException(
            who + " has no length between its offsets; move its nodes apart or shorten the arms");
      }
    }
    for (String node : supports.keySet()) {
      known(nodes, node, "a support", "node");
    }
    for (Tie tie : ties.values()) {
      known(nodes, tie.lower(), "tie '" + tie.name() + "'", "node");
      known(nodes, tie.upper(), "tie '" + tie.name() + "'", "node");
    }
    masses.forEach(
        (node, kg) -> {
          Check.notNegative("mass at node '" + node + "'", kg, "kg");
        });
    for (String node : masses.keySet()) {
      known(nodes, node, "a mass", "node");
    }
  }

  private static <T> Map<String, T> copy(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  private static Map<String, Map<Direction, Restraint>> deepCopy(
      Map<String, Map<Direction, Restraint>> supports) {
    Map<String, Map<Direction, Restraint>> copied = new LinkedHashMap<>();
    supports.forEach(
        (node, held) -> {
          Map<Direction, Restraint> sorted = new EnumMap<>(Direction.class);
          sorted.putAll(held);
          copied.put(node, Collections.unmodifiableMap(sorted));
        });
    return Collections.unmodifiableMap(copied);
  }

  private static void known(Map<String, ?> names, String name, String who, String kind) {
    if (!names.containsKey(name)) {
      throw new IllegalArgumentException(
          who
              + " names the "
              + kind
              + " '"
              + name
              + "', which does not exist; known are "
              + names.keySet());
    }
  }

  /** Section of a member. */
  public CrossSection sectionOf(Member member) {
    return sections.get(member.section());
  }

  /** Material of a member. */
  public Material materialOf(Member member) {
    return materials.get(member.material());
  }

  /** A copy with other members; everything else stays. */
  public FrameModel withMembers(Map<String, Member> changed) {
    return new FrameModel(nodes, materials, sections, changed, supports, ties, masses);
  }

  /** A copy with other supports; everything else stays. */
  public FrameModel withSupports(Map<String, Map<Direction, Restraint>> changed) {
    return new FrameModel(nodes, materials, sections, members, changed, ties, masses);
  }

  /** A copy in which one named section has other properties. */
  public FrameModel withSection(String name, CrossSection section) {
    Map<String, CrossSection> changed = new LinkedHashMap<>(sections);
    changed.put(name, section);
    return new FrameModel(nodes, materials, changed, members, supports, ties, masses);
  }

  /** Begins an empty model. */
  public static FrameModelBuilder builder() {
    return new FrameModelBuilder();
  }
}
