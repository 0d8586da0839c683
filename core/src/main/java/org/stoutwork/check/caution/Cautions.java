package org.stoutwork.check.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.BenchJoint;
import org.stoutwork.bench.Foot;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Layout;
import org.stoutwork.bench.Rail;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.Weight;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.result.Caution;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.result.Verdict;

/** Chooses the cautions of a sheet, the gravest first. */
public final class Cautions {

  private static final double CLOSE_FROM = 0.95;
  private static final double HEAVY_FOR_TWO_KG = 40;
  private static final double FAR_OUT_MM = 300;
  private static final double STIFFNESS_MATTERS = 0.5;
  private static final double SHOWN_APART = 0.005;
  private static final int NAMED_FAILURES = 3;

  private final Bench bench;
  private final List<CheckResult.Checked> checks;
  private final double massKg;
  private final double kDef;
  private final List<String> gluePoorly;
  private final List<Caution> out = new ArrayList<>();

  private Cautions(
      Bench bench, List<CheckResult> checks, double massKg, double kDef, List<String> gluePoorly) {
    this.bench = bench;
    this.checks =
        checks.stream()
            .filter(CheckResult.Checked.class::isInstance)
            .map(CheckResult.Checked.class::cast)
            .toList();
    this.massKg = massKg;
    this.kDef = kDef;
    this.gluePoorly = gluePoorly;
  }

  /**
   * The cautions for a bench and what its checks found.
   *
   * @param bench that was checked
   * @param checks what was found
   * @param massKg of the bench with vises and machines
   * @param kDef creep factor of its top
   * @param gluePoorly names of its woods that are glued and bond with difficulty
   */
  public static List<Caution> of(
      Bench bench, List<CheckResult> checks, double massKg, double kDef, List<String> gluePoorly) {
    Cautions cautions = new Cautions(bench, checks, massKg, kDef, gluePoorly);
    cautions.collect();
    return cautions.out.stream().sorted(Comparator.comparing(Caution::severity)).toList();
  }

  private void collect() {
    aboutResults();
    aboutWood();
    aboutJoints();
    aboutUse();
    out.add(CautionText.assumptions());
    when(bench.people().checked().isBlank(), CautionText.notCheckedByAnother());
    when(!bench.defaults().isEmpty(), CautionText.defaults());
    out.add(CautionText.method());
    out.add(CautionText.unevenFloor());
  }

  private void when(boolean fired, Caution caution) {
    if (fired) {
      out.add(caution);
    }
  }

  private void aboutResults() {
    List<CheckResult.Checked> failing =
        checks.stream().filter(c -> c.verdict() == Verdict.INADEQUATE).toList();
    if (!failing.isEmpty()) {
      List<String> kinds =
          failing.stream()
              .sorted(Comparator.comparingDouble(CheckResult.Checked::utilisation).reversed())
              .map(c -> c.title().substring(0, 1).toLowerCase(Locale.ROOT) + c.title().substring(1))
              .distinct()
              .toList();
      String named = kinds.stream().limit(NAMED_FAILURES).collect(Collectors.joining("; "));
      int rest = kinds.size() - NAMED_FAILURES;
      out.add(CautionText.fails(rest > 0 ? named + "; and %s more".formatted(rest) : named));
    }
    checks.stream()
        .filter(c -> c.utilisation() >= CLOSE_FROM && c.utilisation() <= 1)
        .findFirst()
        .ifPresent(c -> out.add(CautionText.close(c.title())));
    Optional<CheckResult.Checked> worst =
        checks.stream().max(Comparator.comparingDouble(CheckResult.Checked::utilisation));
    worst
        .filter(c -> c.working().weakestMark().wantsLookingUp())
        .ifPresent(c -> out.add(CautionText.fromMemory(c.title())));
  }

