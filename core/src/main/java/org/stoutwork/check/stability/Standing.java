package org.stoutwork.check.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.action.Action;
import org.stoutwork.action.Factors;
import org.stoutwork.action.Way;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Stance;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Edge;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.Weight;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Tipping about each side of the outline of the feet and sliding on the floor, as a rigid body,
 * with a factor of safety set by the duty.
 */
public final class Standing {

  private static final Source STATICS = Source.derived("statics of a rigid body");

  private static final Source PRESSED =
      Source.derived("what the feet press on the floor under the weight of the bench");

  private static final Formula RESISTING =
      Formula.define("M_R")
          .meaning("moment with which its weight keeps the bench down")
          .unit(Unit.N_MM)
          .where("W", "weight of bench, vises and machines", Unit.N)
          .where("a", "from the centre of the weight to the outer face of the feet", Unit.MM)
          .as("W*a")
          .source(STATICS);

  private static final Formula PUSHED =
      Formula.define("M_O")
          .meaning("moment with which the push tips it")
          .unit(Unit.N_MM)
          .where("H", "push", Unit.N)
          .where("h", "height of the push", Unit.MM)
          .as("H*h")
          .source(STATICS);

  private static final Formula SAT_ON =
      Formula.define("M_O")
          .meaning("moment with which the sitter, and a push at the same time, tip it")
          .unit(Unit.N_MM)
          .where("F", "weight of the sitter", Unit.N)
          .where("e", "distance outside the feet", Unit.MM)
          .where("H", "push at the same time", Unit.N)
          .where("h", "height of the push", Unit.MM)
          .as("F*e + H*h")
          .source(STATICS);

  private static final Formula NEEDED =
      Formula.define("E_d")
          .meaning("moment that must be kept down")
          .unit(Unit.N_MM)
          .where("γ", "factor against tipping", Unit.ONE)
          .where("M_O", "tipping moment", Unit.N_MM)
          .as("γ*M_O")
          .source(Source.projectDefault("factor against tipping by duty"));

  private static final Formula FRICTION =
      Formula.define("R_d")
          .meaning("friction of the feet")
          .unit(Unit.N)
          .where("μ", "coefficient of friction", Unit.ONE)
          .where("W", "weight of bench, vises and machines", Unit.N)
          .as("μ*W")
          .source(STATICS);

  private static final Formula THRUST =
      Formula.define("E_d")
          .meaning("thrust that friction must hold")
          .unit(Unit.N)
          .where("γ", "factor against sliding", Unit.ONE)
          .where("H", "thrust", Unit.N)
          .as("γ*H")
          .source(Source.projectDefault("factor against sliding by duty"));

  private final Inquiry inquiry;
  private final Bench bench;
  private final RigidBody body;

  private Standing(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.bench = inquiry.bench();
    this.body = RigidBody.of(inquiry);
  }

  /** Tipping under every push and sitter, and sliding under every push. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return new Standing(inquiry).all();
  }

  private List<CheckResult> all() {
    if (bench.footing() == Footing.FIXED) {
      return List.of(fixed("tipping", "Tipping"), fixed("sliding", "Sliding"));
    }
    List<CheckResult> out = new ArrayList<>();
    for (Action.Thrust thrust : inquiry.plan().of(Action.Thrust.class)) {
      out.add(pushed(thrust, weakSide(thrust.way())));
      out.add(slid(thrust));
    }
    for (Action.Sitting sitting : inquiry.plan().of(Action.Sitting.class)) {
      out.add(satOn(sitting));
    }
    return out;
  }

  private CheckResult fixed(String key, String title) {
    double pull =
        inquiry.plan().of(Action.Thrust.class).stream().mapToDouble(Action::force).max().orElse(0);
    return new CheckResult.NotChecked(
        key,
        title,
        "bench",
        Topic.STABILITY,
        "the bench is fixed to the floor; the fixings are not part of this check. Before any factor"
            + " of safety they must hold at least the thrust of %s together, and %s upward at the foot"
                .formatted(Force.ofNewtons(pull), Force.ofNewtons(Math.rint(lift())))
            + " that lifts most under pushes and loads on the top; somebody who sits on the edge or"
            + " on the jaw of a vise, or leans out, adds to that");
  }

  /** The greatest pull of any foot on its fixing, less what the bench weighs there, N. */
  private double lift() {
    List<String> feet = inquiry.at(JointLevel.MEAN).model().feet();
    double most = 0;
    for (Stand stand : inquiry.stands()) {
      double[] pushes =
          inquiry.read(
              JointLevel.MEAN,
              Factors.thrust(),
              stand,
              r -> feet.stream().mapToDouble(foot -> r.reaction(foot)[2]).toArray());
      for (double push : pushes) {
        most = Math.max(most, -push);
      }
    }
    return most;
  }

