package org.stoutwork.report.figure;

/** From where a bench is looked at. */
enum Side {
  /** From the front, square to its long side. */
  FRONT("Front view"),
  /** From the left end; the front edge is on the right. */
  END("View of the left end"),
  /** From above; the front edge is at the foot. */
  PLAN("Plan");

  private final String title;

  Side(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }

  /** Both ends of a box to the right, mm. */
  double[] across(Box b) {
    return this == END ? new double[] {-b.y1(), -b.y0()} : new double[] {b.x0(), b.x1()};
  }

  /** Both ends of a box upward on paper, mm. */
  double[] up(Box b) {
    return this == PLAN ? new double[] {b.y0(), b.y1()} : new double[] {b.z0(), b.z1()};
  }

  /** How near the face of a box is to whoever looks; nearer ones cover others. */
  double nearness(Box b) {
    return switch (this) {
      case FRONT -> -b.y0();
      case END -> -b.x0();
      case PLAN -> b.z1();
    };
  }
}
