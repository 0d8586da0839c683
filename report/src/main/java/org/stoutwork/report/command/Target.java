package org.stoutwork.report.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where data are to go: to a file, or to standard output for {@code -}.
 *
 * @param file the file; empty for standard output
 */
public record Target(Optional<Path> file) {

  /**
   * Reads an argument.
   *
   * @param argument a file name or {@code -}
   * @return the target
   * @throws Ending when it is neither
   */
  public static Target of(String argument) throws Ending {
    return argument.equals("-")
        ? new Target(Optional.empty())
        : new Target(Optional.of(path(argument)));
  }

  /**
   * Reads a file name.
   *
   * @param argument the name
   * @return the path
   * @throws Ending when it cannot be the name of a file
   */
  public static Path path(String argument) throws Ending {
    try {
      if (argument.isBlank()) {
        throw new Ending(ExitCode.BAD_INPUT, "the name of a file is empty; give a name");
      }
      return Path.of(argument);
    } catch (InvalidPathException e) {
      throw new Ending(ExitCode.BAD_INPUT, argument + " cannot be the name of a file");
    }
  }

  /** Whether the data go to standard output. */
  public boolean isOut() {
    return file.isEmpty();
  }

  /**
   * Writes the data.
   *
   * @param text the data
   * @param console standard output
   * @throws Ending when the file cannot be written
   */
  public void write(String text, Console console) throws Ending {
    if (file.isPresent()) {
      OutputFile.write(file.get(), text);
    } else {
      console.out().print(text);
      console.out().flush();
      if (console.out().checkError()) {
        throw new Ending(ExitCode.BAD_INPUT, "standard output cannot be written");
      }
    }
  }
}
