package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Limits;
import org.stoutwork.report.file.tree.SourceReader;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/** Whatever a file holds, the outcome is a bench or a list of faults, and nothing else. */
class BenchFuzzTest {

  private static final WoodCatalogue WOODS = WoodCatalogue.load();
  private static final List<String> EXAMPLES = examples();
  private static final Pattern VALUE = Pattern.compile("(?<=: |\\[|, )[^\\s\\[{,#][^,\\]}#\\n]*");
  private static final Pattern LINE = Pattern.compile("(?m)^.*\\n");

  /**
   * A change of a text.
   *
   * @param at which place, as a part of all there are
   * @param added what comes there
   */
  private record Change(double at, String added) {

    private String in(String text, Pattern pattern) {
      List<MatchResult> places = pattern.matcher(text).results().toList();
      if (places.isEmpty()) {
        return text;
      }
      MatchResult place = places.get((int) (at * places.size()));
      return text.substring(0, place.start()) + added + text.substring(place.end());
    }

    private String inside(String text) {
      int from = (int) (at * text.length());
      int to = Math.min(text.length(), from + added.length());
      return text.substring(0, from) + added + text.substring(to);
    }
  }

  private static List<String> examples() {
    try {
      List<String> texts = new ArrayList<>(List.of(BrokenBench.SOUND, BrokenBench.LISTED));
      for (Path file : ExampleFilesTest.examples()) {
        texts.add(Files.readString(file));
      }
      return List.copyOf(texts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void benchOrFaults(String text) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      BenchFile read =
          BenchFileReader.read(SourceReader.decode("bench.yaml", bytes, Limits.STANDARD), WOODS);
      assertTrue(read.bench().endFrames().size() >= 2);
    } catch (UnreadableFile e) {
      assertFalse(e.faults().isEmpty());
      for (Fault fault : e.faults()) {
        assertEquals(1, fault.sentence().lines().count(), fault.toString());
        assertTrue(fault.spot().line() >= 0 && fault.spot().column() >= 0, fault.toString());
        assertFalse(fault.given().isBlank() || fault.allowed().isBlank(), fault.toString());
        assertFalse(
            fault.sentence().matches(".*(NaN|Infinity|Optional|@[0-9a-f]{6}).*"), fault.toString());
      }
    }
  }

  @Property(tries = 1500)
  void example_files_with_other_values_give_a_bench_or_faults(
      @ForAll("example") String text, @ForAll("changes") List<Change> changes) {
    String changed = text;
    for (Change change : changes) {
      changed = change.in(changed, VALUE);
    }
    benchOrFaults(changed);
  }

  @Property(tries = 700)
  void example_files_with_lines_left_out_give_a_bench_or_faults(
      @ForAll("example") String text, @ForAll("gaps") List<Change> gaps) {
    String changed = text;
    for (Change gap : gaps) {
      changed = gap.in(changed, LINE);
    }
    benchOrFaults(changed);
  }

  @Property(tries = 700)
  void example_files_written_over_give_a_bench_or_faults(
      @ForAll("example") String text, @ForAll("changes") List<Change> changes) {
    String changed = text;
    for (Change change : changes) {
      changed = change.inside(changed);
    }
    benchOrFaults(changed);
  }

  @Provide
  Arbitrary<String> example() {
    return Arbitraries.of(EXAMPLES);
  }

  @Provide
  Arbitrary<List<Change>> changes() {
    return change(values()).list().ofMinSize(1).ofMaxSize(4);
  }

  @Provide
  Arbitrary<List<Change>> gaps() {
    return change(Arbitraries.of("", "", "", "\n", "- x\n")).list().ofMinSize(1).ofMaxSize(5);
  }

  private static Arbitrary<Change> change(Arbitrary<String> added) {
    Arbitrary<Double> at = Arbitraries.integers().between(0, 9999).map(n -> n / 10_000.0);
    return Combinators.combine(at, added).as(Change::new);
  }

  private static Arbitrary<String> values() {
    Arbitrary<String> odd =
        Arbitraries.of(
            "0",
            "-1",
            "1e300",
            "1e300 mm",
            "1e-300 mm",
            ".nan",
            ".inf",
            "\"\"",
            "''",
            "[]",
            "{}",
            "null",
            "~",
            "yes",
            "1 000",
            "2,5",
            "0x1F",
            "1e999 mm",
            "[1, 2, 3]",
            "{low: 1}",
            "1/0 in",
            "9 in",
            "3 kN",
            "12 %",
            "40 kN·m/rad",
            "oak",
            "none",
            "glued",
            "both",
            "{screwed: {diameter: 5, spacing: 80}}",
            "half-lap",
            "housing",
            "half-lap, screwed",
            "screwed butt",
            "bridle",
            "loose-wedge tenon, dry",
            "dowelled butt",
            "mortise and tenon, pegged",
            "- - -",
            ":",
            "over the legs",
            "middle",
            "\t",
            "*x",
            "&x 3",
            "!!int 3",
            "\u0000",
            "😀",
            "\"\\u0007\"");
    Arbitrary<String> sizes = Arbitraries.integers().between(-5, 4000).map(String::valueOf);
    Arbitrary<String> signs =
        Arbitraries.strings().withChars(" \n\t-:[]{},#&*!|>'\"%@`09azé\u2028").ofMaxLength(6);
    return Arbitraries.oneOf(odd, sizes, sizes, signs);
  }
}
