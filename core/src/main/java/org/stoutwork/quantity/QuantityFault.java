package org.stoutwork.quantity;

/** A text that is not the quantity it should be; the message says what is wrong with it. */
public final class QuantityFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** Made with a message that continues "… was given, but". */
  public QuantityFault(String message) {
    super(message);
  }
}
