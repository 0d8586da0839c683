package org.stoutwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.result.StiffnessRange;

/** Benches whose only stretcher leaves them loose, at the softest or altogether. */
class LooseAtSoftestTest {

  private static Bench on(JointKind kind, JointHold hold, StretcherLine... lines) {
    BenchSketch sketch = Benches.ordinary();
    for (StretcherLine line : lines) {
      sketch.stretcher(
          s ->
              s.line(line)
                  .centreAt(mm(line == StretcherLine.MIDDLE ? 154 : 287))
                  .depth(mm(88))
                  .thickness(mm(41))
                  .joint(j -> j.kind(kind).hold(hold)));
    }
    return Benches.complete(sketch);
  }

  private static Bench wedgedInTheMiddle() {
    return on(JointKind.LOOSE_WEDGE, JointHold.DRY, StretcherLine.MIDDLE);
  }

  @Test
  void a_bench_that_is_loose_only_at_the_softest_is_examined() {
    Inquiry inquiry = new Inquiry(wedgedInTheMiddle(), Benches.TABLES);
    assertTrue(inquiry.at(JointLevel.LOW).propped());
    assertFalse(inquiry.at(JointLevel.MEAN).propped());
    assertTrue(inquiry.selfCheck().holds(), inquiry.selfCheck().toString());
  }

  @Test
  void what_hangs_on_the_props_has_no_limit_and_what_does_not_keeps_its_value() {
    Inquiry inquiry = new Inquiry(wedgedInTheMiddle(), Benches.TABLES);
    StiffnessRange hanging = inquiry.range(level -> level.level() == JointLevel.LOW ? 1900 : 0.7);
    assertEquals(Double.POSITIVE_INFINITY, hanging.low());
    StiffnessRange other = inquiry.range(level -> level.level() == JointLevel.LOW ? 1.9 : 0.7);
    assertEquals(1.9, other.low());
  }

  @Test
  void a_bench_that_is_loose_at_the_mean_is_refused_by_the_name_of_its_part() {
    Bench bench = on(JointKind.BRIDLE, JointHold.DRY, StretcherLine.FRONT, StretcherLine.BACK);
    LooseBench loose = assertThrows(LooseBench.class, () -> new Inquiry(bench, Benches.TABLES));
    assertTrue(loose.getMessage().contains(loose.part()), loose.getMessage());
    assertTrue(loose.part().contains("leg"), loose.part());
    assertFalse(loose.getMessage().contains(" at 0"), loose.getMessage());
    assertTrue(loose.getMessage().contains("along the bench"), loose.getMessage());
  }
}
