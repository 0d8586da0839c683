package org.stoutwork.report.figure.joint;

import java.util.List;
import org.stoutwork.joint.Joint;

/**
 * A joint of one kind and size with all the places where the bench has it.
 *
 * @param joint kind and sizes
 * @param place the pieces it is made in
 * @param rails names of the pieces that end in it, each with this joint at every end
 * @param post what these meet, such as "leg"
 * @param count how many such joints the bench has
 */
public record JointUse(Joint joint, Place place, List<String> rails, String post, int count) {

  /** Keeps its own copy. */
  public JointUse {
    rails = List.copyOf(rails);
  }
}
