package org.stoutwork.report.figure.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.StatedSpring;
import org.stoutwork.report.drawing.Bounds;
import org.stoutwork.report.drawing.Drawing;
import org.stoutwork.report.drawing.EmMeasure;
import org.stoutwork.report.drawing.Extent;
import org.stoutwork.report.drawing.Mark;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.units.Amounts;
import org.stoutwork.report.units.UnitSystem;

class JointDrawingTest {

  private static final TextMeasure MEASURE = new EmMeasure();
  private static final Amounts SI = new Amounts(UnitSystem.SI);
  private static final Amounts INCHES = new Amounts(UnitSystem.INCH_POUND);
  private static final double WIDTH = 80;
  private static final double HEIGHT = 92;

  private static Drawing draw(Joint joint, Place place, Amounts amounts) {
    return JointDrawing.draw(joint, place, amounts, MEASURE, WIDTH, HEIGHT).orElseThrow();
  }

  private static List<Mark.Label> labels(Drawing drawing) {
    return drawing.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }

  private static List<String> words(Drawing drawing) {
    return labels(drawing).stream().map(l -> l.text().characters()).toList();
  }

  private static double scale(Drawing drawing) {
    String title =
        words(drawing).stream().filter(w -> w.contains("\u00a0:\u00a0")).findFirst().orElseThrow();
    return Double.parseDouble(title.substring(title.lastIndexOf('\u00a0') + 1));
  }

