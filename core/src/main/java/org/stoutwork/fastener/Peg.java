package org.stoutwork.fastener;

import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/**
 * A round wood peg.
 *
 * @param diameter mm
 * @param wood what it is made of
 */
public record Peg(double diameter, PegWood wood) implements Fastener {

  /** Checks that there is a peg. */
  public Peg {
    if (!(diameter > 0)) {
      throw new IllegalArgumentException(
          "a peg needs a diameter above 0 mm; it was " + Writing.number(diameter, 4));
    }
  }

  @Override
  public String title() {
    return Writing.with(diameter, Unit.MM, 3) + " " + wood.name() + " peg";
  }
}
