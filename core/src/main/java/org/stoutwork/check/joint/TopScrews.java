package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.wood.time.DurationClass;

/**
 * The screws that hold the top on its rails: what the frame pulls and pushes through the bearings
 * of one rail. All its screws share the pull, those without play in their holes the shear. In the
 * end frame whose screws are used most.
 */
public final class TopScrews {

  private static final String OF_PULL = "thread.*|head.*|core.*|reach.*|hole.*|.*pulled.*";

  /** Thread that EN 1995-1-1 asks for, in diameters. */
  private static final double LEAST_THREAD = 6;

  private static final int SLOTS = 6;
  private static final double TIED = 1e-6;

  private final Inquiry inquiry;
  private final JointStrengths strengths;

  private TopScrews(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.strengths = new JointStrengths(inquiry);
  }

  /** Every limit of the screws, or the reason why there is none. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return new TopScrews(inquiry).all();
  }

  /** The screws of one end frame under one action; pull, shear along and across the bench, N. */
  private record Drawn(
      EndFrame frame, Stand leading, double pull, double lengthways, double sideways) {}

  /** Shear of the screw that holds the top, N: it shares with those that have no play. */
  private double ofOne(double lengthways, double sideways) {
    TopFixing fixing = inquiry.bench().top().fixing();
    return Math.hypot(
        lengthways / Math.max(1, fixing.tightAlong()),
        sideways / Math.max(1, fixing.tightAcross()));
  }

  private double ofOne(Drawn drawn) {
    return ofOne(drawn.lengthways(), drawn.sideways());
  }

  private List<CheckResult> all() {
    String wood = inquiry.bench().top().layers().get(0).wood();
    String rail = inquiry.bench().endFrames().get(0).topRail().wood();
    String missing = JointStrengthCheck.missing(inquiry, List.of(rail, wood));
    if (!missing.isEmpty()) {
      return List.of(left("top-screws", "Screws of the top", missing));
    }
    List<CheckResult> out = new ArrayList<>();
    Drawn shear = null;
    Drawn pull = null;
    for (EndFrame frame : inquiry.bench().endFrames()) {
      for (Drawn drawn : candidates(frame)) {
        shear = shear == null || ofOne(drawn) > ofOne(shear) ? drawn : shear;
        pull = pull == null || drawn.pull() > pull.pull() ? drawn : pull;
      }
    }
    if (pull != null && shear != null) {
      limits(pull, true, out);
      limits(shear, false, out);
    }
    return out;
  }

  private static CheckResult left(String key, String title, String reason) {
    return new CheckResult.NotChecked(key, title, "top", Topic.JOINT, reason);
  }

  /** The actions that may govern, each as the frame answers to them. */
  private List<Drawn> candidates(EndFrame frame) {
    Map<Stand, double[]> alone = new LinkedHashMap<>();
    double[] most = new double[SLOTS];
    for (Stand stand : inquiry.stands()) {
      double[] size =
          slots(stand.force(), forces(frame, inquiry.at(JointLevel.MEAN).alone(stand.unit())));
      alone.put(stand, size);
      for (int i = 0; i < SLOTS; i++) {
        most[i] = Math.max(most[i], size[i]);
      }
    }
    Factors factors = Factors.strength(inquiry.bench().basis());
    List<Drawn> out = new ArrayList<>();
    alone.forEach(
        (stand, size) -> {
          if (mayGovern(size, most)) {
            double[] f = inquiry.read(JointLevel.MEAN, factors, stand, r -> forces(frame, r));
            out.add(new Drawn(frame, stand, Math.max(0, -f[0]), Math.abs(f[2]), Math.abs(f[1])));
          }
        });
    return out;
  }

  /** Pull, shear across and along in either sense, and both on one screw; none below nought. */
  private double[] slots(double force, double[] f) {
    return new double[] {
      Math.max(0, -force * f[0]),
      Math.max(0, force * f[1]),
      Math.max(0, -force * f[1]),
      Math.max(0, force * f[2]),
      Math.max(0, -force * f[2]),
      Math.abs(force) * ofOne(f[2], f[1])
    };
  }

  /** Whether an action is the greatest in some way, or equal to it: a tie has no order. */
  private static boolean mayGovern(double[] size, double[] most) {
    for (int i = 0; i < SLOTS; i++) {
      if (size[i] > 0 && size[i] >= (1 - TIED) * most[i]) {
        return true;
      }
    }
    return false;
  }

  /** Push, shear across and shear along that pass from the top into one end frame, N. */
  private double[] forces(EndFrame frame, FrameResult result) {
    BenchModel model = inquiry.at(JointLevel.MEAN).model();
    double[] sum = new double[3];
    for (String bearing : model.bearings()) {
      if (bearing.startsWith("bearing of top on " + frame.name() + " ")) {
        double[] end = result.member(bearing).start();
        sum[0] += end[0];
        sum[1] += end[1];
        sum[2] += end[2];
      }
    }
    return sum;
  }

  private void limits(Drawn drawn, boolean pulled, List<CheckResult> out) {
    DurationClass duration = drawn.leading().action().duration();
    String rail = drawn.frame().topRail().wood();
    String wood = inquiry.bench().top().layers().get(0).wood();
    JointStrength strength = strengths.of(rail, wood, duration);
    TopScrewLimits limits = new TopScrewLimits(inquiry.bench(), drawn.frame(), strength);
    LimitResult results =
        new LimitResult(
            "top-screws",
            drawn.frame().name() + " top rail",
            drawn.leading().words(),
            Factors.strength(inquiry.bench().basis()).words(),
            inquiry.plan().criteria().strengthUse());
    boolean tooShort =
        strength.family() instanceof StrengthFamily.PartialFactors
            && limits.thread() < LEAST_THREAD * diameter();
    for (JointLimit limit :
        limits.of(new TopScrewLimits.Held(drawn.pull(), drawn.lengthways(), drawn.sideways()))) {
      boolean ofPull = limit.failure().matches(OF_PULL);
      boolean needsThread = limit.failure().matches("thread.*|pull and.*");
      if (ofPull == pulled && !(tooShort && needsThread)) {
        out.add(results.of(limit));
      }
    }
    if (pulled && tooShort) {
      String reason = tooShort(limits.thread());
      out.add(left("top-screws-thread-pulling-out", "Thread pulling out", reason));
    }
  }

  private double diameter() {
    return inquiry.bench().top().fixing().screwDiameter().mm();
  }

  private String tooShort(double thread) {
    return "EN 1995-1-1 counts no thread shorter than 6 diameters: %s mm stand in the top, %s mm would be needed"
        .formatted(Writing.fixed(thread, 0), Writing.fixed(LEAST_THREAD * diameter(), 0));
  }
}
