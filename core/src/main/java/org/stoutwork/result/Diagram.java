package org.stoutwork.result;

import java.util.List;

/**
 * Internal forces along one part under one combination.
 *
 * @param title what it shows
 * @param part it is drawn along
 * @param load in words
 * @param length of the part, mm
 * @param stations from its start
 */
public record Diagram(
    String title, String part, String load, double length, List<Station> stations) {

  /** Keeps its own copy. */
  public Diagram {
    stations = List.copyOf(stations);
  }

  /**
   * Forces at one place.
   *
   * @param x from the start of the part, mm
   * @param axial N, tension positive
   * @param shear N, in the plane in which the part mainly bends
   * @param moment N·mm, sagging positive on level parts
   */
  public record Station(double x, double axial, double shear, double moment) {}
}