  private Edge weakSide(Way way) {
    Edge a = way == Way.ALONG ? Edge.LEFT : Edge.FRONT;
    Edge b = way == Way.ALONG ? Edge.RIGHT : Edge.BACK;
    return body.lever(bench, a) <= body.lever(bench, b) ? a : b;
  }

  private CheckResult pushed(Action.Thrust thrust, Edge edge) {
    RecordingPad pad = Pad.recording();
    double resisting = resisting(pad, edge);
    double tipping = pad.take(PUSHED, thrust.force(), pushHeight(thrust.way()));
    String key = thrust.way() == Way.ALONG ? "tipping-along" : "tipping-across";
    String title = thrust.way() == Way.ALONG ? "Tipping over an end" : "Tipping over a long side";
    return judge(key, title, edge, thrust.name(), tipping, resisting, pad);
  }

  /** A push across may come at the height of a machine. */
  private double pushHeight(Way way) {
    double top = bench.height().mm();
    if (way == Way.ALONG) {
      return top;
    }
    return bench.weights().stream()
        .filter(Weight.Machine.class::isInstance)
        .mapToDouble(w -> top + ((Weight.Machine) w).centreAbove().mm())
        .max()
        .orElse(top);
  }

  private CheckResult satOn(Action.Sitting sitting) {
    RecordingPad pad = Pad.recording();
    double out = RigidBody.overhang(bench, sitting.edge()) + sitting.outreach();
    double resisting = resisting(pad, sitting.edge());
    double tipping =
        pad.take(SAT_ON, sitting.force(), Math.max(0, out), sitting.push(), bench.height().mm());
    String key = "tipping-" + sitting.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return judge(
        key, "Tipping with a sitter", sitting.edge(), sitting.name(), tipping, resisting, pad);
  }

  private double resisting(Pad pad, Edge edge) {
    double lever = Math.max(0, body.lever(bench, edge));
    pad.given("W", "weight of bench, vises and machines", body.weight(), Unit.N, PRESSED);
    boolean across = edge.isLong();
    pad.given(
        "c",
        "centre of the weight, from the " + (across ? "front edge" : "left end") + " of the top",
        across ? body.y() : body.x(),
        Unit.MM,
        PRESSED);
    pad.given(
        "e_f",
        "%s side of the feet, from the same edge".formatted(edge.words()),
        Stance.edge(bench, edge),
        Unit.MM,
        Source.derived("sizes of the bench"));
    pad.remark("The lever a is the distance between the two; it is 0 where the weight is outside.");
    return pad.take(RESISTING, body.weight(), lever);
  }

  private CheckResult judge(
      String key,
      String title,
      Edge edge,
      String load,
      double tipping,
      double resisting,
      RecordingPad pad) {
    double factor = inquiry.plan().criteria().tipping();
    double needed = pad.take(NEEDED, factor, tipping);
    if (tipping > 0) {
      pad.remark(
          "Factor against tipping: %s, at least %s is asked for. Partial factors would ask for"
                  .formatted(
                      Writing.onItsSide(resisting / tipping, factor), Writing.fixed(factor, 2))
              + " 1.5/0.9 = 1.67 (EN 1990, set A, from memory).");
    }
    return Finding.of(key, title, Topic.STABILITY)
        .on("bench", "about the %s side of its feet".formatted(edge.words()))
        .under(load, "weight of the bench against the action, with a factor of safety")
        .judge(needed, resisting, Unit.N_MM, pad);
  }

  private CheckResult slid(Action.Thrust thrust) {
    RecordingPad pad = Pad.recording();
    pad.given(
        "μ",
        bench.footing().words(),
        bench.footing().friction(),
        Unit.ONE,
        bench.footing().source());
    double friction = pad.take(FRICTION, bench.footing().friction(), body.weight());
    double needed = pad.take(THRUST, inquiry.plan().criteria().sliding(), thrust.force());
    String key = thrust.way() == Way.ALONG ? "sliding-along" : "sliding-across";
    return Finding.of(key, "Sliding " + thrust.way().words(), Topic.STABILITY)
        .on("feet", bench.footing().words())
        .under(thrust.name(), "weight of the bench against the thrust, with a factor of safety")
        .judge(needed, friction, Unit.N, pad);
  }
}