  static Stream<Arguments> kinds() {
    List<Arguments> out = new ArrayList<>();
    Kinds.all()
        .forEach(
            (name, joint) -> {
              out.add(Arguments.of(name + " at the head of a leg", joint, Kinds.leg(0, 420)));
              out.add(Arguments.of(name + " low in a leg", joint, Kinds.leg(390, 31)));
              out.add(
                  Arguments.of(
                      name + " in a foot",
                      joint,
                      new Place(Kinds.MEMBERS, Place.Run.TURNED, 190, 190)));
              out.add(
                  Arguments.of(
                      name + " in a rail",
                      joint,
                      new Place(Kinds.MEMBERS, Place.Run.CROSSING, 13, 22)));
            });
    return out.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("kinds")
  void no_two_figures_meet_and_nothing_leaves_the_frame(String name, Joint joint, Place place) {
    for (Amounts amounts : new Amounts[] {SI, INCHES}) {
      Drawing drawing = draw(joint, place, amounts).requireInside(MEASURE);
      assertTrue(drawing.width() <= WIDTH && drawing.height() <= HEIGHT, name);
      assertTrue(drawing.smallestType() >= 8, name);
      List<Mark.Label> labels = labels(drawing);
      assertTrue(labels.size() >= 5, name);
      for (int i = 0; i < labels.size(); i++) {
        Bounds one = Extent.of(labels.get(i), MEASURE);
        for (int k = 0; k < i; k++) {
          Bounds other = Extent.of(labels.get(k), MEASURE);
          String both = words(drawing).get(i) + " and " + words(drawing).get(k);
          assertFalse(one.overlaps(other, 0.3), () -> name + ": " + both);
        }
      }
    }
  }

  static Stream<Arguments> figures() {
    return Stream.of(
        Arguments.of("glued tenon", "58 83 13 30.5 41 74 19 77 31 127"),
        Arguments.of("pegged tenon", "21 37 58 24 29 77"),
        Arguments.of("drawbored tenon", "22 36 58 38.5 77"),
        Arguments.of("haunched tenon", "14 59 9 71 26 21 12 34 28"),
        Arguments.of("wedged through tenon", "52 86 15 65 95 16"),
        Arguments.of("twin tenon", "9 23.5 101 11 15 61"),
        Arguments.of("bridle", "39 44 17 28.5 127 63.5"),
        Arguments.of("double corner bridle", "8 25 83 127"),
        Arguments.of("bolted tenon", "23 62 83 40 47 93 18 16"),
        Arguments.of("bolted tenon with a slot for its nut", "21 57 63.5 88 22 17"),
        Arguments.of("loose-wedge tenon", "46 18 83 147 24 11 69 31 27"),
        Arguments.of("half-lap", "20 54 41 74 83 127"),
        Arguments.of("dowelled butt", "36 32 24 38 27 127 83"),
        Arguments.of("housing", "14 83 41 74 127"),
        Arguments.of("screwed half-lap", "21 53 41 74 83 127 28 35.5 36 11"),
        Arguments.of("half-lap with one line of screws", "21 53 41 74 83 127 28 35.5 41.5"),
        Arguments.of("screwed housing", "12 83 41 74 127 33 61 43 20.5"),
        Arguments.of("screwed butt", "72 83 41 74 127 39 49 20.5"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("figures")
  void every_size_stands_beside_the_drawing(String name, String sizes) {
    List<String> words = words(draw(Kinds.all().get(name), Kinds.leg(43, 420), SI));
    for (String size : sizes.split(" ", -1)) {
      assertTrue(words.contains(size), () -> size + " of the " + name + " in " + words);
    }
    assertFalse(words.contains("0"), () -> "a size of nothing of the " + name + " in " + words);
  }

  @Test
  void the_tenon_is_drawn_to_the_scale_that_the_title_states() {
    Drawing drawing = draw(Kinds.tenon(new Fit.Glued()), Kinds.leg(43, 420), SI);
    Mark.Polygon rail =
        drawing.marks().stream()
            .filter(Mark.Polygon.class::isInstance)
            .map(Mark.Polygon.class::cast)
            .filter(p -> p.points().size() > 8)
            .findFirst()
            .orElseThrow();
    double scale = scale(drawing);
    double[] across = rail.points().stream().mapToDouble(p -> p.x()).sorted().distinct().toArray();
    assertEquals(58 / scale, across[1] - across[0], 1e-9);
    double[] up = rail.points().stream().mapToDouble(p -> p.y()).sorted().toArray();
    assertEquals(127 / scale, up[up.length - 1] - up[0], 1e-9);
    double[] heights = Arrays.stream(up).map(y -> (up[up.length - 1] - y) * scale).toArray();
    assertTrue(Arrays.stream(heights).anyMatch(h -> Math.abs(h - 19) < 1e-9));
    assertTrue(Arrays.stream(heights).anyMatch(h -> Math.abs(h - 96) < 1e-9));
  }

  @Test
  void pegs_and_bolts_stand_where_the_joint_has_them() {
    Joint pegged = Kinds.all().get("pegged tenon");
    Drawing drawing = draw(pegged, Kinds.leg(43, 420), SI);
    double scale = scale(drawing);
    List<Mark.Arc> pegs =
        drawing.marks().stream()
            .filter(Mark.Arc.class::isInstance)
            .map(Mark.Arc.class::cast)
            .toList();
    assertEquals(2, pegs.size());
    assertEquals(8 / scale, 2 * pegs.get(0).radius(), 1e-9);
    assertEquals(29 / scale, pegs.get(0).centre().to(pegs.get(1).centre()), 1e-9);
  }

  @Test
  void a_larger_frame_gives_a_larger_scale() {
    Joint joint = Kinds.tenon(new Fit.Glued());
    Place place = Kinds.leg(43, 420);
    Drawing wide = JointDrawing.draw(joint, place, SI, MEASURE, 170, 200).orElseThrow();
    assertTrue(scale(wide) < scale(draw(joint, place, SI)));
  }

  @Test
  void inches_stand_as_fractions_where_they_are_fractions() {
    Joint.Members members = new Joint.Members(101.6, 38.1, 88.9, 63.5);
    Joint joint =
        new org.stoutwork.joint.MortiseAndTenon(
            76.2, 12.7, 50.8, 12.7, 0, 1, false, Optional.empty(), new Fit.Glued());
    List<String> words = words(draw(joint, new Place(members, Place.Run.UPRIGHT, 51, 300), INCHES));
    assertTrue(
        words.containsAll(List.of("1/2", "3", "2", "1\u00a01/2", "3\u00a01/2", "4")),
        words::toString);
  }

  @Test
  void a_joint_of_stated_stiffness_is_not_drawn_but_named() {
    Joint joint = new StatedSpring(1e6, 2e6, 3e6, OptionalDouble.empty());
    assertTrue(JointDrawing.draw(joint, Kinds.leg(43, 420), SI, MEASURE, WIDTH, HEIGHT).isEmpty());
    assertTrue(JointNotes.of(joint, SI).get(0).contains("not drawn"));
  }

  @Test
  void a_frame_too_small_for_any_scale_is_refused() {
    Joint joint = Kinds.tenon(new Fit.Glued());
    assertThrows(
        IllegalStateException.class,
        () -> JointDrawing.draw(joint, Kinds.leg(43, 420), SI, MEASURE, 20, 20));
  }

  @Test
  void a_post_that_ends_inside_its_rail_is_refused() {
    assertThrows(IllegalArgumentException.class, () -> Kinds.leg(-3, 40));
  }

  @Test
  void notes_say_what_the_dimensions_leave_out() {
    assertEquals(
        List.of(
            "one peg, 8\u00a0mm across",
            "hole in the tenon 1.5\u00a0mm nearer to the shoulder (dashed)"),
        JointNotes.of(Kinds.all().get("drawbored tenon"), SI));
    assertEquals(
        List.of(
            "2 M10 bolts with washers 34\u00a0mm across",
            "barrel nut 16\u00a0mm across, 31\u00a0mm long"),
        JointNotes.of(Kinds.all().get("bolted tenon"), SI));
    assertEquals(
        List.of("2 wedges of 6.0°", "mortise flared 3.0° to each side for it"),
        JointNotes.of(Kinds.all().get("wedged through tenon"), SI));
    assertEquals(
        List.of("3 dowels, 10\u00a0mm across"),
        JointNotes.of(Kinds.all().get("dowelled butt"), SI));
  }
}
