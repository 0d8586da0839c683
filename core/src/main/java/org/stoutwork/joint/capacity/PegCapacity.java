package org.stoutwork.joint.capacity;

import java.util.function.ToDoubleFunction;
import org.stoutwork.fastener.Peg;
import org.stoutwork.fastener.lateral.Embedment;
import org.stoutwork.fastener.lateral.Johansen;
import org.stoutwork.fastener.lateral.WoodPegYield;
import org.stoutwork.fastener.placing.Distances;
import org.stoutwork.fastener.placing.Slip;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.bolted.BarrelNut;
import org.stoutwork.joint.glue.GlueDesign;
import org.stoutwork.joint.limit.Case;
import org.stoutwork.joint.peg.Drawbore;
import org.stoutwork.joint.peg.Relish;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.joint.tenon.ShoulderSpring;
import org.stoutwork.joint.tenon.Splitting;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * Pegs through a tenon or a bridle's tongue. Glue and pegs are not added, for they differ in give:
 * in a glued joint the pegs are a reserve and only their holes and places are judged.
 */
record PegCapacity(Case with, Fit.Pegged fit, PeggedTenon tenon) {

  /** Coefficient of variation of peg wood in bending. */
  private static final double PEG_COV = 0.16;

  /** Coefficient of variation of peg cross-shear, judgement. */
  private static final double SHEAR_COV = 0.2;

  private static final Formula ALL =
      Formula.define("F")
          .meaning("force of all pegs")
          .unit(Unit.N)
          .where("n", "pegs times tenons", Unit.ONE)
          .where("F_1", "one peg, both planes", Unit.N)
          .as("n*F_1")
          .source(Source.derived("statics"));

  private static final Formula DURATION =
      Formula.define("Z′")
          .meaning("adjusted for load duration")
          .unit(Unit.N)
          .where("Z", "at normal duration", Unit.N)
          .where("C_D", "load duration", Unit.ONE)
          .as("Z*C_D")
          .source(Source.fromMemory("ANSI/AWC NDS 2018", "Table 11.3.1"));

  private static final Formula PULL_OR_DRAW =
      Formula.define("F_d")
          .meaning(
              "force on the relish: the pull, or what is left of the draw force if that is more")
          .unit(Unit.N)
          .where("F_p", "pull on the pegs", Unit.N)
          .where("F_l", "lasting draw force of all pegs", Unit.N)
          .as("max(F_p, F_l)")
          .source(
              Source.derived("statics: a clamped shoulder gives way before the peg takes more"));

  private static final Formula PULLED =
      Formula.define("F_p")
          .meaning("pull on the pegs from moment and axial force")
          .unit(Unit.N)
          .where("M", "moment", Unit.N_MM)
          .where("z", "lever of the pegs to the shoulder pressure", Unit.MM)
          .where("N", "pull", Unit.N)
          .as("M/z + N")
          .source(Source.derived("statics"));

  void all() {
    if (!fit.glued()) {
      yielding();
      lifting();
      relish();
      places();
      splitting();
    }
    beside();
    if (fit.drawbored()) {
      drawing();
    }
  }

  private double forceOfOne(Pad pad) {
    return with.family() instanceof StrengthFamily.Allowable a
        ? pad.take(DURATION, allowable(pad), a.loadDuration())
        : partialFactors(pad);
  }

  private double timberGravity() {
    return Math.min(with.rail().gravity(), with.post().gravity());
  }

  private double allowable(Pad pad) {
    return WoodPegYield.allowable(
            pad,
            fit.peg().diameter(),
            tenon.thickness(),
            tenon.cheek(),
            fit.peg().wood().specificGravity(),
            timberGravity())
        .least()
        .force();
  }

  private double partialFactors(Pad pad) {
    pad.remark(
        "EN 1995-1-1 has no yield moment for wood pegs: plastic bending of the peg, and its"
            + " cross-shear from tests of pegs.");
    Peg peg = fit.peg();
    double d = peg.diameter();
    double cheek = Embedment.ec5(pad, d, with.post().density(), 90, with.post().hardwood());
    double inner = Embedment.along(pad, d, with.rail().density());
    double fm = GlueDesign.lower(pad, peg.wood().bendingStrength(), PEG_COV);
    double moment = Johansen.woodMoment(pad, fm, d);
    double bent =
        2
            * Johansen.doubled(pad, tenon.cheek(), tenon.thickness(), d, cheek, inner, moment, 0, 0)
                .least()
                .force();
    double sheared = WoodPegYield.crossShear(pad, d, lowerShear(pad));
    return BarrelNut.design(pad, Math.min(bent, sheared), with.family());
  }

  private double lowerShear(Pad pad) {
    double yield =
        WoodPegYield.shearYield(pad, fit.peg().wood().specificGravity(), timberGravity());
    return GlueDesign.lower(pad, yield, SHEAR_COV);
  }

  private double allPegs(Pad pad) {
    return pad.take(ALL, fit.pegs() * tenon.count(), forceOfOne(pad));
  }

  private void yielding() {
    with.limits()
        .strength("pegs yielding in double shear", "peg", Unit.N, this::pulled, this::allPegs);
  }

  /** The pegs hold the rail against the pull, and against the shoulder that a moment presses. */
  private double pulled(Pad pad) {
    return pad.take(PULLED, Math.abs(with.forces().moment()), lever(pad), with.forces().tension());
  }

