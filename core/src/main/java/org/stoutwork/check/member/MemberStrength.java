package org.stoutwork.check.member;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.stoutwork.action.Way;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Grain;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.MissingValues;
import org.stoutwork.check.Strengths;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Racking;
import org.stoutwork.result.Topic;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;

/** Bending with axial force and buckling, and shear, of every member. */
public final class MemberStrength {

  private final Inquiry inquiry;
  private final BucklingLengths lengths;
  private final LateralOfParts laterals;
  private final List<Cut> cuts;
  private final Envelope envelope;

  MemberStrength(Inquiry inquiry, List<Racking> racking) {
    this.inquiry = inquiry;
    this.cuts = Cuts.of(inquiry.at(JointLevel.MEAN).model());
    this.envelope = new Envelope(inquiry, cuts);
    this.laterals = new LateralOfParts(inquiry);
    this.lengths = new BucklingLengths(inquiry, racking, envelope.sharesOfLegs());
  }

  /** Two checks for each part, and four for the top. */
  public static List<CheckResult> all(Inquiry inquiry, List<Racking> racking) {
    return new MemberStrength(inquiry, racking).all();
  }

  /** Parts that are checked as one: each by itself, the strips of the top by their direction. */
  Map<String, List<Integer>> groups() {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < cuts.size(); i++) {
      groups.computeIfAbsent(groupOf(cuts.get(i).part()), g -> new ArrayList<>()).add(i);
    }
    return groups;
  }

  private List<CheckResult> all() {
    List<CheckResult> out = new ArrayList<>();
    groups()
        .forEach(
            (name, members) -> {
              out.add(check(name, members, true));
              out.add(check(name, members, false));
            });
    return out;
  }

  static String groupOf(Part part) {
    if (part.kind() != PartKind.TOP) {
      return part.name();
    }
    return isAcross(part) ? "top, across" : "top, along";
  }

  private static boolean isAcross(Part part) {
    return part.name().startsWith("top strip across");
  }

  /** Where and under what a group is used most. */
  record Worst(int cut, int mix, double use) {}

  private CheckResult check(String group, List<Integer> members, boolean bending) {
    Part part = cuts.get(members.get(0)).part();
    String kind = bending ? "bending" : "shear";
    String key = kind + "-" + group.replace(",", "").replace(' ', '-');
    Wood wood = wood(part);
    String missing = missing(wood.name(), isTop(part) && isAcross(part));
    if (!missing.isEmpty()) {
      return new CheckResult.NotChecked(key, title(part, bending), group, Topic.MEMBER, missing);
    }
    Worst worst = worst(members, bending);
    return new MemberFinding(inquiry, this, cuts.get(worst.cut()), envelope.mix(worst.mix()))
        .make(key, title(part, bending), group, wood, bending);
  }

  /** The greatest use among some cuts; what cannot govern is passed over. */
  Worst worst(List<Integer> members, boolean bending) {
    Map<DurationClass, Stresses> byDuration = new EnumMap<>(DurationClass.class);
    Wood wood = wood(cuts.get(members.get(0)).part());
    Worst worst = null;
    for (int cut : members) {
      Part part = cuts.get(cut).part();
      Greatest greatest = bending ? Greatest.ofBending() : Greatest.ofShear();
      for (int mix = 0; mix < envelope.size(); mix++) {
        DurationClass duration = envelope.mix(mix).duration();
        if (greatest.mayGovern(duration, envelope.forces(mix, cut))) {
          Stresses s =
              byDuration.computeIfAbsent(
                  duration, d -> stresses(part, wood.name(), d, Pad.blank()));
          double use = use(cut, mix, bending, s, wood);
          if (worst == null || use > worst.use()) {
            worst = new Worst(cut, mix, use);
          }
        }
      }
    }
    return worst;
  }

  /** The use of one cut under one combination. */
  double use(int cut, int mix, boolean bending, Stresses strengths, Wood wood) {
    double[] f = scaled(envelope.forces(mix, cut), wood.factor());
    return bending
        ? strengths.bending(cuts.get(cut), f, Pad.blank())
        : strengths.shear(cuts.get(cut), f, Pad.blank());
  }

  List<Cut> cuts() {
    return cuts;
  }

  Envelope envelope() {
    return envelope;
  }

  private static boolean isTop(Part part) {
    return part.kind() == PartKind.TOP;
  }

  private static String title(Part part, boolean bending) {
    if (!bending) {
      return "Shear";
    }
    return isTop(part) ? "Bending" : "Bending with axial force and buckling";
  }

  /** A wood and by how much its stress exceeds that of a solid piece. */
  record Wood(String name, double factor) {}

  /** The wood that is used most: of a top in layers, the layer nearest to its strength. */
  Wood wood(Part part) {
    if (!isTop(part)) {
      return new Wood(part.wood(), 1);
    }
    Grain way = isAcross(part) ? Grain.ACROSS : Grain.ALONG;
    Wood worst = null;
    double most = -1;
    for (LayerStress layer : LayerStress.of(inquiry, way)) {
      boolean across = layer.layer().grain() != way;
      OptionalDouble strength =
          inquiry
              .strengths()
              .value(
                  layer.layer().wood(),
                  DurationClass.SHORT,
                  across ? DesignQuantity.BENDING_ACROSS : DesignQuantity.BENDING);
      double use =
          strength.isPresent() ? layer.factor() / strength.getAsDouble() : Double.MAX_VALUE;
      if (use > most) {
        most = use;
        worst = new Wood(layer.layer().wood(), layer.factor());
      }
    }
    return worst;
  }

  private String missing(String wood, boolean across) {
    DesignQuantity bending = across ? DesignQuantity.BENDING_ACROSS : DesignQuantity.BENDING;
    return MissingValues.of(
        inquiry,
        wood,
        List.of(
            bending,
            DesignQuantity.TENSION_PARALLEL,
            DesignQuantity.COMPRESSION_PARALLEL,
            DesignQuantity.SHEAR,
            DesignQuantity.MODULUS_LOW));
  }

  static double[] scaled(double[] forces, double factor) {
    if (factor == 1) {
      return forces;
    }
    double[] out = forces.clone();
    out[4] *= factor;
    out[5] *= factor;
    return out;
  }

  /** The strengths of a part under a duration, written on a pad. */
  Stresses stresses(Part part, String wood, DurationClass duration, Pad pad) {
    Strengths s = inquiry.strengths();
    DesignQuantity bending =
        bentAcross(part, wood) ? DesignQuantity.BENDING_ACROSS : DesignQuantity.BENDING;
    DesignQuantity shear = shearOf(part, wood);
    double fm = value(s, wood, duration, bending, pad);
    return new Stresses(
        inquiry.bench().basis(),
        fm,
        value(s, wood, duration, DesignQuantity.TENSION_PARALLEL, Pad.blank()),
        value(s, wood, duration, DesignQuantity.COMPRESSION_PARALLEL, Pad.blank()),
        value(s, wood, duration, shear, Pad.blank()),
        s.characteristicCompression(wood)
            .orElseGet(
                () -> value(s, wood, duration, DesignQuantity.COMPRESSION_PARALLEL, Pad.blank())),
        value(s, wood, duration, DesignQuantity.MODULUS_LOW, Pad.blank()),
        inquiry.bench().basis() == BasisChoice.PARTIAL_FACTORS ? s.crackFactor(wood) : 1,
        lengths.of(part, Way.ALONG, Pad.blank()),
        lengths.of(part, Way.ACROSS, Pad.blank()),
        laterals.of(part, duration, fm, pad));
  }

  /** Whether a strip of the top is bent across the grain of its wood. */
  private boolean bentAcross(Part part, String wood) {
    return isTop(part) && isAcross(part) == grainAlong(wood);
  }

  /** The shear strength that counts for a part. */
  DesignQuantity shearOf(Part part, String wood) {
    return bentAcross(part, wood) ? DesignQuantity.ROLLING_SHEAR : DesignQuantity.SHEAR;
  }

  private boolean grainAlong(String wood) {
    return inquiry.bench().top().layers().stream()
        .filter(l -> l.wood().equals(wood))
        .allMatch(l -> l.grain() == Grain.ALONG);
  }

  private static double value(
      Strengths s, String wood, DurationClass duration, DesignQuantity what, Pad pad) {
    return pad.keepsLines()
        ? s.explain(wood, duration, what, pad).orElseThrow()
        : s.value(wood, duration, what).orElseThrow();
  }

  BucklingLengths lengths() {
    return lengths;
  }
}
