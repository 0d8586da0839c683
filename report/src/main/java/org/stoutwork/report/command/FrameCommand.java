package org.stoutwork.report.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.stoutwork.report.file.field.FileReading.Outcome;
import org.stoutwork.report.file.frame.FrameAnswers;
import org.stoutwork.report.file.frame.FrameFile;
import org.stoutwork.report.file.frame.FrameFileReader;
import org.stoutwork.report.file.frame.FrameResultsWriter;
import org.stoutwork.report.file.tree.UnreadableFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code frame}: solves any frame given as a frame file. */
@Command(
    name = "frame",
    description = "Solves a frame described in a frame file (JSON or YAML; N, mm, MPa).",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    footer = {
      "",
      "Exit codes: 0 solved, 2 wrong input or arguments, 3 analysis refused",
      "(a part can move without resistance, or no state of contact lasts).",
      "",
      "Example: stoutwork frame rack.json --results rack-results.json"
    })
final class FrameCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "FRAME.json", description = "The frame file.")
  private String input;

  @Option(
      names = "--results",
      paramLabel = "OUT.json|-",
      description = "Write all results as JSON to a file, or with - to standard output.")
  private String results;

  FrameCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Ending, UnreadableFile {
    Path file = Target.path(input);
    Target target = results == null ? null : Target.of(results);
    if (target != null && target.file().isPresent()) {
      OutputFile.check(target.file().get(), file);
    }
    Outcome<FrameFile> read = FrameFileReader.read(file);
    FrameAnswers answers = FrameSolving.solve(read.value());
    boolean dataOnOut = target != null && target.isOut();
    if (target != null) {
      target.write(FrameResultsWriter.json(read.value(), answers), console);
    }
    FrameTable.print(read, answers, console.people(dataOnOut));
    return ExitCode.DONE;
  }
}
