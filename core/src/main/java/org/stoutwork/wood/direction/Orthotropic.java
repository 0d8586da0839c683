package org.stoutwork.wood.direction;

import org.stoutwork.source.Source;

/**
 * The moduli of wood in its three directions, in MPa, and Poisson ratios. Shear deflection is not
 * in E_L.
 *
 * @param eL along the grain
 * @param eR across the growth rings
 * @param eT along the growth rings
 * @param gLr shear modulus in the plane L-R
 * @param gLt shear modulus in the plane L-T
 * @param gRt rolling shear modulus
 * @param nuLr Poisson ratio, load along L, strain along R
 * @param nuLt Poisson ratio, load along L, strain along T
 * @param nuRt Poisson ratio, load along R, strain along T
 * @param source of the ratios between them
 */
public record Orthotropic(
    double eL,
    double eR,
    double eT,
    double gLr,
    double gLt,
    double gRt,
    double nuLr,
    double nuLt,
    double nuRt,
    Source source) {}
