package org.stoutwork.check.service;

import org.stoutwork.check.Stand;

/**
 * The sag of one crossing in one of the two directions under an action in its place.
 *
 * @param stand the action
 * @param line of the crossing
 * @param station of the crossing
 * @param along whether sag is measured along the bench, from end frame to end frame
 * @param use of its limit, by the grillage
 */
record SagSpot(Stand stand, int line, int station, boolean along, double use) {}
