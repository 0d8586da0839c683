package org.stoutwork.check.service;

import org.stoutwork.assembly.JointLevel;

/** One idealisation of the top that can say how much a spot sags. */
interface SagModel {

  /** The sag that the action adds to that of the weight of bench, vises and machines, mm. */
  double atOnce(JointLevel level, SagSpot spot);

  /** The sag under everything that lies on the top together. */
  SagParts parts(JointLevel level, SagSpot spot);
}
