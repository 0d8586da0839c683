package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.ScrewRow;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.fastener.ScrewHole;

/**
 * The holes in the top rails of the ordinary bench: rails 44 mm thick and 437 mm long between legs
 * of 76 mm, so three screws stand 145.67 mm apart.
 */
class TopHolesTest {

  private static BenchSketch bench(Consumer<FixingSketch> words) {
    return Benches.ordinary().top(t -> t.fixing(f -> words.accept(f.screwDiameter(mm(6)))));
  }

  private static TopFixing fixing(Consumer<FixingSketch> words) {
    return Benches.complete(bench(words)).top().fixing();
  }

  private static void refused(String line, Consumer<FixingSketch> words) {
    UnsoundBench refused =
        assertThrows(UnsoundBench.class, () -> bench(words).complete(Benches.WOODS));
    assertEquals(
        List.of(line),
        refused.faults().stream().map(f -> f.line().replace('\u00a0', ' ')).toList());
  }

  @Test
  void round_holes_and_slots_are_told_apart() {
    assertEquals(ScrewHole.round(9.5), fixing(f -> f.holeDiameter(mm(9.5))).hole());
    TopFixing slot = fixing(f -> f.slotWidth(mm(7)).slotLength(mm(13)));
    assertEquals(new ScrewHole(7, 13), slot.hole());
    assertEquals(1, slot.tightAlong());
    assertEquals(1, slot.tightAcross());
    TopFixing guided = fixing(f -> f.slotLength(mm(13)));
    assertEquals(new ScrewHole(6, 13), guided.hole());
    assertEquals(3, guided.tightAlong());
    assertEquals(1, guided.tightAcross());
    assertEquals(3, fixing(f -> f.holeDiameter(mm(6))).tightAcross());
  }

  @Test
  void a_hole_the_screw_does_not_enter_or_its_head_slips_through_is_refused() {
    refused(
        "top.fixing.holeDiameter is 5.5 mm; at least 6 mm, or the screw does not go in.",
        f -> f.holeDiameter(mm(5.5)));
    refused(
        "top.fixing.slotWidth is 5.5 mm; at least 6 mm, or the screw does not go in.",
        f -> f.slotWidth(mm(5.5)).slotLength(mm(12)));
    refused(
        "top.fixing.holeDiameter is 15 mm; less than the washer of 15 mm, which pulls through"
            + " otherwise; take a wider one, or a slot no wider than the screw.",
        f -> f.holeDiameter(mm(15)).washerDiameter(mm(15)));
    refused(
        "top.fixing.slotWidth is 12.5 mm; less than the head of 12 mm, which pulls through"
            + " otherwise; take a wider one, or a slot no wider than the screw.",
        f -> f.slotWidth(mm(12.5)).slotLength(mm(15)).screw(FixingScrew.WOOD_SCREW));
  }

  @Test
  void a_slot_shorter_than_wide_and_a_slot_beside_a_hole_are_refused() {
    refused(
        "top.fixing.slotLength is 8 mm; at least its width of 9 mm; a round hole is given by"
            + " holeDiameter.",
        f -> f.slotWidth(mm(9)).slotLength(mm(8)));
    refused(
        "top.fixing.holeDiameter is 9 mm beside a slot; round holes have holeDiameter, slots have"
            + " slotWidth and slotLength; leave one out.",
        f -> f.holeDiameter(mm(9)).slotLength(mm(14)));
  }

  @Test
  void a_hole_takes_no_more_than_the_rail_can_spare() {
    refused(
        "top.fixing.holeDiameter is 22.5 mm; at most 22 mm, half of the top rail's thickness, so"
            + " that a quarter is left on either side.",
        f -> f.holeDiameter(mm(22.5)).washerDiameter(mm(30)));
    assertEquals(22, fixing(f -> f.holeDiameter(mm(22)).washerDiameter(mm(30))).hole().width());
    refused(
        "top.fixing.slotLength is 73 mm; at most 72.8 mm, half of the distance between 3 screws in"
            + " the rail, so that wood is left between their holes.",
        f -> f.slotLength(mm(73)));
    assertEquals(72.8, fixing(f -> f.slotLength(mm(72.8))).hole().length());
    refused(
        "top.fixing.slotWidth is 12 mm; at most 10.9 mm, half of the distance between 20 screws in"
            + " the rail, so that wood is left between their holes.",
        f -> f.slotWidth(mm(12)).perRail(20));
  }

