package org.stoutwork.report.sheet.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.People;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.About;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Furniture;
import org.stoutwork.report.sheet.Sheet;
import org.stoutwork.result.BenchResult;

/**
 * What the check sheet of a bench says: verdict, sign-off, drawings, all checks, diagrams,
 * workings, inputs and cautions, in their order, before anything is set on pages.
 */
public final class SheetContent {

  private static final String LANGUAGE = "en-GB";
  private static final int LONGEST_NAME = 48;

  private SheetContent() {}

  /**
   * The content of the sheet.
   *
   * @param result to print
   * @param options paper, units, version
   * @param measure of the type that will print it: drawings need it
   */
  public static Sheet of(BenchResult result, SheetOptions options, TextMeasure measure) {
    Matter matter = new Matter(result, options, measure);
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(CoverSection.of(matter));
    blocks.addAll(SignOffSection.of(matter));
    blocks.addAll(DrawingSection.of(matter));
    blocks.addAll(JointsSection.of(matter));
    blocks.addAll(ChecksSection.of(matter));
    blocks.addAll(ShapesSection.of(matter));
    blocks.addAll(WorkingsSection.of(matter));
    blocks.addAll(InputsSection.of(matter));
    blocks.addAll(ModelSection.of(matter));
    blocks.addAll(CautionsSection.of(matter));
    blocks.addAll(SourcesSection.of(matter));
    return new Sheet(about(matter), matter.setup(), furniture(matter), blocks);
  }

  private static About about(Matter matter) {
    String name = matter.bench().name();
    return new About(
        "Check sheet: " + (name.isBlank() ? "bench" : name),
        "Strength, stiffness and standing of a joined-timber workbench",
        program(matter),
        LANGUAGE,
        issued(matter.bench().people().date()),
        matter.fingerprint());
  }

  /** A date of the description, at the beginning of its day; without one, the epoch. */
  private static Instant issued(String date) {
    try {
      return LocalDate.parse(date.strip()).atStartOfDay(ZoneOffset.UTC).toInstant();
    } catch (DateTimeParseException e) {
      return Instant.EPOCH;
    }
  }

  static String program(Matter matter) {
    return "Stoutwork " + matter.options().version();
  }

  private static Furniture furniture(Matter matter) {
    People people = matter.bench().people();
    String project = people.project().isBlank() ? "" : shortened(people.project());
    return new Furniture(
        List.of(
            RichText.plain("Check sheet: " + shortened(matter.bench().name())),
            RichText.plain(project)),
        List.of(
            RichText.plain("Revision " + orDash(shortened(people.revision()))),
            RichText.plain("Inputs " + matter.fingerprint())),
        RichText.of("Read with the cautions on page {page:cautions}"));
  }

  private static String orDash(String text) {
    return text.isBlank() ? "\u2013" : text;
  }

  private static String shortened(String text) {
    String line = text.strip();
    return line.length() <= LONGEST_NAME
        ? line
        : line.substring(0, line.offsetByCodePoints(0, line.codePointCount(0, LONGEST_NAME))) + "…";
  }
}
