package org.stoutwork.check.service;

/**
 * The sag of a spot by what causes it, mm, each part being what it adds to those before it.
 *
 * @param own weight of bench, vises, machines
 * @param stored what is stored
 * @param action the action
 */
record SagParts(double own, double stored, double action) {}
