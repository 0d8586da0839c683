package org.stoutwork.report.sheet.page;

/**
 * An element of the sheet's structure.
 *
 * @param id 1 for the root, then counting in reading order
 * @param parent id of the element that holds it; 0 for the root
 * @param role what it is
 * @param alternative text for readers who cannot see it; empty for none
 * @param columns how many columns of its table it spans; 1 for everything else
 */
public record Tag(int id, int parent, Role role, String alternative, int columns) {

  /** The root's id. */
  public static final int ROOT = 1;

  /** Stands for no element: what is printed is decoration. */
  public static final int NONE = 0;
}