  /** Above an open mortise only the pegs hold the rail down. */
  private void lifting() {
    if (with.setting().openAbove()) {
      with.limits()
          .strength(
              "pegs holding the rail down in its open mortise",
              "peg",
              Math.max(0, -with.forces().shear()),
              Unit.N,
              this::allPegs);
    }
  }

  /**
   * The pegs pull the post across its grain, and under a moment too, while the shoulder presses it
   * back. They bear on the outer cheeks.
   */
  private void splitting() {
    Joint.Members m = with.members();
    with.limits()
        .strength(
            "post splitting across the grain at the pegs",
            "post",
            Unit.N,
            this::pulled,
            pad ->
                Splitting.force(
                    pad,
                    with.family(),
                    with.post().fV(),
                    2 * tenon.cheek(),
                    Math.min(fit.fromShoulder(), m.postDepth() - 1),
                    m.postDepth()));
  }

  private double lever(Pad pad) {
    return ShoulderSpring.lever(
        pad, tenon.height(), tenon.shoulder(), with.members().railDepth() / 3);
  }

  private double behind() {
    return tenon.behind(fit, with.setting().crossed());
  }

  private void relish() {
    with.limits()
        .strength(
            "relish shearing out behind the pegs",
            "tenon",
            Unit.N,
            pad -> pad.take(PULL_OR_DRAW, pulled(pad), drawForce(pad)),
            pad ->
                fit.pegs()
                    * Relish.tearOut(
                        pad, 1, with.rail().fV(), tenon.thickness() * tenon.count(), behind()));
  }

  private double drawForce(Pad pad) {
    return fit.drawbored() ? fit.pegs() * tenon.count() * drawbore(pad).lasting() : 0;
  }

  private Drawbore drawbore(Pad pad) {
    double density =
        Slip.density(pad, fit.peg().wood().density(), Math.max(with.post().density(), 300));
    double shear =
        WoodPegYield.shearYield(pad, fit.peg().wood().specificGravity(), timberGravity());
    double yield = WoodPegYield.crossShear(pad, fit.peg().diameter(), shear);
    return Drawbore.of(
        pad,
        fit.peg(),
        fit.offset(),
        tenon.thickness(),
        tenon.cheek(),
        density,
        yield,
        Drawbore.RELAXED);
  }

  /** In a glued joint the moment goes through the cheeks, and no part of it through the pegs. */
  private void beside() {
    ToDoubleFunction<Pad> capacity =
        pad ->
            Splitting.netTension(
                pad,
                Splitting.Cut.PEGS,
                with.rail().fT0(),
                tenon.height(),
                tenon.holes(fit, with.setting().crossed()),
                tenon.thickness() * tenon.count());
    String failure = "tenon tearing beside the peg holes";
    if (fit.glued()) {
      with.limits().strength(failure, "tenon", with.forces().tension(), Unit.N, capacity);
    } else {
      with.limits().strength(failure, "tenon", Unit.N, this::pulled, capacity);
    }
  }

  private void places() {
    double d = fit.peg().diameter();
    Distances inTenon = Distances.peg(d, with.rail().gravity(), with.rail().hardwood());
    Distances inPost = Distances.peg(d, with.post().gravity(), with.post().hardwood());
    with.limits()
        .rule("relish beyond the peg", "tenon", behind(), inTenon.end(), Unit.MM, inTenon.source());
    with.limits()
        .rule(
            "peg from the edge of the post",
            "post",
            fit.fromShoulder(),
            inPost.edge(),
            Unit.MM,
            inPost.source());
    if (fit.pegs() > 1) {
      with.limits()
          .rule(
              "spacing of pegs",
              "post",
              fit.spacing(),
              inPost.alongGrain(),
              Unit.MM,
              inPost.source());
    }
  }

  /** While it is driven: force when made against the mean strength of the wood. */
  private void driving() {
    double mean = with.rail().shearMean() > 0 ? with.rail().shearMean() : with.rail().fV();
    with.limits()
        .rule(
            "relish splitting out as the peg is driven",
            "tenon",
            Unit.N,
            pad -> pad.take(ALL, fit.pegs() * tenon.count(), drawbore(pad).clamp()),
            pad ->
                fit.pegs()
                    * Relish.tearOut(pad, 1, mean, tenon.thickness() * tenon.count(), behind()));
  }

  private void drawing() {
    driving();
    with.limits()
        .service(
            "drawn shoulder opening under moment",
            "shoulder",
            with.forces().moment(),
            Unit.N_MM,
            pad ->
                Relish.couple(
                    pad, fit.pegs() * tenon.count() * drawbore(pad).lasting(), lever(pad)));
    double d = fit.peg().diameter();
    boolean hard = with.rail().hardwood();
    with.limits()
        .rule(
            "drawbore offset",
            "peg",
            Unit.MM,
            pad ->
                pad.given(
                    "e", "offset", fit.offset(), Unit.MM, Source.derived("the joint as described")),
            pad -> {
              drawbore(pad);
              return pad.given(
                  "e_max",
                  "largest offset: an eighth of the peg in hardwood, a sixth in softwood",
                  Drawbore.largestOffset(d, hard),
                  Unit.MM,
                  Source.projectDefault("judgement on peg strain and trade advice"));
            });
  }
}
