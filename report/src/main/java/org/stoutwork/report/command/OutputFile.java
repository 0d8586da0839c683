package org.stoutwork.report.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all: into a new file beside it, which then takes its place. A file
 * that was there before stays as it was until then.
 */
public final class OutputFile {

  private OutputFile() {}

  /**
   * Checks before the work is done that a file may be written later.
   *
   * @param target the file to be written
   * @param input the file that is read, never to be written over
   * @throws Ending when it cannot be written
   */
  public static void check(Path target, Path input) throws Ending {
    if (Files.isDirectory(target)) {
      throw cannot(target, "it is a directory; give the name of a file");
    }
    Path folder = folder(target);
    if (!Files.isDirectory(folder)) {
      throw cannot(target, "the directory " + folder + " does not exist; make it first");
    }
    try {
      if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
        throw cannot(target, "it is the input; give another name");
      }
    } catch (IOException e) {
      throw cannot(target, "it cannot be compared with the input (" + reason(e) + ")");
    }
  }

  /**
   * Writes a text in UTF-8.
   *
   * @param target the file
   * @param text its content
   * @throws Ending when it cannot be written
   */
  public static void write(Path target, String text) throws Ending {
    write(target, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes.
   *
   * @param target the file
   * @param bytes its content
   * @throws Ending when it cannot be written
   */
  public static void write(Path target, byte[] bytes) throws Ending {
    try {
      Path fresh = sibling(target);
      try {
        Files.write(fresh, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        move(fresh, target);
      } finally {
        Files.deleteIfExists(fresh);
      }
    } catch (IOException e) {
      throw cannot(target, reason(e));
    }
  }

  /** A name of its own; not a temporary file of the system, which others could not read. */
  private static Path sibling(Path target) {
    return folder(target).resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
  }

  private static void move(Path fresh, Path target) throws IOException {
    try {
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path folder(Path target) {
    Path parent = target.toAbsolutePath().getParent();
    return parent == null ? target.toAbsolutePath() : parent;
  }

  private static String reason(IOException e) {
    return e.getClass().getSimpleName().replace("Exception", "");
  }

  private static Ending cannot(Path target, String why) {
    return new Ending(ExitCode.BAD_INPUT, target + " cannot be written: " + why);
  }
}
