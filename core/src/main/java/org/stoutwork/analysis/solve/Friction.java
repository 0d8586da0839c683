package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/**
 * Feet whose horizontal hold is limited by dry friction (Coulomb): a foot that would need more than
 * its coefficient times what it presses slides, and is then pushed by just that much against its
 * slip. Which feet slide is searched foot by foot; a bench that slides as a whole is an answer.
 */
public final class Friction {
  private static final int ROUNDS = 200;
  private static final double AGREED = 1e-10;

  private final PreparedFrame frame;
  private final Map<String, Double> coefficients;
  private final Combination combination;
  private final Map<String, Vec3> pushes = new LinkedHashMap<>();

  /** What comes of it. */
  public sealed interface Answer permits Held, Slides, Undecided {}

  /**
   * The frame stands.
   *
   * @param result of the frame in which sliding feet are free and pushed by friction; its own
   *     reactions leave these pushes out, {@link #reaction} counts them
   * @param pushes friction force on each sliding foot, N, global axes; feet that hold are not named
   */
  public record Held(FrameResult result, Map<String, Vec3> pushes) implements Answer {
    /** Force and moment by the ground on the structure, friction counted, global axes. */
    public double[] reaction(String node) {
      double[] six = result.reaction(node);
      Vec3 push = pushes.getOrDefault(node, Vec3.ZERO);
      six[0] += push.x();
      six[1] += push.y();
      return six;
    }
  }

  /**
   * The frame slides, turns on its feet or lifts.
   *
   * @param message a sentence for a person
   */
  public record Slides(String message) implements Answer {}

  /**
   * No lasting state of the feet was found.
   *
   * @param message a sentence for a person
   */
  public record Undecided(String message) implements Answer {}

  private Friction(PreparedFrame frame, Map<String, Double> coefficients, Combination combination) {
    this.frame = frame;
    this.coefficients = coefficients;
    this.combination = combination;
  }

  /**
   * Solves a combination.
   *
   * @param coefficients friction coefficient by node; the node must be held along x and y (fixed)
   *     and along z
   */
  public static Answer solve(
      PreparedFrame frame, Map<String, Double> coefficients, Combination combination) {
    coefficients.forEach((node, mu) -> check(frame.model(), node, mu));
    return new Friction(frame, new LinkedHashMap<>(coefficients), combination).run();
  }

  private static void check(FrameModel model, String node, double mu) {
    Map<Direction, Restraint> held = model.supports().getOrDefault(node, Map.of());
    boolean ready =
        held.get(Direction.UX) instanceof Restraint.Fixed
            && held.get(Direction.UY) instanceof Restraint.Fixed
            && held.containsKey(Direction.UZ);
    if (!ready) {
      throw new IllegalArgumentException(
          "friction at node '" + node + "' needs it fixed along x and y and held along z");
    }
    if (!(mu >= 0)) {
      throw new IllegalArgumentException(
          "the friction coefficient at node '" + node + "' must be 0 or more, not " + mu);
    }
  }

  private Answer run() {
    PreparedFrame current = frame;
    for (int round = 0; round < ROUNDS; round++) {
      Outcome outcome = current.solve(combination.plus(1, pushCase()));
      if (outcome instanceof Unsettled unsettled) {
        return new Undecided(unsettled.message());
      }
      if (!(outcome instanceof FrameResult result)) {
        return slides(((Loose) outcome).message());
      }
      Map<String, Vec3> before = new LinkedHashMap<>(pushes);
      String changed = changeOne(result);
      if (changed == null && follow(result, before)) {
        return new Held(result, Map.copyOf(before));
      }
      if (changed != null) {
        Preparation preparation = FrameSolver.prepare(released(), frame.attachments());
        if (preparation instanceof Loose loose) {
          return slides(loose.message());
        }
        current = (PreparedFrame) preparation;
      }
    }
    return new Undecided(
        "no lasting state of sliding and holding feet was found in " + ROUNDS + " rounds");
  }

  private Slides slides(String why) {
    return new Slides(
        "friction does not hold the structure; "
            + (pushes.isEmpty() ? "" : "sliding feet: " + pushes.keySet() + "; ")
            + why);
  }

  /** Lets the foot go that exceeds its friction most, or holds one that wants to go back. */
  private String changeOne(FrameResult result) {
    String worst = null;
    double most = AGREED;
    for (Map.Entry<String, Double> foot : coefficients.entrySet()) {
      double[] r = result.reaction(foot.getKey());
      double limit = foot.getValue() * Math.max(0, r[2]);
      if (pushes.containsKey(foot.getKey())) {
        continue;
      }
      double excess = Math.hypot(r[0], r[1]) - limit;
      double size = Math.hypot(r[0], r[1]) + limit;
      if (excess > most * Math.max(1, size)) {
        most = excess / Math.max(1, size);
        worst = foot.getKey();
      }
    }
    if (worst != null) {
      double[] r = result.reaction(worst);
      double h = Math.hypot(r[0], r[1]);
      double limit = coefficients.get(worst) * Math.max(0, r[2]);
      pushes.put(worst, new Vec3(limit * r[0] / h, limit * r[1] / h, 0));
      return worst;
    }
    return holdAgain(result);
  }

  private String holdAgain(FrameResult result) {
    for (Map.Entry<String, Vec3> push : pushes.entrySet()) {
      double[] u = result.displacement(push.getKey());
      double along = u[0] * push.getValue().x() + u[1] * push.getValue().y();
      if (along > AGREED * push.getValue().length() * Math.hypot(u[0], u[1])) {
        pushes.remove(push.getKey());
        return push.getKey();
      }
    }
    return null;
  }

  /** Turns each push against the slip and sizes it to what presses; true when nothing changed. */
  private boolean follow(FrameResult result, Map<String, Vec3> before) {
    boolean settled = true;
    for (Map.Entry<String, Vec3> push : before.entrySet()) {
      String node = push.getKey();
      double[] u = result.displacement(node);
      double limit = coefficients.get(node) * Math.max(0, result.reaction(node)[2]);
      double slip = Math.hypot(u[0], u[1]);
      Vec3 old = push.getValue();
      Vec3 next =
          slip == 0
              ? old.times(old.length() == 0 ? 0 : limit / old.length())
              : new Vec3(-limit * u[0] / slip, -limit * u[1] / slip, 0);
      settled &= next.minus(old).length() <= AGREED * Math.max(1, limit);
      // Half a step keeps the direction from swinging to and fro.
      pushes.put(node, settled ? next : next.plus(old).times(0.5));
    }
    return settled;
  }

  private LoadCase pushCase() {
    List<Load> loads = new ArrayList<>();
    pushes.forEach((node, f) -> loads.add(new Load.OnNode(node, f, Vec3.ZERO)));
    return new LoadCase("friction", loads);
  }

  private FrameModel released() {
    Map<String, Map<Direction, Restraint>> supports = new LinkedHashMap<>();
    frame
        .model()
        .supports()
        .forEach(
            (node, held) -> {
              Map<Direction, Restraint> kept = new EnumMap<>(Direction.class);
              kept.putAll(held);
              if (pushes.containsKey(node)) {
                kept.remove(Direction.UX);
                kept.remove(Direction.UY);
              }
              supports.put(node, kept);
            });
    return frame.model().withSupports(supports);
  }
}
