package org.stoutwork.report;

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

/** Which room of the report opens which door; and no room keeps anything in a static. */
class RoomsDoorsTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.stoutwork.report");

  private static final String HOME = "org.stoutwork.report.";

  private static final Set<String> CONSOLE =
      Set.of(
          "java.lang.System.out",
          "java.lang.System.err",
          "java.lang.System.in",
          "java.lang.System.exit",
          "java.lang.Runtime.exit",
          "java.lang.Runtime.halt");

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
    assertTrue(CLASSES.size() >= 270, () -> "only " + CLASSES.size() + " classes found");
  }

  private static void onlyIn(String room, String... packages) {
    noClasses()
        .that()
        .resideOutsideOfPackage(HOME + room)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages)
        .check(CLASSES);
  }

  @Test
  void only_pdf_knows_the_library_that_writes_pdf() {
    onlyIn("pdf", "com.lowagie..", "org.openpdf..", "com.github.librepdf..");
  }

  @Test
  void only_the_rooms_of_file_know_the_libraries_that_read_and_write_trees() {
    onlyIn("file..", "com.fasterxml..", "org.yaml..");
  }

  @Test
  void only_command_knows_the_library_of_commands() {
    onlyIn("command", "picocli..");
  }

  @Test
  void only_file_and_command_touch_files() {
    noClasses()
        .that()
        .resideOutsideOfPackages(HOME + "file..", HOME + "command")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.nio.file..")
        .check(CLASSES);
  }

  @Test
  void only_command_prints_and_ends_the_process() {
    noClasses()
        .that()
        .resideOutsideOfPackage(HOME + "command")
        .should()
        .accessTargetWhere(access(CONSOLE))
        .check(CLASSES);
  }

  @Test
  void only_command_asks_the_hour_and_the_place() {
    noClasses()
        .that()
        .resideOutsideOfPackage(HOME + "command")
        .should()
        .accessTargetWhere(access(HOUR_OR_PLACE))
        .check(CLASSES);
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
    assertTrue(seen >= 8, "too few static collections were looked at");
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
