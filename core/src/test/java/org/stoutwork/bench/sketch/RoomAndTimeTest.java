package org.stoutwork.bench.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.stoutwork.assembly.Benches;
import org.stoutwork.bench.ActionKind;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Mass;
import org.stoutwork.source.Mark;
import org.stoutwork.wood.moisture.Climate;
import org.stoutwork.wood.time.CumulativeLoad;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.wood.time.ServiceClass;

/** What a maker knows of the room, and of how often a load comes. */
class RoomAndTimeTest {

  private static Climate climate(Consumer<AirSketch> words) throws UnsoundBench {
    return complete(Benches.ordinary().air(words)).air().climate();
  }

  private static Bench complete(BenchSketch sketch) throws UnsoundBench {
    return sketch.complete(Benches.WOODS);
  }

  private static List<String> faults(BenchSketch sketch) {
    return assertThrows(UnsoundBench.class, () -> complete(sketch)).faults().stream()
        .map(fault -> fault.line().replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void a_preset_stays_what_it_is_where_nothing_else_is_said() throws UnsoundBench {
    Climate school = climate(a -> a.climate("school").wettest(11.5));
    assertEquals(Mark.PROJECT_DEFAULT, school.source().mark());
    assertEquals(ServiceClass.CLASS_1, school.serviceClass());
  }

  @Test
  void what_is_known_of_the_air_takes_the_place_of_the_preset() throws UnsoundBench {
    Climate mine = climate(a -> a.climate("boat-shed").lowHumidity(35).celsius(16));
    assertEquals(0.35, mine.lowHumidity());
    assertEquals(0.85, mine.highHumidity());
    assertEquals(16, mine.celsius());
    assertEquals(Mark.YOURS, mine.source().mark());
    Bench bench =
        complete(Benches.ordinary().air(a -> a.climate("boat-shed").lowHumidity(35).celsius(16)));
    assertEquals(7.0, bench.air().range().low(), 0.05);
  }

  @Test
  void damper_air_or_wetter_wood_asks_for_its_service_class() throws UnsoundBench {
    assertEquals(ServiceClass.CLASS_1, climate(a -> a.highHumidity(65)).serviceClass());
    assertEquals(ServiceClass.CLASS_2, climate(a -> a.highHumidity(66)).serviceClass());
    assertEquals(ServiceClass.CLASS_2, climate(a -> a.highHumidity(85)).serviceClass());
    assertEquals(ServiceClass.CLASS_3, climate(a -> a.highHumidity(86)).serviceClass());
    assertEquals(ServiceClass.CLASS_1, climate(a -> a.wettest(12)).serviceClass());
    assertEquals(ServiceClass.CLASS_2, climate(a -> a.wettest(12.1)).serviceClass());
    assertEquals(ServiceClass.CLASS_2, climate(a -> a.wettest(20)).serviceClass());
    assertEquals(ServiceClass.CLASS_3, climate(a -> a.wettest(20.5)).serviceClass());
    assertEquals(ServiceClass.CLASS_3, climate(a -> a.highHumidity(60).wettest(21)).serviceClass());
  }

  @Test
  void drier_wood_does_not_ease_the_class_of_the_preset() throws UnsoundBench {
    assertEquals(
        ServiceClass.CLASS_2,
        climate(a -> a.climate("boat-shed").driest(8.5).wettest(11)).serviceClass());
  }

  @Test
  void a_service_class_that_is_stated_counts() throws UnsoundBench {
    assertEquals(
        ServiceClass.CLASS_1,
        climate(a -> a.wettest(14).serviceClass(ServiceClass.CLASS_1)).serviceClass());
    assertEquals(
        ServiceClass.CLASS_3, climate(a -> a.serviceClass(ServiceClass.CLASS_3)).serviceClass());
  }

  @Test
  void air_that_cannot_be_is_refused() throws UnsoundBench {
    assertEquals(
        List.of(
            "air.lowHumidity is 72 % and air.highHumidity is 64.5 %; both must lie from 0 % to"
                + " 95 %, the lower one first."),
        faults(Benches.ordinary().air(a -> a.lowHumidity(72).highHumidity(64.5))));
    assertEquals(
        List.of("air.temperature is 61.5 °C; 0 °C to 60 °C is allowed."),
        faults(Benches.ordinary().air(a -> a.celsius(61.5))));
  }

  @Test
  void the_time_that_an_action_makes_in_all_gives_its_duration() throws UnsoundBench {
    Bench bench =
        complete(
            Benches.ordinary()
                .action(
                    a ->
                        a.kind(ActionKind.SPREAD_ON_TOP)
                            .force(Force.ofNewtons(640))
                            .acts(new CumulativeLoad(6.5, 210, 14))));
    assertEquals(DurationClass.LONG, bench.actions().get(0).duration());
    DefaultTaken said =
        bench.defaults().stream()
            .filter(d -> d.key().equals("actions[0].duration"))
            .findFirst()
            .orElseThrow();
    assertTrue(said.reason().contains("6.5 h a day, 210 days a year, 14 years"), said.reason());
  }

  @Test
  void an_action_has_a_duration_or_times_but_not_both() throws UnsoundBench {
    assertEquals(
        List.of("actions[0].acts is given beside a duration; give one of them."),
        faults(
            Benches.ordinary()
                .action(
                    a ->
                        a.kind(ActionKind.THRUST_ALONG)
                            .force(Force.ofNewtons(310))
                            .duration(DurationClass.SHORT)
                            .acts(new CumulativeLoad(2, 190, 9)))));
  }

  @Test
  void a_stack_lies_long_unless_its_times_say_otherwise() throws UnsoundBench {
    BenchSketch stack =
        Benches.ordinary().weight(w -> w.kind(WeightKind.ON_TOP).mass(Mass.ofKg(37)));
    assertEquals(DurationClass.LONG, complete(stack).storedFor());
    BenchSketch forGood =
        Benches.ordinary()
            .weight(w -> w.kind(WeightKind.ON_TOP).mass(Mass.ofKg(37)))
            .weight(
                w ->
                    w.kind(WeightKind.ON_SHELF)
                        .mass(Mass.ofKg(21))
                        .stays(new CumulativeLoad(24, 365.25, 12)));
    assertEquals(DurationClass.PERMANENT, complete(forGood).storedFor());
    BenchSketch brief =
        Benches.ordinary()
            .weight(
                w ->
                    w.kind(WeightKind.ON_TOP)
                        .mass(Mass.ofKg(37))
                        .stays(new CumulativeLoad(3, 8, 11)));
    assertEquals(DurationClass.MEDIUM, complete(brief).storedFor());
  }

  @Test
  void what_is_fixed_stays_for_good() throws UnsoundBench {
    assertEquals(
        List.of(
            "weights[0].stays is given for a machine; what is fixed stays for good; leave it out."),
        faults(
            Benches.ordinary()
                .weight(
                    w ->
                        w.kind(WeightKind.MACHINE)
                            .mass(Mass.ofKg(58))
                            .stays(new CumulativeLoad(5, 200, 10)))));
  }
}
