package org.stoutwork.analysis.model;

/**
 * A straight prismatic member.
 *
 * <p>Local x runs along the flexible part from its start to its end. Unless the member is vertical,
 * local y is horizontal (global z cross local x) and local z points upward; a vertical member's
 * local y is global +y. The roll then turns y and z about x, right-handed.
 *
 * @param name unique among members
 * @param from name of the start node
 * @param to name of the end node
 * @param section name of its section
 * @param material name of its material
 * @param roll turn of the section about local x, rad
 * @param start conditions at the start
 * @param end conditions at the end
 */
public record Member(
    String name,
    String from,
    String to,
    String section,
    String material,
    double roll,
    MemberEnd start,
    MemberEnd end) {
  /** Checks names and roll. */
  public Member {
    Check.name("member", name);
    Check.finite("roll of member '" + name + "'", roll);
    if (start == null || end == null) {
      throw new IllegalArgumentException("member '" + name + "' needs conditions at both ends");
    }
  }
}
