package org.stoutwork.analysis.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PanelTest {
  private static final PanelMaterial WOOD = new PanelMaterial(11000, 450, 690, 640, 120, 0.35, 500);

  private static String refusal(org.junit.jupiter.api.function.Executable build) {
    return assertThrows(IllegalArgumentException.class, build).getMessage();
  }

  @Test
  void a_solid_section_has_the_stiffness_of_plate_theory() {
    PanelSection s = PanelSection.solid(WOOD, 40);
    double c = 1 - 0.35 * 0.35 * 450 / 11000;
    assertEquals(11000 * 64000 / 12.0 / c, s.d11(), 1e-6);
    assertEquals(450 * 64000 / 12.0 / c, s.d22(), 1e-6);
    assertEquals(0.35 * 450 * 64000 / 12.0 / c, s.d12(), 1e-6);
    assertEquals(690 * 64000 / 12.0, s.d66(), 1e-6);
    assertEquals(5.0 / 6 * 640 * 40, s.a55(), 1e-9);
    assertEquals(5.0 / 6 * 120 * 40, s.a44(), 1e-9);
    assertEquals(690 * 40, s.c66(), 1e-9);
    assertEquals(20, s.mass(), 1e-12);
  }

  @Test
  void a_turned_section_is_the_section_of_turned_wood() {
    PanelSection a = PanelSection.solid(WOOD, 40).turned();
    PanelSection b = PanelSection.solid(WOOD.turned(), 40);
    assertEquals(a.d11(), b.d11(), 1e-6);
    assertEquals(a.d12(), b.d12(), 1e-6 * a.d12());
    assertEquals(a.a44(), b.a44(), 1e-9);
    assertEquals(a.c22(), b.c22(), 1e-6);
  }

  @Test
  void a_poissons_ratio_for_the_wrong_direction_is_refused() {
    String message = refusal(() -> new PanelMaterial(450, 11000, 690, 640, 120, 0.35, 0));
    assertTrue(message.contains("swapped"), message);
  }

  @Test
  void things_off_the_panel_are_refused() {
    PanelBuilder builder = Panel.builder("top", 1500, 600, 40).material(WOOD);
    assertTrue(
        refusal(() -> builder.support(PanelSupport.hard(PanelLine.x(1501))).build())
            .contains("1501"));
    assertTrue(
        refusal(() -> Panel.builder("top", 1500, 600, 40).material(WOOD).report(10, 700).build())
            .contains("700"));
    assertTrue(
        refusal(
                () ->
                    Panel.builder("top", 1500, 600, 40)
                        .material(WOOD)
                        .opening(100, 100, 1600, 200)
                        .build())
            .contains("1600"));
  }

  @Test
  void directions_that_are_not_at_right_angles_are_refused() {
    String message = refusal(() -> new PanelPlace(Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(1, 1, 0)));
    assertTrue(message.contains("right angles"), message);
  }

  @Test
  void a_support_that_holds_nothing_is_refused() {
    String message =
        refusal(() -> new PanelSupport(PanelLine.y(30), java.util.Optional.empty(), false, false));
    assertTrue(message.contains("y = 30"), message);
  }

  @Test
  void the_normal_points_from_along_to_across() {
    PanelPlace place = new PanelPlace(new Vec3(5, 6, 7), new Vec3(0, 2, 0), new Vec3(0, 0, 3));
    assertEquals(new Vec3(1, 0, 0), place.normal());
    assertEquals(new Vec3(5, 16, 27), place.inSpace(10, 20));
  }
}
