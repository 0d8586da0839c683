package org.stoutwork.report;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The arrows between the rooms that draw, set and print. */
class PaperRoomsTest {

  private static final String HOME = "org.stoutwork.report.";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.stoutwork.report");

  private static void mayUse(String room, String... others) {
    String[] allowed = new String[others.length + 2];
    System.arraycopy(others, 0, allowed, 0, others.length);
    allowed[others.length] = HOME + room;
    allowed[others.length + 1] = "java..";
    classes()
        .that()
        .resideInAPackage(HOME + room)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed)
        .check(CLASSES);
  }

  @Test
  void there_is_something_to_check() {
    assertTrue(CLASSES.size() > 60);
  }

  @Test
  void drawing_uses_nothing() {
    mayUse("drawing");
  }

  @Test
  void draughting_uses_drawing() {
    mayUse("drawing.draughting", HOME + "drawing");
  }

  @Test
  void sheet_uses_drawing_and_workings() {
    mayUse("sheet", HOME + "drawing", "org.stoutwork.working");
  }

  @Test
  void finished_pages_use_drawing_and_sheet() {
    mayUse("sheet.page", HOME + "drawing", HOME + "sheet");
  }

  @Test
  void formulas_use_drawing_workings_and_quantities() {
    mayUse("sheet.math", HOME + "drawing", "org.stoutwork.working", "org.stoutwork.quantity");
  }

  @Test
  void layout_uses_sheet_and_drawing_but_no_way_of_printing() {
    mayUse(
        "sheet.layout",
        HOME + "drawing",
        HOME + "sheet",
        HOME + "sheet.page",
        HOME + "sheet.math",
        "org.stoutwork.working",
        "org.stoutwork.quantity",
        "org.stoutwork.source");
  }

  @Test
  void only_pdf_knows_the_library_that_writes_pdf() {
    noClasses()
        .that()
        .resideOutsideOfPackage(HOME + "pdf")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.lowagie..")
        .check(CLASSES);
  }
}
