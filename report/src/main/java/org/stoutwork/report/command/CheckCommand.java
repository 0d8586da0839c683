package org.stoutwork.report.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.stoutwork.check.LooseBench;
import org.stoutwork.report.file.bench.BenchFile;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.result.ResultWriter;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.Verdict;
import org.stoutwork.study.BenchCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check}: reads a bench file, checks the bench, and says whether it will hold. */
@Command(
    name = "check",
    description = "Checks a bench described in a bench file (YAML or JSON).",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Exit codes: 0 all adequate (marginal included), 1 something inadequate,",
      "2 wrong input or arguments, 3 analysis refused (a part can move without",
      "resistance) or a fault of the program.",
      "",
      "Example: stoutwork check bench.yaml --results bench-results.json"
    })
final class CheckCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "BENCH.yaml", description = "The bench file.")
  private String input;

  @Option(
      names = "--results",
      paramLabel = "OUT.json|-",
      description = "Write all results as JSON to a file, or with - to standard output.")
  private String results;

  @Option(
      names = "--units",
      paramLabel = "si|inch-pound",
      defaultValue = "si",
      converter = UnitSystem.Converter.class,
      description = "Units of the summary: si (if not given) or inch-pound.")
  private UnitSystem units;

  @Option(
      names = "--full",
      description = "List every check, every value filled in and every caution.")
  private boolean full;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Ending, UnreadableFile {
    Path file = Target.path(input);
    Optional<Target> toResults =
        results == null ? Optional.empty() : Optional.of(Target.of(results));
    if (toResults.isPresent() && toResults.get().file().isPresent()) {
      OutputFile.check(toResults.get().file().get(), file);
    }
    BenchResult result = check(file);
    List<String> lines = new ArrayList<>(CheckSummary.lines(result, units, full));
    if (toResults.isPresent()) {
      toResults.get().write(ResultWriter.json(result), console);
      toResults.get().file().ifPresent(path -> lines.add("Results: " + path));
    }
    PrintStream people = console.people(toResults.isPresent() && toResults.get().isOut());
    lines.forEach(people::println);
    people.flush();
    return result.verdict() == Verdict.INADEQUATE ? ExitCode.INADEQUATE : ExitCode.DONE;
  }

  private BenchResult check(Path file) throws Ending, UnreadableFile {
    BenchCheck check = BenchCheck.load();
    BenchFile bench = BenchFileReader.read(file, check.woods());
    try {
      BenchResult result = check.with(bench.woods()).run(bench.bench());
      if (!result.selfCheck().holds()) {
        throw new Ending(
            ExitCode.REFUSED,
            "the analysis does not balance: equilibrium error "
                + result.selfCheck().equilibriumError()
                + "; its figures are not to be used");
      }
      return result;
    } catch (LooseBench loose) {
      throw new Ending(ExitCode.REFUSED, loose.getMessage());
    }
  }
}
