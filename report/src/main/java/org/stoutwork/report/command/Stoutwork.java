package org.stoutwork.report.command;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.UnreadableFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The program. Each of its commands is a class of its own; a new one joins the list in {@link
 * #commands}.
 */
@Command(
    name = "stoutwork",
    description = "Tells whether a joined-timber workbench will hold, before wood is cut.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Exit codes: 0 all adequate or done, 1 something inadequate,",
      "2 wrong input or arguments, 3 analysis refused or a fault of the program.",
      "",
      "Example: stoutwork check bench.yaml"
    })
public final class Stoutwork implements Callable<Integer> {

  @Spec private CommandSpec spec;

  private Stoutwork() {}

  private static List<Object> commands(Console console) {
    return List.of(new CheckCommand(console), new FrameCommand(console), new WoodCommand(console));
  }

  /**
   * Runs the program and, unless all is well, ends the virtual machine with its exit code.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int exitCode = run(new Console(out, err), arguments);
    if (exitCode != ExitCode.DONE) {
      System.exit(exitCode);
    }
  }

  /**
   * Runs the program.
   *
   * @param console where it writes
   * @param arguments the command line
   * @return its exit code
   */
  public static int run(Console console, String... arguments) {
    CommandLine line = new CommandLine(new Stoutwork());
    commands(console).forEach(line::addSubcommand);
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setParameterExceptionHandler(Stoutwork::wrongArguments);
    line.setExecutionExceptionHandler((exception, failed, parsed) -> ended(exception, console));
    try {
      return line.execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError e) {
      console.err().println("the program's memory does not suffice for this input");
      return ExitCode.REFUSED;
    }
  }

  /** Without a command there is nothing to do but to explain. */
  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }

  private static int wrongArguments(ParameterException exception, String... arguments) {
    CommandLine line = exception.getCommandLine();
    line.getErr().println(exception.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(exception, line.getErr());
    line.getErr()
        .println("`" + line.getCommandSpec().qualifiedName() + " --help` shows how to write it.");
    return ExitCode.BAD_INPUT;
  }

  /**
   * The mistakes of a file; further lines of one are set in, what quotes the file is left alone.
   */
  private static List<String> mistakes(UnreadableFile unreadable) {
    List<String> lines = new ArrayList<>();
    for (Fault fault : unreadable.faults()) {
      lines.addAll(TextFlow.lines(fault.spot() + "  ", 4, fault.sentence()));
      fault.excerpt().lines().forEach(lines::add);
    }
    TextFlow.lines("", 0, unreadable.rest()).forEach(lines::add);
    return lines;
  }

  private static int ended(Exception exception, Console console) {
    if (exception instanceof Ending ending) {
      console.err().println(ending.getMessage());
      return ending.exitCode();
    }
    if (exception instanceof UnreadableFile unreadable) {
      mistakes(unreadable).forEach(console.err()::println);
      return ExitCode.BAD_INPUT;
    }
    String message = String.valueOf(exception.getMessage()).replaceAll("\\s+", " ");
    console
        .err()
        .println(
            "a fault of the program, not of the input: "
                + exception.getClass().getSimpleName()
                + ": "
                + message);
    return ExitCode.REFUSED;
  }
}
