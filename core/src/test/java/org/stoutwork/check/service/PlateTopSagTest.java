package org.stoutwork.check.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stoutwork.action.Action;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.TopGrid;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.PlatedTop;
import org.stoutwork.check.Stand;
import org.stoutwork.check.TopModels;
import org.stoutwork.quantity.Length;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.StiffnessRange;

class PlateTopSagTest {

  private static Length mm(double value) {
    return Benches.mm(value);
  }

  /** Benches that sag in different places: in the bay, on an end, across, between three frames. */
  private static List<BenchSketch> benches() {
    return List.of(
        Benches.ordinary(),
        Benches.ordinary().top(t -> t.thickness(mm(31))),
        Benches.ordinary().top(t -> t.grain(Grain.ACROSS).thickness(mm(48))),
        BenchSketch.named("two layers")
            .wood("beech-european")
            .top(
                t ->
                    t.length(mm(1810))
                        .width(mm(690))
                        .layer(l -> l.thickness(mm(22)).grain(Grain.ALONG))
                        .layer(l -> l.thickness(mm(19)).grain(Grain.ACROSS))
                        .hold(new LayerHold.Screwed(mm(5), mm(160), 4)))
            .endFrame(f -> f.at(mm(290)))
            .endFrame(f -> f.at(mm(1570))),
        BenchSketch.named("long bay, short ends")
            .wood("C24")
            .top(t -> t.length(mm(2090)).width(mm(560)).thickness(mm(66)))
            .endFrame(f -> f.at(mm(190)))
            .endFrame(f -> f.at(mm(1930))),
        BenchSketch.named("wide, three frames")
            .wood("C24")
            .top(t -> t.length(mm(2890)).width(mm(980)).thickness(mm(40)))
            .endFrame(f -> f.at(mm(160)))
            .endFrame(f -> f.at(mm(1380)))
            .endFrame(f -> f.at(mm(2710))),
        BenchSketch.named("legs under the edges of a thin top")
            .wood("beech-european")
            .duty(Duty.MACHINE_SUPPORT)
            .top(t -> t.length(mm(1240)).width(mm(830)).thickness(mm(34)))
            .endFrame(f -> f.at(mm(120)))
            .endFrame(f -> f.at(mm(1130)))
            .stretcher(s -> s.line(StretcherLine.FRONT)));
  }

