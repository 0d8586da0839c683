package org.stoutwork.report.figure.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.quantity.Length;
import org.stoutwork.wood.catalogue.WoodCatalogue;

class JointUsesTest {

  private static Length mm(double value) {
    return Length.ofMm(value);
  }

  private static Bench bench(int frames, boolean sled) throws UnsoundBench {
    BenchSketch sketch =
        BenchSketch.named("trial")
            .wood("beech, European")
            .height(mm(870))
            .top(t -> t.length(mm(2700)).width(mm(640)).thickness(mm(62)));
    for (int i = 0; i < frames; i++) {
      double at = 330 + i * 1020;
      sketch.endFrame(
          f -> {
            f.at(mm(at));
            if (sled) {
              f.topRail(r -> r.seat(Seat.OVER).depth(mm(110)).length(mm(600)));
              f.withoutBottomRail(true);
              f.foot(o -> o.depth(mm(88)).length(mm(610)));
            }
          });
    }
    for (StretcherLine line : new StretcherLine[] {StretcherLine.FRONT, StretcherLine.BACK}) {
      sketch.stretcher(
          s -> s.name(line.words() + " stretcher").line(line).depth(mm(95)).centreAt(mm(230)));
    }
    return sketch.complete(WoodCatalogue.load());
  }

  @Test
  void alike_joints_are_one_use_with_all_their_places() throws UnsoundBench {
    List<JointUse> uses = JointUses.of(bench(2, false));
    assertEquals(12, uses.stream().mapToInt(JointUse::count).sum());
    JointUse top = uses.get(0);
    assertEquals(List.of("left top rail", "right top rail"), top.rails());
    assertEquals(4, top.count());
    assertEquals("leg", top.post());
    assertEquals(0, top.place().above(), 1e-9);
    JointUse along = uses.get(uses.size() - 1);
    assertEquals(List.of("front stretcher", "back stretcher"), along.rails());
    assertEquals(230 - 95 / 2.0, along.place().below(), 1e-9);
  }

  @Test
  void every_bay_counts_its_own_joints() throws UnsoundBench {
    List<JointUse> uses = JointUses.of(bench(3, false));
    assertEquals(6 + 6 + 8, uses.stream().mapToInt(JointUse::count).sum());
    assertTrue(uses.stream().anyMatch(u -> u.rails().contains("front stretcher, bay\u00a02")));
  }

  @Test
  void legs_end_in_a_sled_and_in_a_rail_that_lies_over_them() throws UnsoundBench {
    List<JointUse> uses = JointUses.of(bench(2, true));
    assertEquals(List.of("top rail", "foot", "leg"), uses.stream().map(JointUse::post).toList());
    assertEquals(Place.Run.TURNED, uses.get(0).place().run());
    assertEquals(110, uses.get(0).place().members().postDepth(), 1e-9);
    assertEquals(88, uses.get(1).place().members().postDepth(), 1e-9);
    assertEquals(List.of("left legs", "right legs"), uses.get(1).rails());
    assertEquals(4, uses.get(1).count());
  }
}
