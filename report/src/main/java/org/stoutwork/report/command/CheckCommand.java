package org.stoutwork.report.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.stoutwork.check.LooseBench;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.bench.BenchFile;
import org.stoutwork.report.file.bench.BenchFileReader;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.result.SelfCheck;
import org.stoutwork.result.Verdict;
import org.stoutwork.study.BenchCheck;
import org.stoutwork.study.Examination;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
      "Example: stoutwork check bench.yaml --sheet bench-sheet.pdf"
    })
final class CheckCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "BENCH.yaml", description = "The bench file.")
  private String input;

  @Mixin private CheckOutputs outputs;

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
    CheckOutputs.Targets targets = outputs.targets(file);
    Examination examination = examine(file);
    targets.write(examination, console);
    CheckSummary.print(
        examination.result(),
        outputs.units(),
        full,
        targets.words(),
        console.people(targets.dataOnOut()));
    return examination.result().verdict() == Verdict.INADEQUATE
        ? ExitCode.INADEQUATE
        : ExitCode.DONE;
  }

  private static Examination examine(Path file) throws Ending, UnreadableFile {
    BenchCheck check = BenchCheck.load();
    BenchFile read = BenchFileReader.read(file, check.woods());
    try {
      Examination examination = check.with(read.woods()).examine(read.bench());
      SelfCheck self = examination.result().selfCheck();
      if (!self.holds()) {
        throw new Ending(
            ExitCode.REFUSED,
            "the analysis does not balance and was thrown away: equilibrium error "
                + Writing.number(self.equilibriumError(), 2)
                + ", reciprocity error "
                + Writing.number(self.reciprocityError(), 2));
      }
      return examination;
    } catch (LooseBench loose) {
      throw new Ending(ExitCode.REFUSED, loose.getMessage());
    }
  }
}