  private static CheckResult.Checked found(Inquiry inquiry, String key) {
    return TopSag.all(inquiry).stream()
        .filter(c -> c.key().equals(key))
        .map(CheckResult.Checked.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** The greatest use of the limit by the plate over every crossing and both directions. */
  private static double exhaustive(Inquiry inquiry) {
    TopGrid grid = inquiry.at(JointLevel.MEAN).model().grid();
    SagLine lines = SagLine.of(inquiry.bench(), grid);
    PlateSag plate = new PlateSag(inquiry.plate().orElseThrow(), lines);
    Action.PointOnTop person = inquiry.plan().first(Action.PointOnTop.class).orElseThrow();
    List<Stand> stands = inquiry.places().everywhere(person);
    double ratio = inquiry.plan().criteria().spanRatio();
    double worst = 0;
    for (int i = 0; i < stands.size(); i++) {
      for (boolean along : new boolean[] {true, false}) {
        int stations = grid.stations().size();
        SagSpot spot = new SagSpot(stands.get(i), i / stations, i % stations, along, 0);
        if (!lines.onSupport(spot)) {
          double use = plate.atOnce(JointLevel.MEAN, spot) * ratio / lines.span(spot);
          worst = Math.max(worst, use);
        }
      }
    }
    return worst;
  }

  @Test
  void no_place_is_worse_for_the_plate_than_the_one_found() {
    for (BenchSketch sketch : benches()) {
      Bench bench = Benches.complete(sketch);
      Inquiry inquiry = new Inquiry(bench, Benches.TABLES);
      double found = found(inquiry, "top-sag-point").range().orElseThrow().mean();
      assertEquals(exhaustive(inquiry), found, 1e-9 * found, bench.name());
    }
  }

  @Test
  void no_place_gives_way_more_under_the_plane_than_the_one_found() {
    for (BenchSketch sketch : benches()) {
      Bench bench = Benches.complete(sketch);
      Inquiry inquiry = new Inquiry(bench, Benches.TABLES);
      for (CheckResult result : Flatness.all(inquiry)) {
        CheckResult.Checked checked = (CheckResult.Checked) result;
        double found = checked.range().orElseThrow().mean();
        double worst = mostGive(inquiry) / inquiry.plan().criteria().flatness();
        assertEquals(worst, found, 1e-9 * found, bench.name());
      }
    }
  }

  private static double mostGive(Inquiry inquiry) {
    PlatedTop plate = inquiry.plate().orElseThrow();
    Action.PlaneOnTop plane = inquiry.plan().first(Action.PlaneOnTop.class).orElseThrow();
    TopGrid grid = inquiry.at(JointLevel.MEAN).model().grid();
    Map<LoadCase, Double> weight = Map.of(plate.loads().permanent(), 1.0);
    double worst = 0;
    for (int i = 0; i < grid.lines().size(); i++) {
      for (int k = 0; k < grid.stations().size(); k++) {
        Map<LoadCase, Double> planed = new LinkedHashMap<>(weight);
        planed.put(plate.loads().unitPatch(i, k), plane.force());
        double before = plate.under(JointLevel.MEAN, weight).at(i, k);
        worst = Math.max(worst, before - plate.under(JointLevel.MEAN, planed).at(i, k));
      }
    }
    return worst;
  }

  @Test
  void the_working_shows_plate_and_grillage_and_their_difference() {
    Inquiry inquiry = new Inquiry(Benches.complete(Benches.ordinary()), Benches.TABLES);
    for (CheckResult result : TopSag.all(inquiry)) {
      CheckResult.Checked checked = (CheckResult.Checked) result;
      String lines = checked.working().lines().toString();
      assertTrue(lines.contains("w_{grid}"), checked.key());
      assertTrue(lines.contains("Δ"), checked.key());
      assertTrue(lines.contains("two meshes that differ by"), checked.key());
    }
  }

  @Test
  void both_models_of_an_ordinary_top_agree_in_size() {
    Bench bench = Benches.complete(Benches.ordinary());
    Inquiry both = new Inquiry(bench, Benches.TABLES);
    Inquiry strips = new Inquiry(bench, Benches.TABLES, TopModels.GRILLAGE);
    assertTrue(strips.plate().isEmpty());
    for (String key : List.of("top-sag-point", "top-sag-spread", "top-level")) {
      double byPlate = found(both, key).utilisation();
      double byStrips = found(strips, key).utilisation();
      assertEquals(byStrips, byPlate, 0.15 * byStrips, key);
      assertTrue(byPlate != byStrips, key);
    }
  }

  @Test
  void softer_joints_do_not_stiffen_the_top() {
    for (BenchSketch sketch : benches()) {
      Bench bench = Benches.complete(sketch);
      Inquiry inquiry = new Inquiry(bench, Benches.TABLES);
      StiffnessRange range = found(inquiry, "top-sag-point").range().orElseThrow();
      assertTrue(range.low() >= range.high() * (1 - 1e-9), bench.name());
    }
  }

  @Test
  void the_self_check_counts_the_plate() {
    Bench bench = Benches.complete(Benches.ordinary());
    Inquiry both = new Inquiry(bench, Benches.TABLES);
    Inquiry strips = new Inquiry(bench, Benches.TABLES, TopModels.GRILLAGE);
    TopSag.all(both);
    TopSag.all(strips);
    assertTrue(both.selfCheck().analyses() > strips.selfCheck().analyses());
    assertTrue(both.selfCheck().equilibriumError() < 1e-9);
    assertTrue(both.selfCheck().residual() < 1e-9);
    assertTrue(both.selfCheck().reciprocityError() < 1e-9);
    assertTrue(both.selfCheck().residual() >= strips.selfCheck().residual());
    assertTrue(both.selfCheck().reciprocityError() >= strips.selfCheck().reciprocityError());
  }
}
