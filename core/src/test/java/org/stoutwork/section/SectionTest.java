package org.stoutwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SectionTest {

  @Test
  void a_central_mortise_takes_its_own_second_moment() {
    NetSection net = new NetSection(new Rectangle(45, 120), new Opening(16, 50, 0));
    assertEquals(45 * Math.pow(120, 3) / 12 - 16 * Math.pow(50, 3) / 12, net.secondMoment(), 1e-6);
    double firstMoment = 45 * 120.0 * 120 / 8 - 16 * 50.0 * 50 / 8;
    assertEquals(1.5 * net.secondMoment() * (45 - 16) / firstMoment, net.shearArea(), 1e-9);
  }

  @Test
  void an_opening_at_the_edge_leaves_a_smaller_rectangle() {
    NetSection net = new NetSection(new Rectangle(40, 100), new Opening(39.999999, 30, 35));
    Rectangle left = new Rectangle(40, 70);
    assertEquals(left.area(), net.area(), 1e-3);
    assertEquals(left.secondMoment(), net.secondMoment(), 1);
  }

  @Test
  void an_opening_that_leaves_nothing_is_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new NetSection(new Rectangle(40, 100), new Opening(40, 30, 0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new NetSection(new Rectangle(40, 100), new Opening(20, 30, 45)));
  }

  @Test
  void the_torsion_constant_of_a_square_is_that_of_the_series() {
    // Timoshenko and Goodier, Theory of Elasticity: 0.1406 a^4 for a square; from memory.
    assertEquals(0.1406, new Rectangle(1, 1).torsionConstant(), 0.0008);
  }

  @Property
  void unequal_glued_layers_of_one_wood_are_one_rectangle(
      @ForAll @DoubleRange(min = 5, max = 60) double t1,
      @ForAll @DoubleRange(min = 5, max = 60) double t2,
      @ForAll @DoubleRange(min = 5, max = 60) double t3) {
    LayeredSection stack =
        new LayeredSection(
            317,
            List.of(new Layer(t1, 9100), new Layer(t2, 9100), new Layer(t3, 9100)),
            new LayerBond.Glued());
    double whole = 9100 * new Rectangle(317, t1 + t2 + t3).secondMoment();
    assertEquals(whole, stack.bendingStiffness(1), 1e-9 * whole);
  }

  @Property
  void screwed_layers_lie_between_loose_and_glued(
      @ForAll @DoubleRange(min = 9, max = 40) double t1,
      @ForAll @DoubleRange(min = 9, max = 40) double t2,
      @ForAll @DoubleRange(min = 100, max = 1e5) double k) {
    List<Layer> layers = List.of(new Layer(t1, 4000), new Layer(t2, 11000));
    double loose = new LayeredSection(600, layers, new LayerBond.Loose()).bendingStiffness(1500);
    double glued = new LayeredSection(600, layers, new LayerBond.Glued()).bendingStiffness(1500);
    double screwed =
        new LayeredSection(600, layers, new LayerBond.Screwed(k, 150, 4)).bendingStiffness(1500);
    assertTrue(loose < screwed && screwed < glued);
  }

  /** Forces of the layers cancel; they and the layers' own bending make up the moment. */
  @Property
  void stresses_in_layers_make_up_the_moment(
      @ForAll @DoubleRange(min = 9, max = 40) double t1,
      @ForAll @DoubleRange(min = 9, max = 40) double t2,
      @ForAll @DoubleRange(min = 100, max = 1e5) double k) {
    List<Layer> layers = List.of(new Layer(t1, 4000), new Layer(t2, 11000));
    double b = 430;
    double moment = 271_000;
    for (LayerBond bond :
        List.of(new LayerBond.Loose(), new LayerBond.Glued(), new LayerBond.Screwed(k, 130, 3))) {
      List<LayeredSection.Bent> bent = new LayeredSection(b, layers, bond).stresses(moment, 1370);
      double lower = bent.get(0).middle() * b * t1;
      double upper = bent.get(1).middle() * b * t2;
      assertEquals(0, lower + upper, 1e-6);
      double own = (bent.get(0).faces() * t1 * t1 + bent.get(1).faces() * t2 * t2) * b / 6;
      assertEquals(moment, own + upper * (t1 + t2) / 2, 1e-9 * moment);
      assertEquals(bent.get(1).middle() + bent.get(1).faces(), bent.get(1).greatest(), 1e-12);
    }
  }

  @Property
  void one_hole_in_a_pierced_section_is_a_net_section(
      @ForAll @DoubleRange(min = 3, max = 40) double width,
      @ForAll @DoubleRange(min = 3, max = 60) double depth,
      @ForAll @DoubleRange(min = -0.9, max = 0.9) double place) {
    Rectangle gross = new Rectangle(47, 83);
    double offset = place * (83 - depth) / 2;
    NetSection net = new NetSection(gross, new Opening(width, depth, offset));
    PiercedSection pierced =
        new PiercedSection(gross, List.of(PiercedSection.Hole.about(-2, offset, width, depth)));
    assertEquals(net.area(), pierced.area(), 1e-9 * net.area());
    assertEquals(net.secondMoment(), pierced.secondMoment(), 1e-9 * net.secondMoment());
    assertEquals(net.sectionModulus(), pierced.sectionModulus(), 1e-9 * net.sectionModulus());
    assertTrue(pierced.shearArea() <= net.shearArea() + 1e-9);
  }

  @Test
  void mortises_that_meet_take_their_common_wood_once() {
    PiercedSection leg =
        new PiercedSection(
            new Rectangle(70, 56),
            List.of(
                new PiercedSection.Hole(-35, 10, -7, 7), new PiercedSection.Hole(-4, 8, -28, 22)));
    double common = 12 * 14;
    assertEquals(70 * 56 - 45 * 14 - 12 * 50 + common, leg.area(), 1e-9);
    assertEquals(leg.area(), leg.turned().area(), 1e-9);
    assertEquals(leg.secondMoment(), leg.turned().turned().secondMoment(), 1e-6);
  }

  @Test
  void a_section_cut_through_takes_shear_in_its_two_parts() {
    PiercedSection cut =
        new PiercedSection(
            new Rectangle(40, 100), List.of(new PiercedSection.Hole(-20, 20, -20, 12)));
    // Upper part 38 deep, lower part 30 deep: shear goes as the cube of the depth.
    double share = Math.pow(38, 3) / (Math.pow(38, 3) + Math.pow(30, 3));
    assertEquals(40 * 38 / share, cut.shearArea(), 1e-6);
  }

  @Property
  void no_section_grows_with_its_holes(
      @ForAll @DoubleRange(min = 4, max = 30) double width,
      @ForAll @DoubleRange(min = 4, max = 30) double depth,
      @ForAll @DoubleRange(min = 0, max = 9) double more) {
    Rectangle leg = new Rectangle(64, 90);
    PiercedSection.Hole other = new PiercedSection.Hole(-6, 9, -45, 11);
    PiercedSection small =
        new PiercedSection(
            leg, List.of(other, new PiercedSection.Hole(32 - depth, 32, 3, 3 + width)));
    PiercedSection large =
        new PiercedSection(
            leg, List.of(other, new PiercedSection.Hole(32 - depth - more, 32, 3, 3 + width)));
    assertTrue(large.area() <= small.area() + 1e-9);
    assertTrue(large.secondMoment() <= small.secondMoment() + 1e-6);
  }

  @Test
  void holes_that_leave_nothing_are_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new PiercedSection(
                new Rectangle(40, 60),
                List.of(
                    new PiercedSection.Hole(-20, 4, -30, 30),
                    new PiercedSection.Hole(3, 20, -30, 30))));
  }
}
