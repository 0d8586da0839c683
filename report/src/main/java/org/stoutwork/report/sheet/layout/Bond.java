package org.stoutwork.report.sheet.layout;

/** How firmly a band holds on to the next one, weakest first. */
enum Bond {
  /** A page may end here. */
  FREE,
  /** Kept together because the author asked for it. */
  ASKED,
  /** Kept together because it reads badly apart: lines of a row, first lines of a paragraph. */
  FIRM,
  /** Kept together unless there is no page that holds it: a heading with what it heads. */
  TIGHT;

  Bond atLeast(Bond other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
