package org.stoutwork.bench.sketch;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.stoutwork.bench.BenchJoint;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.JointFault;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.joint.advice.DowelProportions;
import org.stoutwork.joint.advice.TenonProportions;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.RotationalStiffness;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;

/** Completes a joint from its kind and the sizes that were given. */
final class JointCompletion {

  private final Sizes sizes;
  private final JointPlace place;
  private final JointSketch sketch;
  private final Answers answers;

  private JointCompletion(Answers answers, JointPlace place, JointSketch sketch) {
    this.answers = answers;
    this.place = place;
    this.sketch = sketch;
    this.sizes = new Sizes(answers, place.key());
  }

  static BenchJoint complete(Answers answers, JointPlace place, Optional<JointSketch> given) {
    return new JointCompletion(answers, place, given.orElseGet(JointSketch::new)).complete();
  }

  private BenchJoint complete() {
    Optional<StatedSpring> stated = stated();
    try {
      Joint joint = joint();
      joint.requireFits(place.members());
      return new BenchJoint(joint, stated);
    } catch (JointFault fault) {
      answers.fault(JointSizeKeys.keyOf(place.key(), fault), given(fault), fault.allowed());
    } catch (IllegalArgumentException fault) {
      answers.fault(place.key(), "impossible here", String.valueOf(fault.getMessage()));
    }
    return new BenchJoint(new StatedSpring(1, 1, 1, OptionalDouble.empty()), stated);
  }

  /** Names the part where the key alone does not say what is meant. */
  private String given(JointFault fault) {
    return JointSizeKeys.saysIt(fault)
        ? fault.given()
        : "such that the %s would be %s".formatted(fault.part(), fault.given());
  }

  private Joint joint() {
    JointKind usual =
        place.usual() == JointPlace.Usual.BOLTED ? JointKind.BED_BOLT : JointKind.MORTISE_AND_TENON;
    JointKind kind =
        answers.or(place.key() + ".kind", sketch.kind, usual, usual.words(), "usual in this place");
    TenonCompletion tenon = new TenonCompletion(sizes, place, sketch);
    return switch (kind) {
      case MORTISE_AND_TENON, THROUGH_TENON, HAUNCHED_TENON, STUB_TENON, TWIN_TENON -> {
        JointHold hold = hold(kind);
        yield tenon.tenon(kind, hold, fit(kind, hold));
      }
      case BRIDLE, CORNER_BRIDLE -> bridle(kind == JointKind.CORNER_BRIDLE);
      case BED_BOLT -> new BoltCompletion(sizes, place, sketch).bolted();
      case LOOSE_WEDGE -> new WedgeCompletion(sizes, place, sketch).loose();
      case HALF_LAP -> halfLap();
      case DOWELLED -> dowelled();
      case HOUSING -> housing();
      case SCREWED_BUTT -> new ScrewedButt(screws().butt());
    };
  }

  private JointHold hold(JointKind kind) {
    boolean stub = kind == JointKind.STUB_TENON;
    if (kind != JointKind.HALF_LAP && kind != JointKind.HOUSING) {
      refuseScrews();
    } else if (sketch.namesScrews() && sketch.hold.isEmpty()) {
      return JointHold.SCREWED;
    }
    JointHold usual = stub ? JointHold.DRY : JointHold.GLUED;
    return answers.or(
        place.key() + ".hold",
        sketch.hold,
        usual,
        usual.words(),
        stub ? "a stub only keeps its place" : "the usual way");
  }

  private void refuseScrews() {
    sketch
        .hold
        .filter(JointHold::screwed)
        .ifPresent(
            hold ->
                answers.fault(
                    place.key() + ".hold",
                    hold.words(),
                    "screws hold a half-lap or a housing; for a rail screwed through the leg say"
                        + " kind screwed butt"));
  }

  private ScrewCompletion screws() {
    return new ScrewCompletion(sizes, place, sketch);
  }

  private Fit fit(JointKind kind, JointHold hold) {
    return new FitCompletion(sizes, place, sketch).complete(kind, hold);
  }

