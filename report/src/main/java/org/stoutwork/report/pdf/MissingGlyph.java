package org.stoutwork.report.pdf;

/** What happens to a sign that no embedded font has. It is never dropped. */
public enum MissingGlyph {
  /** Printing is refused; for tests. */
  REFUSE,
  /** Its code is printed in its place, such as {@code [U+1F600]}. */
  SHOW_CODE
}
