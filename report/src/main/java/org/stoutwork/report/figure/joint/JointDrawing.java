package org.stoutwork.report.figure.joint;

import java.util.Optional;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.DowelledButt;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Housing;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.ScrewedButt;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.Sketch;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.units.Amounts;

/**
 * A joint to scale: a section through it, with the piece that takes the joint cut and hatched, and
 * a cut at the shoulder, with the tenon hatched. Both carry their dimensions.
 */
public final class JointDrawing {

  private static final double[] SCALES = {
    1, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100
  };
  private static final double GAP = 5;
  private static final double TITLE_GAP = 2.6;

  private final Place place;
  private final Amounts amounts;
  private final TextMeasure measure;

  private JointDrawing(Place place, Amounts amounts, TextMeasure measure) {
    this.place = place;
    this.amounts = amounts;
    this.measure = measure;
  }

  /**
   * The drawing in the largest usual scale that fits; empty for a joint of stated stiffness, whose
   * geometry is not known.
   *
   * @param joint kind and sizes, mm
   * @param place the pieces
   * @param amounts for the figures of dimensions
   * @param measure of the type
   * @param width most width on paper, mm
   * @param height most height on paper, mm
   * @throws IllegalStateException if no usual scale fits
   */
  public static Optional<Drawing> draw(
      Joint joint, Place place, Amounts amounts, TextMeasure measure, double width, double height) {
    if (joint instanceof StatedSpring) {
      return Optional.empty();
    }
    JointDrawing drawing = new JointDrawing(place, amounts, measure);
    for (double scale : SCALES) {
      Sketch both = drawing.together(joint, scale);
      Bounds reach = Extent.of(both.marks(), measure);
      if (reach.width() <= width && reach.height() <= height) {
        return Optional.of(both.fitted(measure, 0));
      }
    }
    throw new IllegalStateException(
        "a " + joint.title() + " is too large to draw on " + width + " mm by " + height + " mm");
  }

  private Sketch together(Joint joint, double scale) {
    Views v =
        new Views(
            new JointView(scale, amounts, measure),
            new JointView(scale, amounts, measure),
            place,
            FastenedShape.reach(joint, place.members()));
    joint.fold(new Shapes(v));
    v.section.dimensioned();
    v.shoulder.dimensioned();
    double level = Math.min(v.section.reach().top(), v.shoulder.reach().top()) - TITLE_GAP;
    v.section.titled(joint instanceof HalfLap ? "Side" : "Section", v.section.scale(), level);
    v.shoulder.titled("At the shoulder", "", level);
    double right = v.section.reach().right() + GAP - v.shoulder.reach().left();
    Sketch all = new Sketch().add(v.section.marks());
    for (Mark mark : v.shoulder.marks()) {
      all.add(mark.moved(right, 0));
    }
    return all;
  }

  /** Draws every kind. */
  private record Shapes(Views v) implements Joint.Cases<Views> {

    @Override
    public Views mortiseAndTenon(MortiseAndTenon joint) {
      TenonShape.draw(v, joint);
      return v;
    }

    @Override
    public Views bridle(Bridle joint) {
      TenonShape.draw(v, joint);
      return v;
    }

    @Override
    public Views boltedTenon(BoltedTenon joint) {
      FastenedShape.draw(v, joint);
      return v;
    }

    @Override
    public Views looseWedgeTenon(LooseWedgeTenon joint) {
      FastenedShape.draw(v, joint);
      return v;
    }

    @Override
    public Views halfLap(HalfLap joint) {
      LaidShape.draw(v, joint);
      return v;
    }

    @Override
    public Views dowelledButt(DowelledButt joint) {
      FastenedShape.draw(v, joint);
      return v;
    }

    @Override
    public Views housing(Housing joint) {
      LaidShape.draw(v, joint);
      return v;
    }

    @Override
    public Views screwedButt(ScrewedButt joint) {
      FastenedShape.draw(v, joint);
      return v;
    }

    @Override
    public Views statedSpring(StatedSpring joint) {
      return v;
    }
  }
}
