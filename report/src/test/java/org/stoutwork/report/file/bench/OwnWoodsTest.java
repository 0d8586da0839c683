package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.MaterialLine;
import org.stoutwork.source.Mark;
import org.stoutwork.source.Source;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.catalogue.WoodCatalogue;

class OwnWoodsTest {

  private static final WoodCatalogue WOODS = WoodCatalogue.load();

  private static Species read(String wood, String own) throws UnreadableFile {
    String text =
        """
        bench: own woods
        wood: %s
        height: 855 mm
        top: {length: 1610 mm, width: 575 mm, thickness: 66 mm}
        woods:
          - {name: %s, source: mill sheet 7, %s}
        """
            .formatted(wood, wood, own);
    BenchFile file = BenchFileReader.read(new SourceText("bench.yaml", text), WOODS);
    return (Species) file.bench().timbers().values().iterator().next().wood();
  }

  private static Species known(String key) {
    return (Species) WOODS.byKey(key).orElseThrow();
  }

  private static void assertYours(double value, Property property) {
    assertEquals(value, property.value(), 1e-9 * value);
    assertEquals(Mark.YOURS, property.mark());
  }

  @Test
  void one_own_shrinkage_changes_one_direction_and_its_coefficient() throws UnreadableFile {
    Species ash = read("ash-white", "shrinkageTangential: 8.4 %");
    assertYours(8.4, ash.shrinkage().tangential());
    assertYours(1 / (3000 / 8.4 - 20), ash.shrinkage().tangentialCoefficient());
    assertEquals(known("ash-white").shrinkage().radial(), ash.shrinkage().radial());
    assertEquals(
        known("ash-white").shrinkage().radialCoefficient(), ash.shrinkage().radialCoefficient());
    assertEquals(known("ash-white").clear(), ash.clear());
  }

  @Test
  void a_new_wood_may_bring_both_shrinkages() throws UnreadableFile {
    Species elm =
        read(
            "shop elm",
            "group: hardwood, specificGravity: 0.53, shrinkageRadial: 4.9 %,"
                + " shrinkageTangential: 9.3 %");
    assertYours(4.9, elm.shrinkage().radial());
    assertYours(9.3, elm.shrinkage().tangential());
    assertYours(1 / (3000 / 4.9 - 20), elm.shrinkage().radialCoefficient());
  }

  /** 613 kg/m³ at 12 %: 613/1.12 = 547.3 kg of dry wood in a cubic metre. */
  @Test
  void a_density_is_read_as_that_of_air_dry_wood() throws UnreadableFile {
    Species elm = read("shop elm", "group: hardwood, density: 613 kg/m³");
    assertYours(0.613 / 1.12, elm.clear().dry(ClearProperty.SPECIFIC_GRAVITY).orElseThrow());
  }

  @Test
  void an_own_mean_of_a_known_wood_leaves_the_others() throws UnreadableFile {
    Species beech = read("beech-european", "shear: 12.4 MPa");
    assertYours(12.4, beech.clear().dry(ClearProperty.SHEAR).orElseThrow());
    assertEquals(
        known("beech-european").clear().dry(ClearProperty.BENDING),
        beech.clear().dry(ClearProperty.BENDING));
  }

  @Test
  void the_result_says_which_woods_have_own_values_and_marks_each_of_them() throws UnreadableFile {
    String text =
        """
        bench: own woods
        wood: shop elm
        height: 855 mm
        top: {length: 1610 mm, width: 575 mm, thickness: 66 mm}
        everyEndFrame: {legs: {wood: beech-european}, topRail: {wood: ash-white}}
        woods:
          - {name: shop elm, group: hardwood, source: bending tests 3, density: 610 kg/m³}
          - {name: beech-european, source: mill sheet 7, shear: 12.4 MPa}
        """;
    BenchFile file = BenchFileReader.read(new SourceText("bench.yaml", text), WOODS);
    BenchResult result = BenchCheck.load().run(file.bench());
    assertEquals("shop elm, with values of yours", material(result, "shop-elm").name());
    assertEquals(Set.of("bending tests 3"), yours(material(result, "shop-elm")));
    assertEquals(Set.of("mill sheet 7"), yours(material(result, "beech-european")));
    assertEquals("Ash, white", material(result, "ash-white").name());
    assertEquals(Set.of(), yours(material(result, "ash-white")));
  }

  private static MaterialLine material(BenchResult result, String key) {
    return result.materials().stream().filter(m -> m.key().equals(key)).findFirst().orElseThrow();
  }

  private static Set<String> yours(MaterialLine material) {
    return material.values().stream()
        .flatMap(value -> value.working().sources().stream())
        .filter(source -> source.mark() == Mark.YOURS)
        .map(Source::document)
        .collect(Collectors.toSet());
  }
}
