package org.stoutwork.report.file.bench;

import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.bench.sketch.JointSketch;
import org.stoutwork.quantity.RotationalStiffness;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.NotUnderstood;
import org.stoutwork.report.file.field.Quantities;
import org.stoutwork.report.file.field.Value;

/**
 * A joint: a map of its kind, its hold and its sizes, or a short text such as {@code mortise and
 * tenon, drawbored}.
 */
final class JointMapping {

  private static final String NOUN =
      "a joint such as `mortise and tenon, drawbored` or a map of its keys";
  private static final Kind<JointKind> KIND = WordKinds.of(JointKind.class, JointKind::words);
  private static final Kind<JointHold> HOLD = WordKinds.of(JointHold.class, JointHold::words);

  private final Lengths lengths;

  JointMapping(Lengths lengths) {
    this.lengths = lengths;
  }

  /** Reads the key {@code joint} of a part. */
  void read(Fields part, Consumer<Consumer<JointSketch>> owner) {
    part.either("joint", NOUN, value -> joint(value, owner)).optional();
  }

  private Got<Boolean> joint(Value value, Consumer<Consumer<JointSketch>> owner) {
    if (value.isMap()) {
      return value.map(
          fields -> Take.used(fields, joint -> owner.accept(sketch -> sizes(joint, sketch))));
    }
    Got<Words> words = value.as(words());
    words.ifThere(given -> owner.accept(given::applyTo));
    return words.map(given -> true);
  }

  /**
   * A joint in a few words.
   *
   * @param kind of joint
   * @param hold where one was named
   */
  private record Words(JointKind kind, Optional<JointHold> hold) {

    void applyTo(JointSketch sketch) {
      sketch.kind(kind);
      hold.ifPresent(sketch::hold);
    }
  }

  private static Kind<Words> words() {
    return Kind.of(NOUN, JointMapping::parse, String::valueOf);
  }

  private static Words parse(String text) throws NotUnderstood {
    String[] pieces = text.split(",", 2);
    JointKind kind = word(KIND, "a joint is " + KIND.noun(), pieces[0].strip());
    if (pieces.length == 1) {
      return new Words(kind, Optional.empty());
    }
    return new Words(kind, Optional.of(word(HOLD, "a hold is " + HOLD.noun(), pieces[1].strip())));
  }

  private static <T> T word(Kind<T> kind, String all, String text) throws NotUnderstood {
    try {
      return kind.parser().parse(text);
    } catch (NotUnderstood e) {
      throw new NotUnderstood(all, e.suggestion());
    }
  }

  private void sizes(Fields fields, JointSketch joint) {
    Take.value(fields.scalar("kind", KIND), joint::kind);
    Take.value(fields.scalar("hold", HOLD), joint::hold);
    JointSizes sizes = new JointSizes(lengths);
    sizes.tenon(fields, joint);
    sizes.wedges(fields, joint);
    sizes.pegs(fields, joint);
    sizes.bolts(fields, joint);
    sizes.dowels(fields, joint);
    sizes.screws(fields, joint);
    Take.value(lengths.size(fields, "lapDepth"), joint::lapDepth);
    fields.either("stiffness", "a stiffness", value -> stiffness(value, joint)).optional();
  }

  private static Got<Boolean> stiffness(Value value, JointSketch joint) {
    if (value.isMap()) {
      return value.map(fields -> Take.used(fields, three -> threeLevels(three, joint)));
    }
    Got<RotationalStiffness> one = value.as(spring());
    one.ifThere(joint::stiffnessMean);
    return one.map(given -> true);
  }

  private static void threeLevels(Fields fields, JointSketch joint) {
    fields.scalar("low", spring()).required().ifThere(joint::stiffnessLow);
    fields.scalar("mean", spring()).required().ifThere(joint::stiffnessMean);
    fields.scalar("high", spring()).required().ifThere(joint::stiffnessHigh);
  }

  private static Kind<RotationalStiffness> spring() {
    return Quantities.rotationalStiffness().above(RotationalStiffness.ofNmmPerRad(0)).kind();
  }
}
