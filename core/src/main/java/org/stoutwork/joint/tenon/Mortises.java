package org.stoutwork.joint.tenon;

import java.util.List;
import org.stoutwork.section.PiercedSection;
import org.stoutwork.section.Rectangle;

/** What mortises leave of a post. */
public final class Mortises {

  /** Least share of the post's area that must stay at a joint; judgement. */
  public static final double LEAST_SHARE = 0.3;

  private Mortises() {}

  /** What holes that may meet leave of a post, mm²; 0 if they leave nothing. */
  public static double remaining(Rectangle post, List<PiercedSection.Hole> holes) {
    try {
      return new PiercedSection(post, holes).area();
    } catch (IllegalArgumentException nothingLeft) {
      return 0;
    }
  }
}
