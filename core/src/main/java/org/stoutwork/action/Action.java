package org.stoutwork.action;

import org.stoutwork.bench.Edge;
import org.stoutwork.source.Source;
import org.stoutwork.wood.time.DurationClass;

/** Something that acts on the bench besides its own weight. Forces in N. */
public sealed interface Action {

  /** Its name, as the sheet prints it. */
  String name();

  /** Its characteristic force, N. */
  double force();

  /** How long it lasts, all in all. */
  DurationClass duration();

  /** Where the figure comes from. */
  Source source();

  /**
   * A downward force that is tried everywhere on the top: a person.
   *
   * @param name of the action
   * @param force N
   * @param duration all in all
   * @param source of the figure
   */
  record PointOnTop(String name, double force, DurationClass duration, Source source)
      implements Action {}

  /**
   * A downward force under which the top must stay flat while planing.
   *
   * @param name of the action
   * @param force N
   * @param duration all in all
   * @param source of the figure
   */
  record PlaneOnTop(String name, double force, DurationClass duration, Source source)
      implements Action {}

  /**
   * A downward force spread over the whole top: stock.
   *
   * @param name of the action
   * @param force N, all of it
   * @param duration all in all
   * @param source of the figure
   */
  record SpreadOnTop(String name, double force, DurationClass duration, Source source)
      implements Action {}

  /**
   * A push at the height of the top, tried over its whole length or width and with both signs.
   *
   * @param name of the action
   * @param way it goes
   * @param force N
   * @param duration all in all
   * @param source of the figure
   */
  record Thrust(String name, Way way, double force, DurationClass duration, Source source)
      implements Action {}

  /**
   * Somebody who sits on the edge of the top or on the jaw of a vise; judged for tipping.
   *
   * @param name of the action
   * @param edge over which the bench may tip
   * @param outreach beyond that edge, mm
   * @param force N
   * @param push sideways at the height of the top at the same time, N
   * @param duration all in all
   * @param source of the figure
   */
  record Sitting(
      String name,
      Edge edge,
      double outreach,
      double force,
      double push,
      DurationClass duration,
      Source source)
      implements Action {}
}
