package org.stoutwork.joint.screwed;

import org.stoutwork.fastener.placing.Rows;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * What a row of like fasteners carries together, and how the row shares it.
 *
 * @param count fasteners in the row, which share its pull
 * @param tight those of them that share its shear
 * @param spacing of the row, mm; says nothing for one
 * @param pull along the shanks, N
 * @param alongRow shear along the row, N
 * @param acrossRow shear across it, N
 * @param headStiffness modulus times area of the piece under the heads, along the row, N
 * @param pointStiffness the same of the other piece, N
 */
public record RowForces(
    int count,
    Tight tight,
    double spacing,
    double pull,
    double alongRow,
    double acrossRow,
    double headStiffness,
    double pointStiffness)
    implements FastenerForces {

  private static final Source ANALYSIS = Source.derived("analysis: force on the fasteners");

  private static final Formula SHEAR =
      Formula.define("F_v")
          .meaning("shear of one fastener")
          .unit(Unit.N)
          .where("V_1", "shear along the row", Unit.N)
          .where("n_1", "fasteners that count along the row", Unit.ONE)
          .where("V_2", "shear across the row", Unit.N)
          .where("n", "fasteners that count across it", Unit.ONE)
          .as("sqrt((V_1/n_1)^2 + (V_2/n)^2)")
          .source(Source.derived("statics: across the row all share alike"));

  /** Checks that there is a fastener. */
  public RowForces {
    if (count < 1 || !(pull >= 0 && alongRow >= 0 && acrossRow >= 0)) {
      throw new IllegalArgumentException(
          "a row has 1 fastener or more and forces of 0 N or more; it had %s, %s, %s, %s"
              .formatted(count, pull, alongRow, acrossRow));
    }
    if (tight.along() > count || tight.across() > count) {
      throw new IllegalArgumentException(
          "of %s fasteners %s and %s cannot share shear"
              .formatted(count, tight.along(), tight.across()));
    }
  }

  /** A row in which all fasteners share alike. */
  public RowForces(
      int count,
      double spacing,
      double pull,
      double alongRow,
      double acrossRow,
      double headStiffness,
      double pointStiffness) {
    this(
        count,
        new Tight(count, count, ""),
        spacing,
        pull,
        alongRow,
        acrossRow,
        headStiffness,
        pointStiffness);
  }

  /**
   * Which fasteners of a row share its shear: those that have no play in their holes. The others
   * bear only when the first have given way by as much as their play.
   *
   * @param along how many share shear along the row, at least 1
   * @param across how many share shear across it, at least 1
   * @param why what is to be said of it in the working; nothing where all share
   */
  public record Tight(int along, int across, String why) {

    /** Checks that one fastener bears. */
    public Tight {
      if (along < 1 || across < 1) {
        throw new IllegalArgumentException(
            "one fastener bears at least; it was %s and %s".formatted(along, across));
      }
    }
  }

  /** The forces of a single fastener, N. */
  public static RowForces one(double pull, double shear) {
    return new RowForces(1, 0, pull, 0, shear, 1, 1);
  }

  @Override
  public double pullOfOne(Pad pad, StrengthFamily family) {
    if (count == 1) {
      return pad.given("F_ax", "pull", pull, Unit.N, ANALYSIS);
    }
    return Pulled.share(pad, pull, count, family);
  }

  @Override
  public double shearOfOne(Pad pad, StrengthFamily family, Fastening fastening) {
    if (!tight.why().isEmpty()) {
      pad.remark(tight.why());
    }
    if (count == 1) {
      return pad.given("F_v", "shear", Math.hypot(alongRow, acrossRow), Unit.N, ANALYSIS);
    }
    double along = alongRow == 0 ? tight.along() : counting(pad, family, fastening);
    return pad.take(SHEAR, alongRow, along, acrossRow, tight.across());
  }

  private double counting(Pad pad, StrengthFamily family, Fastening fastening) {
    double d = fastening.fastener().diameter();
    return family instanceof StrengthFamily.PartialFactors
        ? Rows.effective(pad, tight.along(), spacing, d, fastening.effectiveDiameter())
        : Rows.allowable(pad, tight.along(), spacing, d, headStiffness, pointStiffness);
  }
}
