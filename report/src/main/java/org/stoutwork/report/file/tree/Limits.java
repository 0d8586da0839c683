package org.stoutwork.report.file.tree;

/**
 * How much a file may hold. A file beyond it is refused before it is taken apart.
 *
 * @param bytes largest size in bytes, at least 1
 * @param depth deepest nesting of maps and lists, 1 to 200
 */
public record Limits(int bytes, int depth) {

  /** One million bytes, 32 levels: far beyond any file written by hand. */
  public static final Limits STANDARD = new Limits(1_000_000, 32);

  /** Checks the values. */
  public Limits {
    if (bytes < 1) {
      throw new IllegalArgumentException(
          "the size limit is " + bytes + "; at least 1 byte is needed");
    }
    if (depth < 1 || depth > 200) {
      throw new IllegalArgumentException("the depth limit is " + depth + "; use 1 to 200");
    }
  }
}
