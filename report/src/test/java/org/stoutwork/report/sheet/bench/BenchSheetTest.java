package org.stoutwork.report.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.report.pdf.MissingGlyph;
import org.stoutwork.report.pdf.TypeCase;
import org.stoutwork.report.print.BenchSheet;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.result.ActionLine;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.Caution;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.JointLine;

class BenchSheetTest {

  private static final BenchResult CLASS = Sheets.example("class-bench");
  private static final SheetText PRINT = SheetText.of(BenchSheet.pdf(CLASS, Sheets.A4));

  @Test
  void the_first_page_says_the_verdict_what_governs_and_how_many_checks_fail() {
    String page = PRINT.pages().get(0);
    long failing =
        CLASS.checked().stream()
            .filter(c -> c.verdict() == org.stoutwork.result.Verdict.INADEQUATE)
            .count();
    assertTrue(failing > 0);
    assertTrue(page.contains(SheetText.plain("Inadequate in " + failing + " of")), page);
    assertTrue(page.contains(SheetText.plain(CLASS.worst().title())), page);
    assertTrue(page.contains(SheetText.plain(CLASS.worst().load())), page);
  }

  @Test
  void the_plate_and_the_grillage_of_the_top_stand_side_by_side() {
    assertTrue(PRINT.says("by the plate"));
    assertTrue(PRINT.says("By a grillage of strips, for comparison."));
    assertTrue(PRINT.says("the same by the grillage"));
    assertTrue(PRINT.says("what the plate gives more than the grillage, as a part of it"));
  }

  @Test
  void signatures_and_revisions_stand_on_the_second_page_and_no_name_is_filled_in() {
    String page = PRINT.pages().get(1);
    for (String words :
        new String[] {
          "Prepared",
          "Checked (not by the preparer)",
          "Approved for making",
          "Accepted after building",
          "agree with comments",
          "not agreed",
          "What changed"
        }) {
      assertTrue(page.contains(SheetText.plain(words)), words);
    }
  }

  @Test
  void every_check_stands_on_the_sheet_with_its_part() {
    assertAll(
        CLASS.checks().stream()
            .map(
                c ->
                    () -> {
                      assertTrue(PRINT.says(c.title()), c.title());
                      assertTrue(PRINT.says(c.part()), c.part());
                    }));
  }

  @Test
  void what_was_not_checked_stands_with_its_reason() {
    assertFalse(CLASS.notChecked().isEmpty());
    for (CheckResult.NotChecked check : CLASS.notChecked()) {
      assertTrue(PRINT.says(Shown.sentence(check.reason())), check.reason());
    }
  }

  @Test
  void every_caution_stands_in_full_with_its_code() {
    assertFalse(CLASS.cautions().isEmpty());
    for (Caution caution : CLASS.cautions()) {
      assertTrue(PRINT.says(caution.severity() + " " + caution.code()), caution.code());
      assertTrue(PRINT.says(caution.message()), caution.message());
    }
  }

  @Test
  void every_default_action_and_joint_is_listed() {
    assertFalse(CLASS.bench().defaults().isEmpty());
    for (DefaultTaken d : CLASS.bench().defaults()) {
      assertTrue(PRINT.says(d.key()), d.key());
      assertTrue(PRINT.says(d.reason()), d.reason());
    }
    for (ActionLine a : CLASS.actions()) {
      assertTrue(PRINT.says(Shown.sentence(a.name())), a.name());
    }
    for (JointLine j : CLASS.joints()) {
      assertTrue(PRINT.says(j.reason()), j.reason());
    }
  }

  @Test
  void checks_cautions_and_defaults_stand_word_for_word_in_what_is_set() {
    String told = Told.of(SheetContent.of(CLASS, Sheets.A4, TypeCase.open(MissingGlyph.REFUSE)));
    for (CheckResult check : CLASS.checks()) {
      assertTrue(told.contains(check.title()), check.title());
      assertTrue(told.contains(check.part()), check.part());
    }
    CLASS.notChecked().forEach(c -> assertTrue(told.contains(Shown.sentence(c.reason()))));
    CLASS.cautions().forEach(c -> assertTrue(told.contains(c.message()), c.message()));
    for (DefaultTaken d : CLASS.bench().defaults()) {
      assertTrue(told.contains(d.key()), d.key());
      assertTrue(told.contains(d.value()), d.value());
      assertTrue(told.contains(d.reason()), d.reason());
    }
  }

  private static String told(String example) {
    return Told.of(
        SheetContent.of(Sheets.example(example), Sheets.A4, TypeCase.open(MissingGlyph.REFUSE)));
  }

  @Test
  void the_limits_of_lasting_sag_and_of_a_loose_machine_stand_with_the_others() {
    // General joinery: 360 at once, over 1.4 for ever.
    String lasting = "Span over sag after years under the same, with creep, at least\n257\nS";
    assertTrue(told("class-bench").contains(lasting));
    assertTrue(told("class-bench").contains("Factor against tipping, at least\n1.5\nS"));
    String machine = "Factor against tipping with a machine that is not fixed, at least\n2\nS";
    assertTrue(told("planer-bench").contains(machine));
    assertFalse(told("planer-bench").contains("Factor against tipping, at least"));
  }

