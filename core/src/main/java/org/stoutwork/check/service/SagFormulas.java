package org.stoutwork.check.service;

import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;

/**
 * Sag of a simple beam, and what creep adds to a sag. Sizes and sags in mm, forces in N, moduli in
 * MPa, all 0 or more; creep factor and lasting parts have no unit.
 */
public final class SagFormulas {

  private static final Source BEAM = Source.derived("simple beam, bending and shear");

  /** Sag of a simple beam under a force in the middle, by bending and by shear, mm. */
  public static final Formula POINT =
      Formula.define("w_{hand}")
          .meaning("sag of a simple beam as wide as the top, load in the middle")
          .unit(Unit.MM)
          .where("P", "point load", Unit.N)
          .where("L", "longest bay", Unit.MM)
          .where("E", "mean modulus of the top along the bench", Unit.MPA)
          .where("G", "mean shear modulus", Unit.MPA)
          .where("b", "width of the top", Unit.MM)
          .where("h", "thickness of the top", Unit.MM)
          .as("P*L^3/(4*E*b*h^3) + 1.2*P*L/(4*G*b*h)")
          .source(BEAM);

  /** Sag of a simple beam under a load spread all along, by bending and by shear, mm. */
  public static final Formula SPREAD =
      Formula.define("w_{hand}")
          .meaning("sag of a simple beam as wide as the top, load spread")
          .unit(Unit.MM)
          .where("q", "load per length", Unit.N_PER_MM)
          .where("L", "longest bay", Unit.MM)
          .where("E", "mean modulus of the top along the bench", Unit.MPA)
          .where("G", "mean shear modulus", Unit.MPA)
          .where("b", "width of the top", Unit.MM)
          .where("h", "thickness of the top", Unit.MM)
          .as("5*q*L^4/(32*E*b*h^3) + 1.2*q*L^2/(8*G*b*h)")
          .source(BEAM);

  /** Sag after years, mm: every part with the creep of what of it lasts. */
  public static final Formula FINAL =
      Formula.define("w_{fin}")
          .meaning("sag after years")
          .unit(Unit.MM)
          .where("w_G", "sag under the weight of bench, vises and machines", Unit.MM)
          .where("w_S", "sag under what is stored", Unit.MM)
          .where("w_Q", "sag under the action", Unit.MM)
          .where("k_{def}", "creep factor", Unit.ONE)
          .where("ψ_S", "lasting part of what is stored", Unit.ONE)
          .where("ψ_2", "lasting part of the action", Unit.ONE)
          .as("w_G*(1 + k_{def}) + w_S*(1 + ψ_S*k_{def}) + w_Q*(1 + ψ_2*k_{def})")
          .source(Source.fromMemory("EN 1995-1-1", "2.2.3"));

  private SagFormulas() {}
}
