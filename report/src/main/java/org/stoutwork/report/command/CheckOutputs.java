package org.stoutwork.report.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.report.file.result.ModelFile;
import org.stoutwork.report.file.result.ResultWriter;
import org.stoutwork.report.print.BenchSheet;
import org.stoutwork.report.sheet.Paper;
import org.stoutwork.report.sheet.bench.SheetOptions;
import org.stoutwork.report.units.UnitSystem;
import org.stoutwork.study.Examination;
import org.stoutwork.study.GoverningModel;
import picocli.CommandLine.Option;

/** The options of {@code check} that say what is written, where and how. */
final class CheckOutputs {

  @Option(
      names = "--sheet",
      paramLabel = "OUT.pdf",
      description = "Write the check sheet, to be followed line by line and signed.")
  private String sheet;

  @Option(
      names = "--results",
      paramLabel = "OUT.json|-",
      description = "Write all results as JSON to a file, or with - to standard output.")
  private String results;

  @Option(
      names = "--model",
      paramLabel = "OUT.json",
      description = {
        "Write the frame behind the governing check as a frame file: joints at their mean"
            + " stiffness, the governing loads where they stand. Into a directory: one frame"
            + " file for the governing check of each topic."
      })
  private String model;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      defaultValue = "a4",
      converter = PaperWord.class,
      description = "Paper of the sheet; a4 if not given.")
  private Paper paper;

  @Option(
      names = "--units",
      paramLabel = "si|inch-pound",
      defaultValue = "si",
      converter = UnitsWord.class,
      description =
          "Units of the summary and the sheet; si if not given. Formulas, results and models are"
              + " always in SI units.")
  private UnitSystem units;

  /** Reads the name of a paper. */
  static final class PaperWord extends OneOf<Paper> {
    PaperWord() {
      super(Map.of("a4", Paper.A4, "letter", Paper.LETTER));
    }
  }

  /** Reads the name of a system of units. */
  static final class UnitsWord extends OneOf<UnitSystem> {
    UnitsWord() {
      super(Map.of("si", UnitSystem.SI, "inch-pound", UnitSystem.INCH_POUND));
    }
  }

  UnitSystem units() {
    return units;
  }

  /** Checks every name before the work is done. */
  Targets targets(Path input) throws Ending {
    Optional<Target> toResults =
        results == null ? Optional.empty() : Optional.of(Target.of(results));
    Optional<Path> toSheet = sheet == null ? Optional.empty() : Optional.of(file("--sheet", sheet));
    Optional<Path> toModel = model == null ? Optional.empty() : Optional.of(file("--model", model));
    Set<Path> taken = new HashSet<>();
    if (toResults.isPresent() && toResults.get().file().isPresent()) {
      reserve(toResults.get().file().get(), input, taken);
    }
    if (toSheet.isPresent()) {
      reserve(toSheet.get(), input, taken);
    }
    if (toModel.isPresent() && !Files.isDirectory(toModel.get())) {
      reserve(toModel.get(), input, taken);
    }
    return new Targets(
        toSheet, toResults, toModel, new SheetOptions(paper, units, Version.number()));
  }

  private static Path file(String option, String name) throws Ending {
    if (name.equals("-")) {
      throw new Ending(
          ExitCode.BAD_INPUT, option + " needs the name of a file; only --results takes -");
    }
    return Target.path(name);
  }

  private static void reserve(Path target, Path input, Set<Path> taken) throws Ending {
    OutputFile.check(target, input);
    if (!taken.add(target.toAbsolutePath().normalize())) {
      throw new Ending(
          ExitCode.BAD_INPUT, target + " is named for two outputs; give each a name of its own");
    }
  }

  /**
   * Where data go.
   *
   * @param sheet to a file
   * @param results to a file or standard output
   * @param model to a file or a directory
   * @param options of the sheet
   */
  record Targets(
      Optional<Path> sheet, Optional<Target> results, Optional<Path> model, SheetOptions options) {

    /** Whether standard output carries data. */
    boolean dataOnOut() {
      return results.map(Target::isOut).orElse(false);
    }

    /** What was written, for the summary. */
    List<String> words() {
      List<String> words = new ArrayList<>();
      sheet.ifPresent(path -> words.add("Sheet: " + path));
      results.flatMap(Target::file).ifPresent(path -> words.add("Results: " + path));
      model.ifPresent(path -> words.add("Model: " + path));
      return words;
    }

    /** Makes everything first, so that a fault leaves no output half done; then writes. */
    void write(Examination examination, Console console) throws Ending {
      Map<Path, byte[]> files = new LinkedHashMap<>();
      if (sheet.isPresent()) {
        files.put(sheet.get(), BenchSheet.pdf(examination.result(), options));
      }
      if (model.isPresent()) {
        models(examination, model.get(), files);
      }
      Optional<String> json = results.map(target -> ResultWriter.json(examination.result()));
      for (Map.Entry<Path, byte[]> file : files.entrySet()) {
        OutputFile.write(file.getKey(), file.getValue());
      }
      if (json.isPresent()) {
        results.orElseThrow().write(json.get(), console);
      }
    }

    private static void models(Examination examination, Path path, Map<Path, byte[]> files)
        throws Ending {
      List<GoverningModel> models = examination.governingModels();
      if (models.isEmpty()) {
        throw new Ending(ExitCode.REFUSED, "no check of this bench rests on a frame");
      }
      boolean all = Files.isDirectory(path);
      for (GoverningModel each : all ? models : models.subList(0, 1)) {
        String text = ModelFile.json(examination.result().bench().name(), each);
        Path file = all ? path.resolve(each.check().key() + ".json") : path;
        files.put(file, text.getBytes(StandardCharsets.UTF_8));
      }
    }
  }
}
