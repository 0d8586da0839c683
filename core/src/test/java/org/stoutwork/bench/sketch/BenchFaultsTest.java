package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.Benches;
import org.stoutwork.assembly.FloorContact;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Timbers;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.quantity.Length;

/** What a maker is told of a bench that cannot be built. */
class BenchFaultsTest {

  private static List<String> lines(BenchSketch sketch) {
    return assertThrows(UnsoundBench.class, () -> sketch.complete(Benches.WOODS)).faults().stream()
        .map(fault -> fault.line().replace('\u00a0', ' '))
        .distinct()
        .toList();
  }

  private static List<String> withTopRailJoint(Consumer<JointSketch> words) {
    return lines(Benches.ordinary().everyEndFrame(f -> f.topRail(r -> r.joint(words)))).stream()
        .filter(line -> line.startsWith("endFrames[0]"))
        .toList();
  }

  @Test
  void a_size_of_a_joint_is_named_by_its_own_key_with_value_and_limit() {
    assertEquals(
        List.of(
            "endFrames[0].topRail.joint.tenonThickness is 51 mm; at most 44 mm, the thickness of"
                + " the rail."),
        withTopRailJoint(j -> j.tenonThickness(Length.ofMm(51))));
  }

  @Test
  void what_follows_from_a_size_is_put_into_words() {
    assertEquals(
        List.of(
            "endFrames[0].topRail.joint.tenonHeight is such that the tenon height with the"
                + " shoulder below would be 118 mm; at most 104 mm, the depth of the rail."),
        withTopRailJoint(j -> j.tenonHeight(Length.ofMm(93)).shoulderBelow(Length.ofMm(25))));
  }

  @Test
  void a_tenon_too_near_to_an_edge_for_its_shoulder_is_refused_however_it_is_held() {
    // An eighth of 104 is 13, seven eighths are 91.
    for (JointHold hold : List.of(JointHold.GLUED, JointHold.PEGGED, JointHold.DRAWBORED)) {
      assertEquals(
          List.of(
              "endFrames[0].topRail.joint.shoulderBelow is such that the middle of the tenon over"
                  + " the rail's lower edge would be 11.5 mm; at least 13 mm, an eighth of the"
                  + " rail's depth, or the shoulder below has no lever to press with: make"
                  + " tenonHeight or shoulderBelow larger."),
          withTopRailJoint(j -> j.hold(hold).tenonHeight(mm(23)).shoulderBelow(mm(0))));
    }
    assertEquals(
        List.of(
            "endFrames[0].topRail.joint.shoulderBelow is such that the middle of the tenon over"
                + " the rail's lower edge would be 91.5 mm; at most 91 mm, seven eighths of the"
                + " rail's depth, or the shoulder above has no lever to press with: make"
                + " shoulderBelow smaller."),
        withTopRailJoint(j -> j.tenonHeight(mm(23)).shoulderBelow(mm(80))));
  }

  @Test
  void a_default_that_does_not_fit_is_called_a_default() {
    assertEquals(
        List.of(
            "endFrames[0].topRail.joint.pegFromShoulder is 15 mm by default; at most 6 mm, or the"
                + " peg passes beyond the tenon."),
        withTopRailJoint(j -> j.hold(JointHold.PEGGED).tenonLength(Length.ofMm(11))));
  }

  @Test
  void the_spacing_of_bolts_is_compared_as_it_was_given() {
    List<String> lines =
        lines(
            Benches.ordinary()
                .stretcher(
                    s ->
                        s.depth(Length.ofMm(121))
                            .joint(
                                j ->
                                    j.kind(JointKind.BED_BOLT)
                                        .bolts(2)
                                        .boltDiameter(Length.ofMm(12))
                                        .boltSpacing(Length.ofMm(99)))));
    assertEquals(
        List.of(
            "stretchers[0].joint.boltSpacing is 99 mm; at most 97 mm, the depth of the rail less a"
                + " diameter beyond each bolt."),
        lines);
  }

  @Test
  void stretchers_in_one_place_are_told_apart_by_their_names() {
    BenchSketch sketch =
        Benches.ordinary()
            .stretcher(s -> s.name("tool rail").line(StretcherLine.BACK).depth(Length.ofMm(90)))
            .stretcher(s -> s.line(StretcherLine.BACK).depth(Length.ofMm(70)));
    assertEquals(
        List.of(
            "stretchers[1] is in the place of the tool rail; two stretchers on the back line must"
                + " be clear of one another, so move one by 70 mm."),
        lines(sketch));
  }

