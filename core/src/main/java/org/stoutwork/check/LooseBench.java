package org.stoutwork.check;

import org.stoutwork.analysis.solve.Loose;

/**
 * A bench that cannot be analysed: a part of it moves without any resistance. This is a fault of
 * the description, such as a joint whose stated stiffness leaves a direction free, or of the way in
 * which the program models it; either way there is no result to report.
 */
public final class LooseBench extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  private final String part;
  private final String direction;

  LooseBench(Loose loose) {
    super(loose.message());
    this.part = loose.part();
    this.direction = loose.direction();
  }

  /** The part that moves most. */
  public String part() {
    return part;
  }

  /** How it moves, in words: {@code along x}, {@code about z}. */
  public String direction() {
    return direction;
  }
}
