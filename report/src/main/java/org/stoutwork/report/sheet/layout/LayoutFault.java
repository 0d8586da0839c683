package org.stoutwork.report.sheet.layout;

/** Says that a sheet cannot be set without clipping or overlapping something, and why. */
public final class LayoutFault extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** A fault with its reason and its repair. */
  public LayoutFault(String message) {
    super(message);
  }
}
