package org.stoutwork.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Seat;
import org.stoutwork.bench.sketch.BenchSketch;

/** Places on feet and rails that all but coincide. */
class PlacesTest {

  @Test
  void what_must_be_met_stays_and_what_is_near_it_is_merged() {
    assertEquals(
        List.of(41.0, 95.4, 96.4, 640.2),
        Places.merged(List.of(95.4, 640.2), List.of(95.1, 641.1, 96.4, 41.0, 41.7)));
    assertEquals(List.of(95.4), Places.inside(40, 96.9, List.of(95.4), List.of(96.1, 41.0, 96.4)));
    assertEquals(95.4, Places.nearest(List.of(12.0, 95.4, 640.2), 95.1), 0);
  }

  private static BenchModel model(BenchSketch sketch) {
    Bench bench = Benches.complete(sketch);
    return BenchModel.of(
        bench, Timbers.of(bench, Benches.TABLES)::get, JointLevel.MEAN, FloorContact.HELD);
  }

  @Test
  void a_pad_whose_middle_is_all_but_under_its_leg_stands_under_it() {
    BenchModel model =
        model(
            BenchSketch.named("narrow feet")
                .wood("beech-european")
                .top(t -> t.width(mm(791.3)))
                .everyEndFrame(
                    f -> f.legs(l -> l.across(mm(101.4)).frontInset(mm(44.7))).foot(foot -> {})));
    double leg = 44.7 + 101.4 / 2;
    List<String> feet = model.feet().stream().filter(f -> f.startsWith("left foot")).toList();
    assertEquals(2, feet.size(), feet.toString());
    Vec3 front = model.frame().nodes().get(feet.get(0));
    assertEquals(leg, front.y(), 1e-12);
  }

  /** Legs of the two frames 0.4 mm apart across the bench, under rails that lie over them. */
  @Test
  void lines_of_another_frame_all_but_over_a_leg_are_one_with_it() {
    BenchModel model =
        model(
            BenchSketch.named("uneven frames")
                .wood("beech-european")
                .top(t -> t.length(mm(1730)).width(mm(640)))
                .everyEndFrame(f -> f.legs(l -> l.across(mm(76))).topRail(r -> r.seat(Seat.OVER)))
                .endFrame(f -> f.at(mm(270)).legs(l -> l.frontInset(mm(18.4))))
                .endFrame(f -> f.at(mm(1490)).legs(l -> l.frontInset(mm(18)))));
    assertTrue(model.frame().nodes().containsKey("left top rail at 56"));
    assertTrue(model.frame().nodes().containsKey("right top rail at 56"));
  }
}
