package org.stoutwork.check.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.stoutwork.action.Factors;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.JointSpot;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;
import org.stoutwork.check.MissingValues;
import org.stoutwork.check.Stand;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;

/**
 * The strength of every joint in every way that it can fail. Joints of one kind between parts of
 * one kind are reported together: the one that is used most stands for them. The opening of a
 * shoulder, by which nothing fails, is not judged: what it softens is in the joint's stiffness.
 */
public final class JointStrengthCheck {

  private final Inquiry inquiry;
  private final JointStrengths strengths;

  private JointStrengthCheck(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.strengths = new JointStrengths(inquiry);
  }

  /** The limits of every kind of joint of the bench, the most used of each. */
  public static List<CheckResult> all(Inquiry inquiry) {
    return new JointStrengthCheck(inquiry).all();
  }

  /** A combination that may govern a joint. */
  private record Mix(Factors factors, Stand leading, DurationClass duration) {}

  private List<CheckResult> all() {
    Map<String, JointFinding> worst = new LinkedHashMap<>();
    List<CheckResult> out = new ArrayList<>();
    Set<String> said = new LinkedHashSet<>();
    for (JointSpot spot : inquiry.at(JointLevel.MEAN).model().joints()) {
      String missing = missing(spot);
      if (!missing.isEmpty()) {
        if (said.add(missing)) {
          out.add(notChecked(spot, missing));
        }
        continue;
      }
      for (Mix mix : candidates(spot)) {
        collect(spot, mix, worst);
      }
    }
    worst.values().forEach(finding -> out.add(finding.make(inquiry, strengths)));
    return out;
  }

  private String missing(JointSpot spot) {
    return missing(inquiry, List.of(woodOf(spot.rail()), woodOf(spot.post())));
  }

  /** What the first of some woods lacks to be judged in a joint; empty if nothing. */
  static String missing(Inquiry inquiry, List<String> woods) {
    List<DesignQuantity> needed =
        List.of(
            DesignQuantity.BENDING,
            DesignQuantity.TENSION_PARALLEL,
            DesignQuantity.TENSION_PERPENDICULAR,
            DesignQuantity.COMPRESSION_PARALLEL,
            DesignQuantity.COMPRESSION_PERPENDICULAR,
            DesignQuantity.SHEAR,
            DesignQuantity.DENSITY_LOW);
    return woods.stream()
        .map(wood -> MissingValues.of(inquiry, wood, needed))
        .filter(missing -> !missing.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static CheckResult notChecked(JointSpot spot, String missing) {
    return new CheckResult.NotChecked(
        "joints-" + key(spot.rail()), "Strength of the joint", spot.name(), Topic.JOINT, missing);
  }

  private String woodOf(String part) {
    return inquiry.at(JointLevel.MEAN).model().parts().stream()
        .filter(p -> p.name().equals(part))
        .findFirst()
        .orElseThrow()
        .wood();
  }

  private void collect(JointSpot spot, Mix mix, Map<String, JointFinding> worst) {
    String rail = woodOf(spot.rail());
    String post = woodOf(spot.post());
    double[] raw =
        inquiry.read(
            JointLevel.MEAN, mix.factors(), mix.leading(), r -> JointForcesAt.raw(spot, r));
    for (JointForces forces : JointForcesAt.both(spot, raw)) {
      List<JointLimit> limits =
          JointCapacities.utilisations(
              spot.joint().joint(),
              spot.setting(),
              strengths.of(rail, post, mix.duration()),
              forces,
              false);
      for (JointLimit limit : limits) {
        if (limit.nature() == JointLimit.Nature.SERVICE) {
          continue;
        }
        String group = spot.kind().words() + "/" + limit.failure() + "/" + limit.place();
        JointFinding old = worst.get(group);
        if (old == null || limit.utilisation() > old.limit().utilisation()) {
          worst.put(
              group,
              new JointFinding(
                  spot, rail, post, limit, mix.factors(), mix.leading(), mix.duration()));
        }
      }
    }
  }

  /** For each force on the joint, the combination in which it is greatest, with the feet held. */
  private List<Mix> candidates(JointSpot spot) {
    BasisChoice basis = inquiry.bench().basis();
    LevelAnalysis mean = inquiry.at(JointLevel.MEAN);
    List<Mix> out = new ArrayList<>();
    out.add(new Mix(Factors.alone(basis), null, DurationClass.PERMANENT));
    if (mean.loads().storesAnything()) {
      out.add(new Mix(Factors.withStored(basis), null, inquiry.bench().storedFor()));
    }
    Stand[] greatest = new Stand[12];
    double[] size = new double[12];
    for (Stand stand : inquiry.stands()) {
      double[] f = JointForcesAt.raw(spot, mean.alone(stand.unit()));
      for (int k = 0; k < 6; k++) {
        double value = stand.force() * f[k];
        int slot = value >= 0 ? k : k + 6;
        if (Math.abs(value) > size[slot]) {
          size[slot] = Math.abs(value);
          greatest[slot] = stand;
        }
      }
    }
    Set<Stand> distinct = new LinkedHashSet<>();
    for (Stand stand : greatest) {
      if (stand != null) {
        distinct.add(stand);
      }
    }
    distinct.forEach(s -> out.add(new Mix(Factors.strength(basis), s, s.action().duration())));
    return out;
  }

  static String key(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }
}