  @Test
  void a_least_measure_is_needed_and_shares_say_of_what_they_are() {
    String nuts = told("planer-bench");
    assertTrue(nuts.contains("needs\u00a028.8, has\u00a025\u00a0mm"), nuts);
    assertTrue(nuts.contains("Comparison: needs 28.8\u00a0mm, has 25\u00a0mm; utilisation"), nuts);
    String told = told("travelling-bench");
    assertTrue(told.contains(", 1 of the strength"), told);
    assertTrue(told.contains("of the rail's thickness"), told);
  }

  @Test
  void a_marginal_check_above_its_limit_is_explained_on_the_first_page() {
    String note = "Marginal though above 1";
    assertTrue(told("first-bench").contains(note));
    assertFalse(told("class-bench-improved").contains(note));
  }

  @Test
  void the_equilibrium_of_the_analyses_is_printed() {
    assertTrue(PRINT.says("equilibrium holds to"));
    assertTrue(PRINT.says(CLASS.selfCheck().analyses() + " load cases"));
  }

  @Test
  void every_page_says_whose_it_is_and_how_many_there_are() {
    int n = PRINT.pages().size();
    for (int i = 0; i < n; i++) {
      String page = PRINT.pages().get(i);
      assertTrue(page.contains("Page" + (i + 1) + "of" + n), page);
      assertTrue(page.contains(SheetText.plain("Check sheet: class bench")));
      assertTrue(page.contains("RevisionA"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-bench", "class-bench-improved", "planer-bench"})
  void examples_print_on_both_papers_without_an_empty_page(String name) {
    BenchResult result = Sheets.example(name);
    for (SheetOptions options : new SheetOptions[] {Sheets.A4, Sheets.LETTER}) {
      SheetText print = SheetText.of(BenchSheet.pdf(result, options));
      assertTrue(print.pages().size() >= 15 && print.pages().size() <= 60);
      for (int i = 0; i < print.pages().size(); i++) {
        assertTrue(print.ink().get(i) > 250, name + " page " + (i + 1) + " " + print.ink().get(i));
      }
    }
  }

  @Test
  void a_large_bench_with_long_names_and_a_tiny_one_lay_out() {
    SheetText large = SheetText.of(BenchSheet.pdf(Sheets.of(Sheets.large()), Sheets.LETTER));
    assertTrue(large.says("{third} of four_made // ^2"));
    assertTrue(large.says("upper long rail along the front of the bench"));
    SheetText tiny = SheetText.of(BenchSheet.pdf(Sheets.of(Sheets.tiny()), Sheets.A4));
    assertTrue(tiny.says("Workbench check sheet: stool"));
  }

  @Test
  void the_same_bench_gives_the_same_bytes_in_any_locale_and_time_zone() {
    byte[] usual = BenchSheet.pdf(Sheets.example("first-bench"), Sheets.LETTER);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      for (String tag : new String[] {"de", "ar-EG-u-nu-arab"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertArrayEquals(usual, BenchSheet.pdf(Sheets.example("first-bench"), Sheets.LETTER), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void the_fingerprint_changes_with_a_tenth_of_a_millimetre_and_not_without_cause() {
    String once = Fingerprint.of(Sheets.example("first-bench").bench());
    assertEquals(once, Fingerprint.of(Sheets.example("first-bench").bench()));
    String before = Fingerprint.of(Sheets.of(Sheets.tiny()).bench());
    String after =
        Fingerprint.of(
            Sheets.of(Sheets.tiny().height(org.stoutwork.quantity.Length.ofMm(420.1))).bench());
    assertFalse(before.equals(after), before);
  }

  @Test
  void inch_pound_sheets_speak_of_inches_and_give_results_of_workings_in_both() {
    SheetText print = SheetText.of(BenchSheet.pdf(CLASS, Sheets.LETTER));
    assertTrue(print.says("inch-pound units"));
    assertTrue(print.says("stands, in brackets, the same in inch-pound units"));
    org.stoutwork.working.Line.Given force =
        CLASS.checked().stream()
            .filter(c -> c.verdict() == org.stoutwork.result.Verdict.INADEQUATE)
            .flatMap(c -> c.working().lines().stream())
            .filter(org.stoutwork.working.Line.Given.class::isInstance)
            .map(org.stoutwork.working.Line.Given.class::cast)
            .filter(g -> g.symbol().unit() == org.stoutwork.quantity.Unit.N && g.value() > 10)
            .findFirst()
            .orElseThrow();
    String pounds =
        org.stoutwork.quantity.Writing.number(force.value() / 4.4482216152605, 4) + "lbf)";
    assertTrue(print.pages().stream().anyMatch(p -> p.contains("N(" + pounds)), pounds);
    assertTrue(print.says("lbf"));
    String cover = print.pages().get(0);
    assertFalse(cover.contains("mmfrom"), cover);
  }

  @Test
  void a_sheet_without_a_version_is_refused() {
    assertThrows(
        IllegalArgumentException.class, () -> new SheetOptions(Paper.A4, UnitSystem.SI, " "));
  }
}
