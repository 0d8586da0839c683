package org.stoutwork.fastener;

/**
 * A machine bolt with the washer under its head.
 *
 * @param size metric size
 * @param ultimate tensile strength of the steel f_ub, MPa (400 for class 4.6, 800 for 8.8)
 * @param washer under the head
 */
public record Bolt(BoltSize size, double ultimate, Washer washer) implements Fastener {

  /** Checks that the steel has a strength. */
  public Bolt {
    if (!(ultimate > 0)) {
      throw new IllegalArgumentException(
          "a bolt needs a steel strength above 0 MPa, such as 400; it was " + ultimate);
    }
  }

  @Override
  public double diameter() {
    return size.diameter();
  }

  @Override
  public String title() {
    return size + " bolt";
  }
}
