package org.stoutwork.joint.setting;

/** Which way the growth rings lie in a direction across the grain. */
public enum FaceGrain {
  /** The direction runs across the rings. */
  RADIAL,
  /** The direction runs along the rings. */
  TANGENTIAL,
  /** Unknown or between: the mean of both. */
  MIXED;

  double pick(double radial, double tangential) {
    return switch (this) {
      case RADIAL -> radial;
      case TANGENTIAL -> tangential;
      case MIXED -> (radial + tangential) / 2;
    };
  }
}
