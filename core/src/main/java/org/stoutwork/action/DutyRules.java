package org.stoutwork.action;

import org.stoutwork.bench.Duty;
import org.stoutwork.source.Source;

/**
 * The figures that each duty sets. No standard was written for joiners' benches; these are
 * proposals bounded by what a person can push and by what a plane needs, and they are marked so.
 *
 * @param thrust of planing or feed, N
 * @param person on the top, N
 * @param shove sideways at the edge of the top, N
 * @param plane downward under a plane, N; 0 where nobody planes
 * @param stock spread over the top, N
 * @param criteria limits of use
 */
record DutyRules(
    double thrust, double person, double shove, double plane, double stock, Criteria criteria) {

  static final Source ACTIONS =
      Source.projectDefault(
          "actions by duty, between the force that cutting needs and the force that shoe friction"
              + " lets a person push");
  static final Source LIMITS = Source.projectDefault("limits of use by duty");

  /** Most that a pupil's class may use of a member's strength. */
  static final double CLASS_STRENGTH_USE = 0.8;

  static DutyRules of(Duty duty) {
    return switch (duty) {
      case LIGHT_ASSEMBLY -> new DutyRules(150, 800, 100, 300, 500, criteria(300, 0.5, 200, 1.2));
      case GENERAL_JOINERY ->
          new DutyRules(250, 1200, 200, 300, 1000, criteria(360, 0.3, 300, 1.5));
      case HEAVY_PLANING -> new DutyRules(400, 1200, 250, 500, 1500, criteria(500, 0.15, 500, 1.5));
      case MACHINE_SUPPORT -> new DutyRules(300, 1200, 250, 0, 500, machine());
    };
  }

  /** A machine wants its level kept; nobody planes on its bench. */
  private static Criteria machine() {
    return new Criteria(360, 1000, 0.3, 400, 1.5, 1.5, 1.0, LIMITS);
  }

  private static Criteria criteria(double span, double flat, double sway, double sliding) {
    return new Criteria(span, 250, flat, sway, 1.5, sliding, 1.0, LIMITS);
  }
}
