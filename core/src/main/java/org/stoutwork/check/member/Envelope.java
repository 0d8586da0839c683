package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.Stand;
import org.stoutwork.wood.time.DurationClass;

/**
 * The internal forces of every cut under every combination, added up from single load cases with
 * the feet held and the joints at their mean stiffness. It finds what governs; what governs is then
 * analysed as a whole, at all three levels, with feet that may lift.
 */
final class Envelope {

  /**
   * A combination that may govern.
   *
   * @param factors of its parts
   * @param leading action where it stands; null where none leads
   * @param duration of the shortest action in it
   */
  record Mix(Factors factors, Stand leading, DurationClass duration) {

    /** What leads, in words. */
    String words() {
      return leading == null ? factors.words() : leading.words();
    }
  }

  private final List<Mix> mixes = new ArrayList<>();
  private final List<double[][]> forces = new ArrayList<>();
  private final Inquiry inquiry;
  private final List<Cut> cuts;
  private final double[][] permanent;
  private final double[][] stored;

  Envelope(Inquiry inquiry, List<Cut> cuts) {
    this.inquiry = inquiry;
    this.cuts = cuts;
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    this.permanent = of(mean.alone(mean.permanent()));
    this.stored =
        mean.loads().storesAnything() ? of(mean.alone(mean.stored())) : new double[cuts.size()][6];
    collect();
  }

  private void collect() {
    BasisChoice basis = inquiry.bench().basis();
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    add(new Mix(Factors.alone(basis), null, DurationClass.PERMANENT), null);
    if (mean.loads().storesAnything()) {
      add(new Mix(Factors.withStored(basis), null, inquiry.bench().storedFor()), null);
    }
    for (Stand stand : inquiry.stands()) {
      Mix mix = new Mix(Factors.strength(basis), stand, stand.action().duration());
      add(mix, of(mean.alone(stand.unit())));
    }
  }

  private double[][] of(FrameResult result) {
    double[][] out = new double[cuts.size()][];
    Map<String, MemberResult> members = new HashMap<>();
    for (int i = 0; i < out.length; i++) {
      Cut cut = cuts.get(i);
      out[i] = cut.forces(members.computeIfAbsent(cut.member(), result::member));
    }
    return out;
  }

  private void add(Mix mix, double[][] unit) {
    Factors f = mix.factors();
    double leading = unit == null ? 0 : f.leading() * mix.leading().force();
    double[][] sum = new double[cuts.size()][6];
    for (int i = 0; i < sum.length; i++) {
      for (int k = 0; k < 6; k++) {
        sum[i][k] = f.permanent() * permanent[i][k] + f.stored() * stored[i][k];
        if (unit != null) {
          sum[i][k] += leading * unit[i][k];
        }
      }
    }
    mixes.add(mix);
    forces.add(sum);
  }

  /**
   * The greatest push on all legs together over the greatest push on one of them: what the hardest
   * pressed leg is held up by. The two greatest need not come together; taking them so is on the
   * safe side, for it makes the leg longer.
   */
  double sharesOfLegs() {
    double one = 0;
    double all = 0;
    for (double[][] of : forces) {
      Map<String, Double> byLeg = new HashMap<>();
      for (int cut = 0; cut < of.length; cut++) {
        Part part = cuts.get(cut).part();
        if (part.kind() == PartKind.LEG) {
          byLeg.merge(part.name(), -of[cut][0], Math::max);
        }
      }
      one = Math.max(one, byLeg.values().stream().reduce(0.0, Math::max));
      all = Math.max(all, byLeg.values().stream().reduce(0.0, Double::sum));
    }
    return one > 0 ? Math.max(1, all / one) : 1;
  }

  int size() {
    return mixes.size();
  }

  Mix mix(int index) {
    return mixes.get(index);
  }

  double[] forces(int mix, int cut) {
    return forces.get(mix)[cut];
  }
}