  private Joint bridle(boolean corner) {
    double t =
        sizes.mm(
            "tenonThickness",
            sketch.tenonThickness,
            TenonProportions.bridle(place.members(), corner).thickness(),
            "a third of the thinner piece");
    int count = sizes.count("tenons", sketch.tenons, 1);
    JointKind kind = corner ? JointKind.CORNER_BRIDLE : JointKind.BRIDLE;
    return new Bridle(t, count, corner, fit(kind, hold(kind)));
  }

  private Joint halfLap() {
    double left =
        sizes.mm("lapDepth", sketch.lapDepth, place.railThickness() / 2, "half of the thickness");
    JointHold hold = hold(JointKind.HALF_LAP);
    return new HalfLap(
        left,
        hold.glued(),
        false,
        hold.screwed() ? Optional.of(screws().lap(left, hold.glued())) : Optional.empty());
  }

  private Joint housing() {
    double depth =
        sizes.mm("lapDepth", sketch.lapDepth, place.postDepth() / 6, "a sixth of the post");
    JointHold hold = hold(JointKind.HOUSING);
    return new Housing(
        depth,
        hold.glued(),
        hold.screwed() ? Optional.of(screws().housing(depth)) : Optional.empty());
  }

  private Joint dowelled() {
    DowelProportions usual =
        new DowelProportions(
            place.members(), place.wood().gravity(), place.wood().hardwood(), place.facing());
    DowelledButt chosen = usual.usual(sketch.dowels);
    double d =
        sizes.mm(
            "dowelDiameter",
            sketch.dowelDiameter,
            chosen.dowel().diameter(),
            "sold, up to about a third of the thinner piece, and keeps its distances");
    DowelledButt placed = usual.of(d, sketch.dowels);
    int count = sizes.count("dowels", sketch.dowels, placed.count());
    double half =
        sizes.mm(
                "dowelLength",
                sketch.dowelLength,
                2 * placed.inPost(),
                place.facing()
                    ? "four diameters in each piece, short of the ones that come from behind"
                    : "four diameters in each piece, or what the leg has room for")
            / 2;
    return new DowelledButt(placed.dowel(), count, half, half, placed.spacing(), placed.edge());
  }

  private Optional<StatedSpring> stated() {
    Optional<RotationalStiffness> any =
        sketch.stiffnessMean.or(() -> sketch.stiffnessLow).or(() -> sketch.stiffnessHigh);
    if (any.isEmpty()) {
      return Optional.empty();
    }
    double mean = sketch.stiffnessMean.orElse(any.get()).nmmPerRad();
    double low = sketch.stiffnessLow.map(RotationalStiffness::nmmPerRad).orElse(mean);
    double high = sketch.stiffnessHigh.map(RotationalStiffness::nmmPerRad).orElse(mean);
    if (!(low > 0 && low <= mean && mean <= high)) {
      answers.fault(
          place.key() + ".stiffnessMean",
          "%s, %s, %s".formatted(show(low), show(mean), show(high)),
          "low, mean and high must be above 0 and rise");
      return Optional.empty();
    }
    return Optional.of(new StatedSpring(low, mean, high, OptionalDouble.empty()));
  }

  private static String show(double stiffness) {
    return Writing.in(RotationalStiffness.ofNmmPerRad(stiffness), Unit.KN_M_PER_RAD, 4);
  }

  /** Reads the sizes of one joint and notes those that it fills in. */
  record Sizes(Answers answers, String key) {

    double mm(String name, Optional<Length> given, double byDefault, String reason) {
      if (given.isPresent()) {
        return given.get().mm();
      }
      double rounded = Math.max(1, Math.round(byDefault));
      return answers.or(
          key + "." + name, Optional.empty(), rounded, Length.ofMm(rounded).toString(), reason);
    }

    <E extends Enum<E>> E word(
        String name, Optional<E> given, E byDefault, Function<E, String> words, String reason) {
      return answers.or(key + "." + name, given, byDefault, words.apply(byDefault), reason);
    }

    int count(String name, Optional<Integer> given, int byDefault) {
      return answers.or(
          key + "." + name, given, byDefault, Integer.toString(byDefault), "the usual number");
    }
  }
}
