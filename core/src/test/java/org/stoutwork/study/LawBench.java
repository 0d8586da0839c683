package org.stoutwork.study;

import static org.stoutwork.assembly.Benches.mm;

import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Mass;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;
import org.stoutwork.wood.time.DurationClass;

/** A bench with unequal numbers, one of which a law changes, and ways to read its result. */
final class LawBench {

  static final BenchCheck CHECK = BenchCheck.load();

  String wood = "beech-european";
  double thickness = 62;
  double left = 270;
  double right = 1490;
  double frontInset = 18;
  double backInset = 33;
  double width = 640;
  double stretcherDepth = 118;
  double stretcherThickness = 42;
  double tenonThickness = 14;
  double thrust = 250;
  double viseMass = 0;
  boolean backFirst = false;
  JointKind stretcherJoint = JointKind.MORTISE_AND_TENON;
  JointHold hold = JointHold.GLUED;
  DurationClass standing = DurationClass.SHORT;

  BenchSketch sketch() {
    BenchSketch out =
        BenchSketch.named("bench of a law")
            .height(mm(845))
            .wood(wood)
            .top(t -> t.length(mm(right + 240)).width(mm(width)).thickness(mm(thickness)))
            .everyEndFrame(
                f ->
                    f.legs(
                            l ->
                                l.along(mm(92))
                                    .across(mm(76))
                                    .frontInset(mm(frontInset))
                                    .backInset(mm(backInset)))
                        .topRail(r -> r.depth(mm(104)).thickness(mm(44)))
                        .bottomRail(r -> r.depth(mm(88)).thickness(mm(41)).bottomEdgeAt(mm(110))))
            .endFrame(f -> f.at(mm(left)))
            .endFrame(f -> f.at(mm(right)))
            .action(
                a ->
                    a.kind(ActionKind.THRUST_ALONG)
                        .name("push along")
                        .force(Force.ofNewtons(thrust))
                        .duration(DurationClass.SHORT))
            .action(
                a ->
                    a.kind(ActionKind.POINT_ON_TOP)
                        .name("load on the top")
                        .force(Force.ofNewtons(1130))
                        .duration(standing));
    if (viseMass > 0) {
      out.vise(
          v ->
              v.name("front vise")
                  .edge(org.stoutwork.bench.Edge.FRONT)
                  .at(mm(420))
                  .outreach(mm(230))
                  .mass(Mass.ofKg(viseMass)));
    }
    stretcher(out, backFirst ? StretcherLine.BACK : StretcherLine.FRONT);
    stretcher(out, backFirst ? StretcherLine.FRONT : StretcherLine.BACK);
    return out;
  }

  private void stretcher(BenchSketch out, StretcherLine line) {
    out.stretcher(
        s ->
            s.line(line)
                .depth(mm(stretcherDepth))
                .thickness(mm(stretcherThickness))
                .centreAt(mm(215))
                .joint(
                    j -> {
                      j.kind(stretcherJoint);
                      if (stretcherJoint == JointKind.MORTISE_AND_TENON) {
                        j.hold(hold)
                            .tenonThickness(mm(tenonThickness))
                            .tenonHeight(mm(90))
                            .tenonLength(mm(51));
                      }
                    }));
  }

  BenchResult run() {
    return run(sketch());
  }

  static BenchResult run(BenchSketch sketch) {
    try {
      return CHECK.run(sketch);
    } catch (UnsoundBench e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  static BenchResult ordinary() {
    return run(Benches.ordinary());
  }

  /** The check whose key begins so and that is used most. */
  static CheckResult.Checked check(BenchResult result, String key) {
    return result.checked().stream()
        .filter(c -> c.key().startsWith(key))
        .reduce((a, b) -> b.utilisation() > a.utilisation() ? b : a)
        .orElseThrow(
            () ->
                new AssertionError(
                    key
                        + " is none of "
                        + result.checks().stream().map(CheckResult::key).toList()));
  }

  /** Its utilisation with the joints at their mean. */
  static double use(BenchResult result, String key) {
    CheckResult.Checked check = check(result, key);
    return check.range().map(StiffnessRange::mean).orElse(check.utilisation());
  }
}
