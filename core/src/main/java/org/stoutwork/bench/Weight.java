package org.stoutwork.bench;

import java.util.List;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;
import org.stoutwork.wood.time.DurationClass;

/** Something heavy that stays on the bench. */
public sealed interface Weight {

  /** What it is, in words. */
  String name();

  /** Its mass. */
  Mass mass();

  /** Whether it is fixed to the bench and so can be counted on to hold it down. */
  default boolean fixed() {
    return false;
  }

  /** How long it weighs on the bench, all in all; what is fixed does so for good. */
  default DurationClass lasts() {
    return DurationClass.PERMANENT;
  }

  /**
   * A machine bolted to the top.
   *
   * @param name what it is
   * @param mass of it
   * @param x from the left end of the top to its centre of gravity
   * @param y from the front edge of the top to its centre of gravity
   * @param centreAbove height of its centre of gravity above the top
   * @param baseAlong distance of its feet along the bench
   * @param baseAcross distance of its feet across the bench
   * @param reciprocating whether its motion goes to and fro; a turning machine needs less allowance
   * @param ratesHz the rates at which its shafts turn, in turns per second
   */
  record Machine(
      String name,
      Mass mass,
      Length x,
      Length y,
      Length centreAbove,
      Length baseAlong,
      Length baseAcross,
      boolean reciprocating,
      List<Double> ratesHz)
      implements Weight {

    /** Keeps its own copy of the rates. */
    public Machine {
      ratesHz = List.copyOf(ratesHz);
    }

    @Override
    public boolean fixed() {
      return true;
    }
  }

  /**
   * Stock or gear that lies on the whole top.
   *
   * @param name what it is
   * @param mass of it
   * @param lasts how long it lies there, all in all
   */
  record OnTop(String name, Mass mass, DurationClass lasts) implements Weight {}

  /**
   * Gear on a shelf that lies on the lowest rails or stretchers; the shelf's own mass is counted
   * in.
   *
   * @param name what it is
   * @param mass of it with the shelf
   * @param lasts how long it lies there, all in all
   */
  record OnShelf(String name, Mass mass, DurationClass lasts) implements Weight {}

  /**
   * Ballast fixed on the lowest rails or stretchers for good.
   *
   * @param name what it is
   * @param mass of it with its box
   */
  record Ballast(String name, Mass mass) implements Weight {

    @Override
    public boolean fixed() {
      return true;
    }
  }
}