  private static BenchSketch meeting(double tenon, double stretcherTop) {
    return Benches.ordinary()
        .everyEndFrame(
            f ->
                f.topRail(
                    r -> r.joint(j -> j.tenonThickness(Length.ofMm(tenon)).tenonLength(mm(75)))))
        .stretcher(
            s ->
                s.name("front beam")
                    .thickness(mm(48))
                    .depth(mm(96))
                    .topEdgeAt(mm(stretcherTop))
                    .joint(
                        j ->
                            j.kind(JointKind.MORTISE_AND_TENON)
                                .through(true)
                                .tenonThickness(Length.ofMm(tenon + 2))));
  }

  @Test
  void mortises_that_meet_and_remove_the_leg_are_refused_by_name_with_the_limit() {
    assertEquals(
        List.of(
            "endFrames[0].legs is such that the mortises for the top rail and the front beam meet"
                + " in the front leg at 696 mm above the floor and leave 1724 mm² of its 6992 mm²;"
                + " at least 2098 mm² must stay: make the tenons thinner or shorter, the leg"
                + " thicker, or let one piece stand above the other."),
        lines(meeting(41, 775)).stream().filter(l -> l.startsWith("endFrames[0]")).toList());
  }

  @Test
  void the_same_mortises_one_above_the_other_are_accepted() {
    assertEquals(1, Benches.complete(meeting(41, 660)).stretchers().size());
    assertEquals(1, Benches.complete(meeting(24, 775)).stretchers().size());
  }

  @Test
  void one_mortise_that_removes_the_leg_is_refused_too() {
    List<String> lines =
        lines(
            Benches.ordinary()
                .everyEndFrame(
                    f ->
                        f.legs(l -> l.along(mm(58)))
                            .topRail(
                                r ->
                                    r.thickness(mm(52))
                                        .joint(
                                            j ->
                                                j.through(true)
                                                    .tenonThickness(mm(43))
                                                    .tenonLength(mm(76))))));
    assertEquals(
        "endFrames[0].legs is such that the mortise for the top rail leaves 1140 mm² of the front"
            + " leg's 4408 mm²; at least 1322 mm² must stay: make the tenons thinner or shorter,"
            + " the leg thicker.",
        lines.get(0));
  }

  @Test
  void tenons_of_two_bays_may_not_meet_end_to_end_in_a_middle_leg() {
    BenchSketch three =
        Benches.ordinary()
            .endFrame(f -> f.at(mm(1650)))
            .stretcher(
                s ->
                    s.name("front beam")
                        .joint(j -> j.kind(JointKind.MORTISE_AND_TENON).tenonLength(mm(51))));
    assertEquals(
        List.of(
            "stretchers[0].joint is cut 51 mm deep from both sides of a middle leg that is 92 mm"
                + " thick; at most 46 mm, or the pieces of two bays meet; take a shorter tenon that"
                + " does not go through."),
        lines(three));
  }

  @Test
  void a_name_of_many_woods_lists_some_and_counts_the_rest() {
    String line = lines(Benches.ordinary().wood("oak")).get(0);
    assertTrue(line.startsWith("wood is \"oak\"; it could be any of oak-northern-red,"), line);
    assertTrue(line.endsWith("and 11 more; say which."), line);
  }

  @Test
  void moisture_upside_down_is_said_with_both_values() {
    assertEquals(
        List.of(
            "air.driest is 12.5 % and air.wettest is 8 %; both must lie from 3 % to 30 %, the"
                + " driest below the wettest."),
        lines(Benches.ordinary().air(a -> a.driest(12.5).wettest(8))));
  }

  /** Keys under which a maker can change a joint. */
  private static final Set<String> SIZES =
      Arrays.stream(JointSketch.class.getDeclaredFields())
          .map(Field::getName)
          .collect(Collectors.toSet());

