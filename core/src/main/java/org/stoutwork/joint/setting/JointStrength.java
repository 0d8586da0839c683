package org.stoutwork.joint.setting;

/**
 * What the strength of a joint is judged with.
 *
 * @param rail strengths of the rail
 * @param post strengths of the post
 * @param family of formulas, the same basis as the strengths
 * @param lasting whether the actions last: glue that creeps is cautioned
 * @param gluesPoorly whether one of the woods bonds with difficulty
 */
public record JointStrength(
    TimberStrength rail,
    TimberStrength post,
    StrengthFamily family,
    boolean lasting,
    boolean gluesPoorly) {

  /** Of woods that are not known to bond with difficulty. */
  public JointStrength(
      TimberStrength rail, TimberStrength post, StrengthFamily family, boolean lasting) {
    this(rail, post, family, lasting, false);
  }
}
