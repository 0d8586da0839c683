package org.stoutwork.report.file.bench;

import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.sketch.JointSketch;
import org.stoutwork.bench.sketch.NutKind;
import org.stoutwork.fastener.BoltClass;
import org.stoutwork.fastener.HoleFit;
import org.stoutwork.quantity.Angle;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Quantities;

/** The sizes of a joint: of its tenon and of what holds it. */
final class JointSizes {

  private static final double STEEPEST_WEDGE = 19;
  private static final double SLIMMEST_WEDGE = 0.5;
  private static final Kind<BoltClass> STEEL = WordKinds.of(BoltClass.class, BoltClass::words);
  private static final Kind<HoleFit> HOLE = WordKinds.of(HoleFit.class, HoleFit::words);
  private static final Kind<FixingScrew> SCREW =
      WordKinds.of(FixingScrew.class, FixingScrew::words);
  private static final Kind<NutKind> NUT = WordKinds.of(NutKind.class, NutKind::words);

  private final Lengths lengths;

  JointSizes(Lengths lengths) {
    this.lengths = lengths;
  }

  void tenon(Fields fields, JointSketch joint) {
    Take.value(lengths.size(fields, "tenonHeight"), joint::tenonHeight);
    Take.value(lengths.size(fields, "tenonThickness"), joint::tenonThickness);
    Take.value(lengths.size(fields, "tenonLength"), joint::tenonLength);
    Take.value(lengths.place(fields, "shoulderBelow"), joint::shoulderBelow);
    Take.value(fields.wholeNumber("tenons", 1, 2), joint::tenons);
    Take.value(fields.yesNo("through"), joint::through);
    Take.value(lengths.size(fields, "haunchHeight"), joint::haunchHeight);
    Take.value(lengths.size(fields, "haunchLength"), joint::haunchLength);
    Take.value(lengths.place(fields, "play"), joint::play);
  }

  void wedges(Fields fields, JointSketch joint) {
    Take.value(fields.wholeNumber("wedges", 1, 2), joint::wedges);
    Take.value(lengths.size(fields, "kerfDepth"), joint::kerfDepth);
    Take.value(lengths.size(fields, "kerfFromEdge"), joint::kerfFromEdge);
    Take.value(lengths.place(fields, "wedgeSpread"), joint::wedgeSpread);
    Take.value(
        fields.quantity(
            "wedgeAngle",
            Quantities.angle()
                .between(Angle.of(SLIMMEST_WEDGE, Unit.DEG), Angle.of(STEEPEST_WEDGE, Unit.DEG))),
        joint::wedgeAngle);
    Take.value(lengths.size(fields, "relish"), joint::relish);
    Take.value(lengths.size(fields, "wedgeThickness"), joint::wedgeThickness);
    Take.value(lengths.size(fields, "wedgeWidth"), joint::wedgeWidth);
  }

  void pegs(Fields fields, JointSketch joint) {
    Take.value(lengths.size(fields, "pegDiameter"), joint::pegDiameter);
    Take.value(fields.wholeNumber("pegs", 1, 4), joint::pegs);
    Take.value(lengths.place(fields, "drawboreOffset"), joint::drawboreOffset);
    Take.value(lengths.size(fields, "pegFromShoulder"), joint::pegFromShoulder);
  }

  void bolts(Fields fields, JointSketch joint) {
    Take.value(fields.wholeNumber("bolts", 1, 2), joint::bolts);
    Take.value(lengths.size(fields, "boltDiameter"), joint::boltDiameter);
    Take.value(fields.scalar("boltClass", STEEL), joint::boltClass);
    Take.value(fields.scalar("boltHole", HOLE), joint::boltHole);
    Take.value(lengths.size(fields, "washerDiameter"), joint::washerDiameter);
    Take.value(lengths.size(fields, "boltSpacing"), joint::boltSpacing);
    Take.value(fields.scalar("nut", NUT), joint::nut);
    Take.value(lengths.size(fields, "nutFromEnd"), joint::nutFromEnd);
    Take.value(
        fields.quantity("preload", Quantities.force().atLeast(Force.ofNewtons(0))), joint::preload);
  }

  void screws(Fields fields, JointSketch joint) {
    Take.value(fields.scalar("screw", SCREW), joint::screw);
    Take.value(fields.wholeNumber("screws", 1, 8), joint::screws);
    Take.value(lengths.size(fields, "screwDiameter"), joint::screwDiameter);
    Take.value(lengths.size(fields, "screwLength"), joint::screwLength);
    Take.value(lengths.size(fields, "screwFromEdge"), joint::screwFromEdge);
    Take.value(lengths.place(fields, "screwPilot"), joint::screwPilot);
  }

  void dowels(Fields fields, JointSketch joint) {
    Take.value(fields.wholeNumber("dowels", 2, 8), joint::dowels);
    Take.value(lengths.size(fields, "dowelDiameter"), joint::dowelDiameter);
    Take.value(lengths.size(fields, "dowelLength"), joint::dowelLength);
  }
}
