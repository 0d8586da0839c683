package org.stoutwork.assembly;

import org.stoutwork.joint.stiffness.JointStiffness;
import org.stoutwork.joint.stiffness.SpringSet;

/** The end of a joint's stiffness range with which a model is built. */
public enum JointLevel {
  LOW("low"),
  MEAN("mean"),
  HIGH("high");

  private final String words;

  JointLevel(String words) {
    this.words = words;
  }

  /** As it is printed. */
  public String words() {
    return words;
  }

  /** The springs of this level. */
  public SpringSet of(JointStiffness stiffness) {
    return switch (this) {
      case LOW -> stiffness.low();
      case MEAN -> stiffness.mean();
      case HIGH -> stiffness.high();
    };
  }
}
