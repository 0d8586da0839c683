package org.stoutwork.report;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rooms of the report and the arrows between them, as {@link RoomArrows} draws them. */
class RoomsTest {

  private static final String HOME = RoomArrows.HOME;
  private static final int FILES_AT_LEAST = 250;

  /** The only doors to the outside; everything else is the project's own or the platform's. */
  private static final Map<String, List<String>> LIBRARIES =
      Map.of(
          "pdf", List.of("com.lowagie..", "org.openpdf.."),
          "file.tree", List.of("com.fasterxml.jackson..", "org.yaml.snakeyaml.."),
          "command", List.of("picocli.."));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.stoutwork.report");

  static Stream<String> rooms() {
    return RoomArrows.all().keySet().stream();
  }

  private static String home(String room) {
    return RoomArrows.all().containsKey(room) ? HOME : RoomArrows.CORE;
  }

  @Test
  void enough_classes_are_found_for_the_other_tests_to_mean_something() {
    long files = CLASSES.stream().filter(JavaClass::isTopLevelClass).count();
    assertTrue(files >= FILES_AT_LEAST, () -> "only " + files + " classes found");
  }

  @Test
  void the_table_names_every_room_that_has_classes_and_no_other() {
    Set<String> lived =
        CLASSES.stream()
            .filter(type -> !"package-info".equals(type.getSimpleName()))
            .map(JavaClass::getPackageName)
            .map(name -> name.substring(Math.min(name.length(), HOME.length())))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(lived, new TreeSet<>(RoomArrows.all().keySet()));
  }

  @Test
  void every_arrow_of_the_table_points_down() {
    List<String> built = new ArrayList<>();
    RoomArrows.all()
        .forEach(
            (room, used) -> {
              for (String below : used) {
                assertTrue(
                    built.contains(below) || home(below).equals(RoomArrows.CORE),
                    () -> room + " stands before " + below);
              }
              built.add(room);
            });
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rooms")
  void a_room_uses_only_the_rooms_the_table_allows(String room) {
    List<String> allowed = new ArrayList<>(List.of(HOME + room, "java.."));
    RoomArrows.all().get(room).forEach(below -> allowed.add(home(below) + below));
    allowed.addAll(LIBRARIES.getOrDefault(room, List.of()));
    classes()
        .that()
        .resideInAPackage(HOME + room)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed.toArray(String[]::new))
        .check(CLASSES);
  }

  @Test
  void no_arrows_run_in_a_circle() {
    slices().matching("org.stoutwork.report.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rooms")
  void a_room_says_which_rooms_it_uses_as_the_table_does(String room) {
    assertEquals(new TreeSet<>(RoomArrows.all().get(room)), RoomWords.of(room).used());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rooms")
  void a_room_says_where_to_start_and_what_it_does_not_know(String room) {
    RoomWords words = RoomWords.of(room);
    assertTrue(words.saysWhereToStart(), () -> room + " does not say where to start reading");
    assertTrue(words.saysWhatItRefuses(), () -> room + " does not say what it refuses to know");
  }
}