  @Property(tries = 3000)
  void whatever_is_wrong_with_a_joint_names_a_size_that_a_maker_can_change(
      @ForAll JointKind kind,
      @ForAll JointHold hold,
      @ForAll @DoubleRange(min = 0.1, max = 160) double size,
      @ForAll @DoubleRange(min = 0.1, max = 90) double other,
      @ForAll @IntRange(min = 1, max = 8) int count,
      @ForAll @IntRange(min = 0, max = 11) int which) {
    BenchSketch sketch =
        Benches.ordinary()
            .everyEndFrame(
                f ->
                    f.topRail(
                        r ->
                            r.joint(
                                j -> sizes(j.kind(kind).hold(hold), size, other, count, which))));
    try {
      sketch.complete(Benches.WOODS);
    } catch (UnsoundBench unsound) {
      for (BenchFault fault : unsound.faults()) {
        String start = "endFrames[0].topRail.joint";
        if (fault.key().startsWith("endFrames[0]")) {
          assertTrue(fault.key().startsWith(start), fault.line());
          String rest = fault.key().substring(start.length()).replaceFirst("^\\.", "");
          assertTrue(rest.isEmpty() || SIZES.contains(rest), fault.line());
        }
      }
    }
  }

  private static void sizes(JointSketch j, double size, double other, int count, int which) {
    Length first = Length.ofMm(size);
    Length second = Length.ofMm(other);
    switch (which) {
      case 0 -> j.tenonHeight(first).shoulderBelow(second);
      case 1 -> j.tenonThickness(first).tenonLength(second);
      case 2 -> j.haunchHeight(first).haunchLength(second);
      case 3 -> j.pegDiameter(first).pegFromShoulder(second).pegs(count);
      case 4 -> j.drawboreOffset(first).wedges(count);
      case 5 -> j.bolts(count).boltDiameter(first).boltSpacing(second);
      case 6 -> j.nutFromEnd(first).tenonThickness(second);
      case 7 -> j.dowels(count).dowelDiameter(first);
      case 8 -> j.lapDepth(first).tenons(count);
      case 9 -> j.screws(count).screwDiameter(second).screwLength(first);
      case 10 -> j.screws(count).screwFromEdge(first).screwPilot(second);
      default -> j.play(first).through(true);
    }
  }

  /** Two stretchers on one line, both nearer to the floor than to the top. */
  private static BenchSketch twoInFront(String... names) {
    BenchSketch sketch =
        BenchSketch.named("two in front")
            .height(Length.ofMm(845))
            .wood("beech-european")
            .top(t -> t.length(Length.ofMm(1730)).width(Length.ofMm(640)));
    for (int i = 0; i < 2; i++) {
      int number = i;
      sketch.stretcher(
          s -> {
            s.line(StretcherLine.FRONT).depth(Length.ofMm(83));
            s.centreAt(Length.ofMm(170 + 130 * number));
            Arrays.stream(names).forEach(s::name);
          });
    }
    return sketch;
  }

  @Test
  void stretchers_of_one_line_get_names_of_their_own() {
    assertEquals(
        List.of("lower front stretcher", "lower front stretcher 2"),
        Benches.complete(twoInFront()).stretchers().stream().map(s -> s.name()).toList());
  }

  @Test
  void a_name_given_to_two_stretchers_is_refused() {
    assertTrue(
        lines(twoInFront("rail"))
            .contains(
                "stretchers[1].name is rail; a name that no other stretcher on this line has."),
        lines(twoInFront("rail")).toString());
  }

  @Test
  void a_middle_stretcher_that_would_cut_its_rail_in_two_is_refused() {
    BenchSketch sketch = Benches.ordinary();
    sketch.stretcher(
        s ->
            s.line(StretcherLine.MIDDLE)
                .depth(Length.ofMm(85))
                .centreAt(Length.ofMm(154))
                .joint(j -> j.kind(JointKind.BRIDLE)));
    assertTrue(
        lines(sketch).stream()
            .anyMatch(
                line -> line.contains("joint is such that it leaves") && line.contains("left")),
        lines(sketch).toString());
  }

  /** Half a millimetre apart, both levels of a leg round to the same name. */
  @Test
  void pieces_that_meet_a_leg_at_nearly_the_same_height_are_told_apart() {
    BenchSketch sketch =
        twoInFront()
            .everyEndFrame(
                f -> f.bottomRail(r -> r.depth(Length.ofMm(97)).centreAt(Length.ofMm(169.5))));
    BenchModel model =
        BenchModel.of(
            Benches.complete(sketch),
            Timbers.of(Benches.complete(sketch), Benches.TABLES)::get,
            JointLevel.MEAN,
            FloorContact.HELD);
    assertTrue(
        model.frame().nodes().keySet().stream().filter(n -> n.contains("leg at 170")).count() >= 2);
  }
}
