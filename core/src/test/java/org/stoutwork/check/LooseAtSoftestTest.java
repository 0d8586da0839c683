package org.stoutwork.check;

import static org.stoutwork.assembly.Benches.mm;

import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.JointHold;
import org.stoutwork.bench.sketch.JointKind;

class LooseAtSoftestTest {
  @Test
  void probe() {
    for (JointKind kind : JointKind.values()) {
      for (JointHold hold :
          new JointHold[] {JointHold.DRY, JointHold.DRAWBORED, JointHold.WEDGED, null}) {
        BenchSketch s = Benches.ordinary();
        s.stretcher(
            x ->
                x.line(StretcherLine.MIDDLE)
                    .centreAt(mm(154))
                    .depth(mm(88))
                    .thickness(mm(41))
                    .joint(
                        j -> {
                          j.kind(kind);
                          if (hold != null) j.hold(hold);
                        }));
        try {
          Inquiry q = new Inquiry(s.complete(Benches.WOODS), Benches.TABLES);
          System.out.println(
              "PROBE "
                  + kind
                  + " "
                  + hold
                  + " "
                  + q.at(JointLevel.LOW).propped()
                  + " "
                  + q.selfCheck());
        } catch (org.stoutwork.bench.sketch.UnsoundBench | RuntimeException e) {
          System.out.println("PROBE " + kind + " " + hold + " " + e.toString().replace('\n', ' '));
        }
      }
    }
  }
}
