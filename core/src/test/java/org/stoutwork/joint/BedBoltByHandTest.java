package org.stoutwork.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.stoutwork.joint.ByHand.EC5;
import static org.stoutwork.joint.ByHand.NDS;

import org.junit.jupiter.api.Test;
import org.stoutwork.joint.bolted.BarrelNut;
import org.stoutwork.joint.bolted.BedBolt;
import org.stoutwork.working.Pad;

/** A bed bolt, its nut and its couple with the shoulder, worked by hand from statics. */
class BedBoltByHandTest {

  private static final Pad PAD = Pad.blank();

  @Test
  void the_wood_bears_on_the_whole_nut() {
    // 36.2 MPa · 17 mm · 33 mm = 20308.2 N.
    assertEquals(20308.2, BarrelNut.bearing(PAD, 36.2, 17, 33), 1e-9);
  }

  @Test
  void the_plug_shears_in_two_planes_as_high_as_the_nut_or_the_rail() {
    // 2 · 3.3 MPa · 57 mm · min(33, 29) mm = 10909.8 N; with a rail of 45 mm · 33 mm = 12414.6 N.
    assertEquals(10909.8, BarrelNut.shearOut(PAD, 3.3, 57, 33, 29), 1e-9);
    assertEquals(12414.6, BarrelNut.shearOut(PAD, 3.3, 57, 33, 45), 1e-9);
  }

  @Test
  void the_nut_is_brought_to_design_by_either_family() {
    // 20308.2 · 0.7/1.3 = 10935.1846 N; 20308.2 · 1.25/4 = 6346.3125 N.
    assertEquals(10935.1846, BarrelNut.design(PAD, 20308.2, EC5), 1e-4);
    assertEquals(6346.3125, BarrelNut.design(PAD, 20308.2, NDS), 1e-9);
  }

  @Test
  void a_bolt_stretches_by_its_stress_area_and_its_length() {
    // 210000 MPa · 84.3 mm² / 137 mm = 129218.978 N/mm.
    assertEquals(129218.978, BedBolt.bolt(PAD, 84.3, 137), 1e-3);
  }

  @Test
  void the_lever_runs_from_the_bolt_to_a_third_of_the_pressed_depth() {
    // 118/2 + 7 - 41/3 = 52.3333 mm away from the pressure, 118/2 - 7 - 41/3 = 38.3333 towards it.
    assertEquals(52.333333, BedBolt.lever(PAD, 118, 7, 41), 1e-6);
    assertEquals(38.333333, BedBolt.lever(PAD, 118, -7, 41), 1e-6);
  }

  @Test
  void preload_and_strength_make_moments_with_the_lever() {
    // 2700 N · 52.3 mm and 6100 N · 38.5 mm.
    assertEquals(141210, BedBolt.opening(PAD, 2700, 52.3), 1e-9);
    assertEquals(234850, BedBolt.moment(PAD, 6100, 38.5), 1e-9);
  }

  @Test
  void one_bolt_turns_against_the_shoulder_in_series() {
    // 52.3² / (1/129219 + 1/24667) = 2735.29 · 20713.0 = 5.66561e7 N·mm/rad.
    assertEquals(56656139.2, BedBolt.rotation(PAD, 52.3, 129219, 24667), 1);
  }

  @Test
  void two_tightened_bolts_turn_against_one_shoulder() {
    // Turned by 1 rad the shoulder yields δ = k·(z1 + z2)/(k_C + 2 k)
    // = 129219·109.7/283105 = 50.0709 mm; the bolts change by 129219·(78.5 - 50.0709) and
    // 129219·(31.2 - 50.0709) N: 3673579·78.5 - 2438480·31.2 = 2.122954e8 N·mm/rad.
    assertEquals(212295373, BedBolt.rotation(PAD, 78.5, 31.2, 129219, 24667), 10);
  }
}
