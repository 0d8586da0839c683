package org.stoutwork.report.drawing;

/** The faces of the one type family in use. */
public enum Face {
  REGULAR,
  BOLD,
  ITALIC
}
