package org.stoutwork.report.file.frame;

/** What a frame file asks to have worked out. In files the words are in lower case with hyphens. */
public enum Analysis {
  /** First-order displacements and forces. */
  STATIC,
  /** The same with the effect of axial forces on the displaced structure. */
  SECOND_ORDER,
  /** The load factor at which the structure buckles. */
  BUCKLING,
  /** Natural frequencies. */
  FREQUENCIES
}
