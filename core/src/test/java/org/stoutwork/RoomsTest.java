package org.stoutwork;

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

/** The rooms of the core and the arrows between them, as {@link RoomArrows} draws them. */
class RoomsTest {

  private static final String HOME = RoomArrows.HOME;
  private static final int FILES_AT_LEAST = 450;

  /** The only doors to the outside; everything else is the project's own or the platform's. */
  private static final Map<String, String> LIBRARIES =
      Map.of("linear", "org.apache.commons.math3..");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.stoutwork");

  static Stream<String> rooms() {
    return RoomArrows.all().keySet().stream();
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
                assertTrue(built.contains(below), () -> room + " stands before " + below);
              }
              built.add(room);
            });
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rooms")
  void a_room_uses_only_the_rooms_the_table_allows(String room) {
    List<String> allowed = new ArrayList<>(List.of(HOME + room, "java.."));
    RoomArrows.all().get(room).forEach(below -> allowed.add(HOME + below));
    if (LIBRARIES.containsKey(room)) {
      allowed.add(LIBRARIES.get(room));
    }
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
    slices().matching("org.stoutwork.(**)").should().beFreeOfCycles().check(CLASSES);
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
