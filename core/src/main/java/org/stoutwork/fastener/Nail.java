package org.stoutwork.fastener;

/**
 * A round wire nail.
 *
 * @param diameter mm
 * @param length mm
 * @param head diameter of the head, mm
 * @param ultimate tensile strength of the wire, MPa
 */
public record Nail(double diameter, double length, double head, double ultimate)
    implements Fastener {

  /** Checks that the nail can exist. */
  public Nail {
    if (!(diameter > 0 && length > diameter && head >= diameter && ultimate > 0)) {
      throw new IllegalArgumentException(
          "a nail needs 0 < diameter < length, a head no smaller and a steel strength; it was %s, %s, %s mm, %s MPa"
              .formatted(diameter, length, head, ultimate));
    }
  }

  @Override
  public String title() {
    return ScrewChecks.title("nail", diameter, length);
  }
}
