package org.stoutwork.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.StatedAction;
import org.stoutwork.bench.Vise;
import org.stoutwork.bench.Weight;
import org.stoutwork.source.Source;
import org.stoutwork.wood.time.DurationClass;

/**
 * The actions that a bench is checked for, and the limits it is held to.
 *
 * @param actions in the order in which the sheet lists them
 * @param criteria limits of use
 */
public record ActionPlan(List<Action> actions, Criteria criteria) {

  private static final double PUPIL_THRUST = 200;
  private static final double PUPIL_SHOVE = 150;
  private static final double PUPIL_WEIGHT = 800;
  private static final double FREE_MACHINE_TIPPING = 2.0;

  /** Where the factor against tipping under a machine comes from. */
  public static final Source MACHINE_TIPPING =
      Source.projectDefault("factor 2 against tipping under a machine that is not fixed");

  /** Keeps its own copy of the actions. */
  public ActionPlan {
    actions = List.copyOf(actions);
  }

  /**
   * The actions of the bench's duty; those that the maker states take the place of the duty's
   * actions of the same kind.
   */
  public static ActionPlan of(Bench bench) {
    List<Action> actions = new ArrayList<>();
    for (ActionKind kind : ActionKind.values()) {
      List<StatedAction> stated = bench.actions().stream().filter(a -> a.kind() == kind).toList();
      if (stated.isEmpty()) {
        actions.addAll(ofDuty(bench, kind));
      } else {
        stated.forEach(a -> actions.add(asStated(a)));
      }
    }
    return new ActionPlan(actions, criteria(bench));
  }

  /** The actions of one kind. */
  public <A extends Action> List<A> of(Class<A> kind) {
    return actions.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Action asStated(StatedAction a) {
    Source yours = Source.yours("action \"%s\" in your description".formatted(a.name()));
    double n = a.force().newtons();
    DurationClass d = a.duration();
    return switch (a.kind()) {
      case POINT_ON_TOP -> new Action.PointOnTop(a.name(), n, d, yours);
      case SPREAD_ON_TOP -> new Action.SpreadOnTop(a.name(), n, d, yours);
      case PLANE_ON_TOP -> new Action.PlaneOnTop(a.name(), n, d, yours);
      case THRUST_ALONG -> new Action.Thrust(a.name(), Way.ALONG, n, d, yours);
      case THRUST_ACROSS -> new Action.Thrust(a.name(), Way.ACROSS, n, d, yours);
      case SITTING_ON_EDGE -> new Action.Sitting(a.name(), Edge.FRONT, 0, n, 0, d, yours);
    };
  }

  private static List<Action> ofDuty(Bench bench, ActionKind kind) {
    DutyRules rules = DutyRules.of(bench.duty());
    Source source = DutyRules.ACTIONS;
    DurationClass brief = DurationClass.SHORT;
    return switch (kind) {
      case POINT_ON_TOP ->
          List.of(new Action.PointOnTop("person on the top", rules.person(), brief, source));
      case PLANE_ON_TOP ->
          rules.plane() == 0
              ? List.of()
              : List.of(new Action.PlaneOnTop("plane on the top", rules.plane(), brief, source));
      case SPREAD_ON_TOP ->
          List.of(
              new Action.SpreadOnTop(
                  "stock spread over the top", rules.stock(), DurationClass.MEDIUM, source));
      case THRUST_ALONG -> List.of(along(bench, rules, source));
      case THRUST_ACROSS -> List.of(across(bench, rules, source));
      case SITTING_ON_EDGE -> sitting(bench, rules, source);
    };
  }

  private static Action along(Bench bench, DutyRules rules, Source source) {
    double pupils = Math.min(2, bench.pupils()) * PUPIL_THRUST;
    boolean classRules = pupils > rules.thrust();
    String name =
        classRules
            ? "pupils planing the same way"
            : bench.duty() == Duty.MACHINE_SUPPORT
                ? "feeding stock into the machine"
                : "planing thrust along the bench";
    double force = Math.max(rules.thrust(), pupils);
    return new Action.Thrust(name, Way.ALONG, force, DurationClass.SHORT, source);
  }

  private static Action across(Bench bench, DutyRules rules, Source source) {
    double pupils = Math.min(2, bench.pupils()) * PUPIL_SHOVE;
    String name = pupils > rules.shove() ? "pupils leaning the same way" : "shove across the bench";
    double force = Math.max(rules.shove(), pupils);
    return new Action.Thrust(name, Way.ACROSS, force, DurationClass.SHORT, source);
  }

  /** Somebody sits on the edge, and on the jaw of each vise. */
  private static List<Action> sitting(Bench bench, DutyRules rules, Source source) {
    double weight = bench.pupils() > 0 ? PUPIL_WEIGHT : rules.person();
    List<Action> out = new ArrayList<>();
    if (bench.pupils() > 1) {
      out.add(sit("two pupils sitting on one edge", 0, Edge.FRONT, 2 * weight, 0, source));
    } else {
      out.add(sit("somebody sitting on the edge", 0, Edge.FRONT, weight, 0, source));
    }
    out.add(sit("somebody sitting on the end", 0, Edge.RIGHT, weight, 0, source));
    for (Vise vise : bench.vises()) {
      String on = "sitting on the jaw of the " + vise.name();
      double outreach = vise.outreach().mm();
      out.add(sit(on, outreach, vise.edge(), PUPIL_WEIGHT, 0, source));
      if (bench.pupils() > 0) {
        String shoved = on + " while another shoves";
        out.add(sit(shoved, outreach, vise.edge(), PUPIL_WEIGHT, PUPIL_SHOVE, source));
      }
    }
    return out;
  }

  private static Action sit(
      String name, double outreach, Edge edge, double force, double push, Source source) {
    return new Action.Sitting(name, edge, outreach, force, push, DurationClass.SHORT, source);
  }

  private static Criteria criteria(Bench bench) {
    Criteria duty = DutyRules.of(bench.duty()).criteria();
    double strength = bench.pupils() > 0 ? DutyRules.CLASS_STRENGTH_USE : duty.strengthUse();
    double sway = bench.pupils() > 0 ? Math.max(300, duty.swayRatio()) : duty.swayRatio();
    return new Criteria(
        duty.spanRatio(),
        duty.levelRatio(),
        duty.flatness(),
        sway,
        freeMachine(bench) ? FREE_MACHINE_TIPPING : duty.tipping(),
        duty.sliding(),
        strength,
        duty.source());
  }

  /** Whether a machine works on a bench that is not fixed to the floor. */
  public static boolean freeMachine(Bench bench) {
    return bench.weights().stream().anyMatch(Weight.Machine.class::isInstance)
        && bench.footing() != Footing.FIXED;
  }

  /** The first action of a kind, if the plan has one. */
  public <A extends Action> Optional<A> first(Class<A> kind) {
    return of(kind).stream().findFirst();
  }
}