  @Test
  void the_held_screw_is_the_middle_one_or_the_foremost() {
    assertEquals(TopHeld.MIDDLE, fixing(f -> f.perRail(5)).held());
    assertEquals(TopHeld.FRONT, fixing(f -> f.perRail(4)).held());
    assertEquals(TopHeld.FRONT, fixing(f -> f.perRail(5).heldAt(TopHeld.FRONT)).held());
    refused(
        "top.fixing.heldAt is middle, with 4 screws a rail; an even number has none in the middle:"
            + " say front or nowhere, or take one screw more.",
        f -> f.perRail(4).heldAt(TopHeld.MIDDLE));
    TopFixing loose = fixing(f -> f.heldAt(TopHeld.NOWHERE).slotWidth(mm(7)).slotLength(mm(15)));
    assertEquals(0, loose.tightAcross());
    assertEquals(4.5, loose.play());
    assertEquals(0.5, fixing(f -> f.perRail(1).holeDiameter(mm(7))).play());
    assertEquals(0, fixing(f -> f.perRail(3).holeDiameter(mm(9))).play());
  }

  @Test
  void one_screw_alone_fits_its_hole_unless_another_is_given() {
    TopFixing one = fixing(f -> f.perRail(1));
    assertEquals(ScrewHole.round(6), one.hole());
    assertEquals(1, one.tightAcross());
    assertEquals(TopHeld.NOWHERE, fixing(f -> f.perRail(1).slotLength(mm(11))).held());
  }

  @Test
  void a_room_too_wet_to_be_is_refused_before_slots_are_made_for_it() {
    BenchSketch wet = Benches.ordinary().air(a -> a.moistureAtAssembly(41.5));
    assertThrows(UnsoundBench.class, () -> wet.complete(Benches.WOODS));
  }

  @Test
  void the_usual_slot_says_why_it_is_as_long() {
    var beech = Benches.complete(bench(f -> {}));
    assertTrue(reason(beech, "slotLength").startsWith("the top moves: "));
    var wet = Benches.ordinary().air(a -> a.moistureAtAssembly(27.0).driest(3).wettest(28));
    var much = Benches.complete(wet.top(t -> t.fixing(f -> f.screwDiameter(mm(6)).perRail(19))));
    assertEquals(11, much.top().fixing().hole().length());
    assertTrue(reason(much, "slotLength").endsWith("more than the rail can spare"));
    var classed = Benches.complete(bench(f -> {}).wood("D40"));
    assertEquals(14, classed.top().fixing().hole().length());
    var sheet = Benches.complete(bench(f -> {}).top(t -> t.wood("plywood-birch-24")));
    assertEquals(10, sheet.top().fixing().hole().length());
  }

  private static String reason(Bench bench, String key) {
    return bench.defaults().stream()
        .filter(d -> d.key().equals("top.fixing." + key))
        .findFirst()
        .orElseThrow()
        .reason();
  }

  @Test
  void screws_stand_half_a_pitch_from_the_ends_of_their_rail() {
    var bench = Benches.complete(bench(f -> {}));
    ScrewRow row = ScrewRow.of(bench, bench.endFrames().get(1));
    double pitch = (640.0 - 18 - 33 - 2 * 76) / 3;
    assertEquals(pitch, row.pitch(), 1e-9);
    assertEquals(18 + 76 + pitch / 2, row.place(0), 1e-9);
    assertEquals(18 + 76 + 1.5 * pitch, row.still(TopHeld.MIDDLE), 1e-9);
    assertEquals(pitch, row.reach(TopHeld.MIDDLE), 1e-9);
    assertEquals(2 * pitch, row.reach(TopHeld.FRONT), 1e-9);
    assertEquals(row.reach(TopHeld.MIDDLE), row.reach(TopHeld.NOWHERE), 1e-9);
  }
}