  private void aboutWood() {
    boolean clear = bench.basis() == BasisChoice.CLEAR_WOOD;
    when(clear, CautionText.clearWood());
    boolean bent =
        checks.stream().anyMatch(c -> c.topic() == Topic.MEMBER && c.utilisation() > 0.3);
    when(clear && bent, CautionText.knots());
    when(clear, CautionText.slope());
    when(uses("top-movement", 1), CautionText.movement());
    when(unheld(), CautionText.unheld(bench.top().fixing().play()));
    boolean permanent = bench.weights().stream().anyMatch(w -> !(w instanceof Weight.OnTop));
    when(permanent, CautionText.creep(1 + kDef));
    out.add(CautionText.dust());
  }

  /** Whether neither a screw without play nor a stretcher holds the top in its place. */
  private boolean unheld() {
    boolean held =
        bench.stretchers().stream()
            .anyMatch(s -> Layout.touchesTop(bench, s) && !(s.hold() instanceof LayerHold.Loose));
    return !held && bench.top().fixing().play() > 0;
  }

  private boolean uses(String key, double above) {
    return checks.stream().anyMatch(c -> c.key().equals(key) && c.utilisation() > above);
  }

  private void aboutJoints() {
    when(joints().anyMatch(j -> j.joint().title().contains("glued")), CautionText.glue());
    when(!gluePoorly.isEmpty(), CautionText.gluesPoorly(String.join("; ", gluePoorly)));
    when(joints().anyMatch(j -> j.joint() instanceof BoltedTenon), CautionText.bolts());
    checks.stream()
        .filter(c -> c.topic() == Topic.SWAY && c.range().isPresent())
        .filter(c -> c.utilisation() > STIFFNESS_MATTERS)
        .filter(c -> c.range().get().largest() - c.range().get().smallest() > SHOWN_APART)
        .max(Comparator.comparingDouble(CheckResult.Checked::utilisation))
        .ifPresent(
            c ->
                out.add(CautionText.jointStiffness(c.range().get().low(), c.range().get().high())));
  }

  private Stream<BenchJoint> joints() {
    Stream<BenchJoint> rails =
        bench.endFrames().stream()
            .flatMap(
                f ->
                    Stream.concat(
                        Stream.concat(Stream.of(f.topRail()), f.bottomRail().stream())
                            .map(Rail::joint),
                        f.foot().stream().map(Foot::joint)));
    return Stream.concat(rails, bench.stretchers().stream().map(Stretcher::joint));
  }

  /** What a maker might take away without a thought, although the bench stands by it. */
  private List<String> countedOn() {
    List<String> out = new ArrayList<>();
    if (bench.footing() != Footing.UNKNOWN) {
      out.add(bench.footing().words());
    }
    for (Weight weight : bench.weights()) {
      if (weight instanceof Weight.Machine || weight instanceof Weight.Ballast) {
        out.add(weight.name() + " in its place");
      }
    }
    return out;
  }

  private void aboutUse() {
    boolean tips =
        checks.stream()
            .anyMatch(c -> c.key().startsWith("tipping") && c.verdict() == Verdict.INADEQUATE);
    boolean slides =
        checks.stream()
            .anyMatch(c -> c.key().startsWith("sliding") && c.verdict() == Verdict.INADEQUATE);
    List<String> counted = countedOn();
    when(!counted.isEmpty(), CautionText.countsOn(String.join("; ", counted)));
    when(tips, CautionText.tipping());
    when(slides, CautionText.sliding());
    when(!bench.vises().isEmpty(), CautionText.clamp());
    boolean machine = bench.weights().stream().anyMatch(Weight.Machine.class::isInstance);
    when(machine, CautionText.machine());
    when(massKg > HEAVY_FOR_TWO_KG, CautionText.heavy(massKg));
    when(bench.pupils() > 0, CautionText.school());
    when(
        bench.vises().stream().anyMatch(v -> v.outreach().mm() > FAR_OUT_MM),
        CautionText.outreach());
  }
}
