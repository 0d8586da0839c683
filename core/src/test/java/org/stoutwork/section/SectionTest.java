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
}
