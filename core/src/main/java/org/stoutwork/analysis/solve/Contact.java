package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.LinearForm;

/**
 * A one-way contact of the equations.
 *
 * @param part what messages call it
 * @param gap the displacement that opens it (positive) or closes it
 * @param stiffness N/mm; infinite for a rigid one
 */
record Contact(String part, LinearForm gap, double stiffness) {
  boolean isRigid() {
    return Double.isInfinite(stiffness);
  }
}
