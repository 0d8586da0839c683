package org.stoutwork;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** What no room of the core may do: reach outside, ask the hour, or keep anything in a static. */
class RoomsDoorsTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.stoutwork");

  private static final Set<String> HOUR_OR_PLACE =
      Set.of(
          "java.lang.System.currentTimeMillis",
          "java.lang.System.nanoTime",
          "java.lang.System.getenv",
          "java.lang.System.getProperty",
          "java.lang.Math.random",
          "java.util.Locale.getDefault",
          "java.util.UUID.randomUUID",
          "java.time.Instant.now",
          "java.time.LocalDate.now",
          "java.time.LocalDateTime.now",
          "java.time.ZonedDateTime.now");

  private static DescribedPredicate<JavaAccess<?>> access(Set<String> members) {
    return DescribedPredicate.describe(
        "reaches " + members,
        it -> members.contains(it.getTargetOwner().getName() + "." + it.getName()));
  }

  @Test
  void enough_classes_are_found_for_the_other_tests_to_mean_something() {
    assertTrue(CLASSES.size() >= 450, () -> "only " + CLASSES.size() + " classes found");
  }

  @Test
  void only_linear_knows_the_library_of_mathematics() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.stoutwork.linear")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.apache.commons.math3..")
        .check(CLASSES);
  }

  @Test
  void the_core_knows_no_files_pictures_logs_or_nets() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.nio.file..", "java.awt..", "java.util.logging..", "java.net..", "javax..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.(File|Random|Print|Console).*")
        .check(CLASSES);
  }

  @Test
  void only_table_reads_the_texts_that_lie_beside_the_classes() {
    Set<String> reading =
        Set.of(
            "java.lang.Class.getResource",
            "java.lang.Class.getResourceAsStream",
            "java.lang.ClassLoader.getResource",
            "java.lang.ClassLoader.getResources",
            "java.lang.ClassLoader.getResourceAsStream");
    noClasses()
        .that()
        .resideOutsideOfPackage("org.stoutwork.table")
        .should()
        .accessTargetWhere(access(reading))
        .orShould()
        .dependOnClassesThat()
        .resideInAPackage("java.io..")
        .check(CLASSES);
  }

  @Test
  void the_core_neither_prints_nor_ends_the_process() {
    noClasses()
        .should()
        .accessTargetWhere(
            access(
                Set.of(
                    "java.lang.System.out",
                    "java.lang.System.err",
                    "java.lang.System.in",
                    "java.lang.System.exit",
                    "java.lang.Runtime.exit",
                    "java.lang.Runtime.halt")))
        .check(CLASSES);
  }

  @Test
  void the_core_answers_the_same_at_any_hour_and_place() {
    noClasses().should().accessTargetWhere(access(HOUR_OR_PLACE)).check(CLASSES);
  }

  @Test
  void what_is_static_or_public_never_changes() {
    fields().that().areStatic().should().beFinal().check(CLASSES);
    fields().that().arePublic().should().beFinal().check(CLASSES);
  }

  @Test
  void no_static_holds_a_thing_that_can_be_changed() {
    noFields()
        .that()
        .areStatic()
        .and(DescribedPredicate.not(new Written()))
        .should()
        .haveRawType(changeable())
        .check(CLASSES);
    assertEquals(List.of(), changeableCollections());
  }

  private static DescribedPredicate<JavaClass> changeable() {
    List<Class<?>> kinds =
        List.of(
            AtomicInteger.class,
            AtomicLong.class,
            AtomicReference.class,
            ThreadLocal.class,
            StringBuilder.class,
            Random.class);
    return DescribedPredicate.describe(
        "can be changed", type -> kinds.stream().anyMatch(type::isAssignableTo));
  }

  /** Fields the compiler adds: the values of an enumeration, the tables behind a switch. */
  private static final class Written extends DescribedPredicate<JavaField> {

    Written() {
      super("added by the compiler");
    }

    @Override
    public boolean test(JavaField field) {
      return field.getModifiers().contains(JavaModifier.SYNTHETIC);
    }
  }

  /** Every list, set and map in a static field must be of a kind that refuses to be changed. */
  private static List<String> changeableCollections() {
    List<String> out = new ArrayList<>();
    int seen = 0;
    for (JavaClass type : CLASSES) {
      for (JavaField field : type.getFields()) {
        boolean ours =
            field.getModifiers().contains(JavaModifier.STATIC) && !new Written().test(field);
        if (ours && field.getRawType().isArray()) {
          if (!field.getModifiers().contains(JavaModifier.PRIVATE)) {
            out.add(field.getFullName() + ": an array that others see");
          }
        } else if (ours && holdsMany(field.getRawType())) {
          seen++;
          String kind = value(field.reflect()).getClass().getName();
          if (!kind.matches("java\\.util\\.(ImmutableCollections|Collections\\$(Unmod|Empty)).*")) {
            out.add(field.getFullName() + ": " + kind);
          }
        }
      }
    }
    assertTrue(seen >= 10, "only %d static collections were looked at".formatted(seen));
    return out;
  }

  private static boolean holdsMany(JavaClass type) {
    return type.isAssignableTo(Collection.class) || type.isAssignableTo(Map.class);
  }

  private static Object value(Field field) {
    try {
      field.setAccessible(true);
      return field.get(null);
    } catch (IllegalAccessException e) {
      throw new AssertionError(field + " cannot be looked at", e);
    }
  }
}
