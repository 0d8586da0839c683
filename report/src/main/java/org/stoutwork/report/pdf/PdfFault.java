package org.stoutwork.report.pdf;

/** Says that a file could not be made. */
public final class PdfFault extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** A fault of the content. */
  public PdfFault(String message) {
    super(message);
  }

  /** A fault below, which should not happen. */
  public PdfFault(String message, Throwable cause) {
    super(message, cause);
  }
}
