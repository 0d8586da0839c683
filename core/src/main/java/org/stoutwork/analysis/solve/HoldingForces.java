package org.stoutwork.analysis.solve;

/** What attachments may read of a solution: displacements and the forces of what they put in. */
public interface HoldingForces {
  /** All unknowns, 6 × vertex + direction. */
  double[] displacements();

  /** Force of a condition on the structure, by its number. */
  double condition(int number);

  /** Force of a contact on the structure, by its number; 0 when open. */
  double contact(int number);

  /** True when a contact is open. */
  boolean isOpen(int contact);
}
