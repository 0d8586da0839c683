package org.stoutwork.analysis.model;

/** The six ways a node can move: along and about the axes x, y, z. */
public enum Direction {
  /** Along x. */
  UX(0),
  /** Along y. */
  UY(1),
  /** Along z. */
  UZ(2),
  /** About x. */
  RX(3),
  /** About y. */
  RY(4),
  /** About z. */
  RZ(5);

  private static final Direction[] ALL = values();

  private final int index;

  Direction(int index) {
    this.index = index;
  }

  /** Place among the six values of a node, 0 to 5 in the order ux uy uz rx ry rz. */
  public int index() {
    return index;
  }

  /** The direction with index 0 to 5, in the order of declaration. */
  public static Direction of(int index) {
    return ALL[index];
  }

  /** True for the three rotations. */
  public boolean isRotation() {
    return index >= 3;
  }

  /** In words: {@code along x} or {@code about x}. */
  public String inWords() {
    return (isRotation() ? "about " : "along ") + "xyz".charAt(index % 3);
  }
}
