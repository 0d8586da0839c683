package org.stoutwork.report.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * What one run of the program left.
 *
 * @param exitCode that it ended with
 * @param out what stood on standard output
 * @param err what stood on standard error
 */
record Run(int exitCode, String out, String err) {

  static Run of(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int exitCode = Stoutwork.run(console, arguments);
    return new Run(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
