package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.stoutwork.assembly.Benches.mm;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.Samples;
import org.stoutwork.joint.ScrewSet;
import org.stoutwork.joint.capacity.JointCapacities;
import org.stoutwork.joint.limit.JointLimit;
import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointForces;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.JointStrength;
import org.stoutwork.joint.setting.StrengthFamily;

/** The screws that a half-lap is given where nobody names them. */
class LapScrewsTest {

  /** So large that every screw is used to its full strength and beyond. */
  private static final JointForces FORCES =
      new JointForces(9_000, 7_000, 2_000, 900_000, 90_000, 60_000);

  private record Made(HalfLap lap, String reason) {}

  private static Made made(JointPlace place, Consumer<JointSketch> words) {
    JointSketch sketch = new JointSketch().kind(JointKind.HALF_LAP);
    words.accept(sketch);
    Answers answers = new Answers();
    Joint joint = JointCompletion.complete(answers, place, Optional.of(sketch)).joint();
    assertTrue(answers.faults().isEmpty(), answers.faults().toString());
    String reason =
        answers.defaults(2).stream()
            .filter(d -> d.key().endsWith("screwDiameter"))
            .findFirst()
            .orElseThrow()
            .reason();
    return new Made((HalfLap) joint, reason);
  }

  private static JointPlace place(double depth, double thick, double width, double beyond) {
    return new JointPlace(
        "lap",
        depth,
        thick,
        width,
        thick,
        beyond,
        false,
        new WoodNames.Kind(0.51, true),
        JointPlace.Usual.GLUED);
  }

  private static List<JointLimit> limits(JointPlace place, HalfLap lap, StrengthFamily family) {
    JointSetting setting =
        new JointSetting(
            place.members(),
            FaceGrain.TANGENTIAL,
            FaceGrain.RADIAL,
            Samples.BEECH,
            Samples.FIR,
            Glue.PVA,
            Double.POSITIVE_INFINITY,
            place.beyond(),
            90);
    JointStrength strength = Samples.strength(family);
    return JointCapacities.utilisations(lap, setting, strength, FORCES, false);
  }

  private static boolean isDistance(JointLimit limit) {
    return limit.failure().contains("screw")
        && limit.failure().matches(".*(from the end|from the edge|spacing).*");
  }

  @Property(tries = 300)
  void no_distance_fails_by_a_screw_that_nobody_named(
      @ForAll @DoubleRange(min = 45, max = 170) double depth,
      @ForAll @DoubleRange(min = 24, max = 90) double thick,
      @ForAll @DoubleRange(min = 40, max = 190) double width,
      @ForAll @DoubleRange(min = 0, max = 140) double beyond,
      @ForAll boolean glued) {
    JointPlace place = place(depth, thick, width, beyond);
    Made made = made(place, j -> j.hold(glued ? JointHold.SCREWED_AND_GLUED : JointHold.SCREWED));
    boolean none = made.reason().startsWith("the thinnest; the lap is too small");
    List<StrengthFamily> families =
        List.of(
            new StrengthFamily.PartialFactors(0.7, 1.3, 1.15),
            new StrengthFamily.Allowable(1.25, 2.2));
    boolean kept = true;
    int distances = 0;
    for (StrengthFamily family : families) {
      for (JointLimit limit : limits(place, made.lap(), family)) {
        if (isDistance(limit)) {
          distances++;
          kept &= limit.utilisation() <= 1 + 1e-9;
        }
      }
    }
    assertTrue(distances >= 8, distances + " distances");
    assertTrue(kept || none, made + " in " + place);
    if (none) {
      assertEquals(3, made.lap().screws().orElseThrow().screw().diameter());
    }
  }

  @Test
  void the_narrower_lap_has_the_thinner_screws() {
    // Full strength asks for 12 d to the end of the rail, 10 d from screw to screw in the post.
    assertEquals(4, diameter(place(150, 60, 98, 300)));
    assertEquals(3.5, diameter(place(150, 60, 85, 300)));
    assertEquals(3, diameter(place(150, 60, 74, 300)));
    // Where the post ends with the rail, the screw keeps 12 d from that end too.
    assertEquals(4, diameter(place(137, 60, 98, 0)));
    assertEquals(3.5, diameter(place(135, 60, 98, 0)));
  }

  @Test
  void beside_glue_screws_only_press_and_may_be_thicker_or_one_alone() {
    JointPlace usual = place(110, 96, 85, 300);
    Made glued = made(usual, j -> j.hold(JointHold.SCREWED_AND_GLUED));
    assertEquals(6, glued.lap().screws().orElseThrow().screw().diameter());
    assertEquals(2, glued.lap().screws().orElseThrow().count());
    // 7 d from the post's end in so low a rail leaves no pitch for two of 3 mm.
    Made low = made(place(44, 60, 85, 0), j -> j.hold(JointHold.SCREWED_AND_GLUED));
    assertEquals(1, low.lap().screws().orElseThrow().count());
  }

  @Test
  void what_is_given_stays_and_the_rest_follows_it() {
    ScrewSet three =
        made(place(150, 60, 98, 300), j -> j.hold(JointHold.SCREWED).screws(3))
            .lap()
            .screws()
            .orElseThrow();
    assertEquals(3, three.count());
    assertTrue(three.pitch(150) >= 10 * three.screw().diameter());
    ScrewSet near =
        made(place(150, 60, 98, 300), j -> j.hold(JointHold.SCREWED).screwFromEdge(mm(16)))
            .lap()
            .screws()
            .orElseThrow();
    // Edge of the rail: (3 + 2) d = 16 mm at most.
    assertEquals(16, near.fromEdge());
    assertEquals(3, near.screw().diameter());
  }

  @Test
  void a_lap_too_small_for_any_says_so() {
    Made small = made(place(60, 40, 50, 0), j -> j.hold(JointHold.SCREWED));
    assertTrue(small.reason().startsWith("the thinnest; the lap is too small"), small.reason());
    assertEquals(3, small.lap().screws().orElseThrow().screw().diameter());
    assertEquals(2, small.lap().screws().orElseThrow().count());
  }

  private static double diameter(JointPlace place) {
    return made(place, j -> j.hold(JointHold.SCREWED))
        .lap()
        .screws()
        .orElseThrow()
        .screw()
        .diameter();
  }
}
