package org.stoutwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where kinds are told apart one after the other, the compiler does not see that one was forgotten;
 * this does. A class of the table must name every kind of the closed choice beside it.
 */
class RoomsKindsTest {

  private static final String CHAINS =
      """
      working.Printing                : working.Expr
      working.UnitCheck               : working.Expr
      joint.screwed.FasteningCapacity : joint.setting.StrengthFamily
      analysis.solve.FrameSolver$Layout: analysis.model.Link
      assembly.TopLoads               : bench.Weight
      assembly.PlateLoads             : bench.Weight
      """;

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.stoutwork");

  static Stream<Arguments> chains() {
    return CHAINS
        .lines()
        .map(row -> row.split(":"))
        .map(
            row ->
                Arguments.of("org.stoutwork." + row[0].strip(), "org.stoutwork." + row[1].strip()));
  }

  @ParameterizedTest(name = "{0} over {1}")
  @MethodSource("chains")
  void every_kind_of_a_closed_choice_is_named(String teller, String choice)
      throws ClassNotFoundException {
    Set<String> named =
        CLASSES.get(teller).getDirectDependenciesFromSelf().stream()
            .map(Dependency::getTargetClass)
            .map(type -> type.getName())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> kinds =
        leaves(Class.forName(choice)).collect(Collectors.toCollection(TreeSet::new));
    assertTrue(kinds.size() > 1, () -> choice + " is no choice");
    kinds.removeAll(named);
    assertEquals(Set.of(), kinds, () -> teller + " forgets");
  }

  private static Stream<String> leaves(Class<?> type) {
    return type.isSealed()
        ? Arrays.stream(type.getPermittedSubclasses()).flatMap(RoomsKindsTest::leaves)
        : Stream.of(type.getName());
  }
}
