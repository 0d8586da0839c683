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
import org.stoutwork.study.Examination;
import org.stoutwork.study.GoverningModel;
import picocli.CommandLine.Option;

/** The options of {@code check} that say where data go. */
final class CheckOutputs {

  @Option(
      names = "--results",
      paramLabel = "OUT.json|-",
      description = "Write all results as JSON to a file, or with - to standard output.")
  private String results;

  @Option(
      names = "--model",
      paramLabel = "OUT.json",
      description = {
        "Write the frame behind the most used check as a frame file: joints at their mean"
            + " stiffness, the governing loads where they stand. Into a directory: one frame"
            + " file for the governing check of each topic."
      })
  private String model;

  /** Checks every name before the work is done. */
  Targets targets(Path input) throws Ending {
    Optional<Target> toResults =
        results == null ? Optional.empty() : Optional.of(Target.of(results));
    Optional<Path> toModel = model == null ? Optional.empty() : Optional.of(file("--model", model));
    Set<Path> taken = new HashSet<>();
    if (toResults.isPresent() && toResults.get().file().isPresent()) {
      reserve(toResults.get().file().get(), input, taken);
    }
    if (toModel.isPresent() && !Files.isDirectory(toModel.get())) {
      reserve(toModel.get(), input, taken);
    }
    return new Targets(toResults, toModel);
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
   * @param results to a file or standard output
   * @param model to a file or a directory
   */
  record Targets(Optional<Target> results, Optional<Path> model) {

    /** Whether standard output carries data. */
    boolean dataOnOut() {
      return results.map(Target::isOut).orElse(false);
    }

    /** What was written, for the summary. */
    List<String> words() {
      List<String> words = new ArrayList<>();
      results.flatMap(Target::file).ifPresent(path -> words.add("Results: " + path));
      model.ifPresent(path -> words.add("Model: " + path));
      return words;
    }

    /** Makes everything first, so that a fault leaves no output half done; then writes. */
    void write(Examination examination, Console console) throws Ending {
      Map<Path, byte[]> files = new LinkedHashMap<>();
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
