package org.stoutwork.report.file.tree;

/**
 * One mistake in a file, complete enough to repair it.
 *
 * @param spot where it is
 * @param keyPath the key concerned; empty when the text itself cannot be understood
 * @param given what is there, as the middle of a sentence: {@code is "9 mum"}, {@code is missing}
 * @param allowed what would be right, as a clause: {@code a length such as `120 mm` is needed}
 * @param suggestion a whole sentence that offers a repair, or empty
 * @param excerpt the offending line with a caret below, or empty
 */
public record Fault(
    Spot spot, String keyPath, String given, String allowed, String suggestion, String excerpt) {

  /**
   * A fault of one key.
   *
   * @param spot where it is
   * @param path the key concerned
   * @param given what is there, as the middle of a sentence
   * @param allowed what would be right, as a clause
   * @param suggestion a whole sentence that offers a repair, or empty
   * @return the fault
   */
  public static Fault of(Spot spot, KeyPath path, String given, String allowed, String suggestion) {
    return new Fault(spot, path.toString(), given, allowed, suggestion, "");
  }

  /**
   * A fault of the file as a whole.
   *
   * @param file the name the file is called by
   * @param given what is there, as the middle of a sentence about the file
   * @param allowed what would be right, as a clause
   * @return the fault
   */
  public static Fault ofFile(String file, String given, String allowed) {
    return new Fault(Spot.wholeFile(file), "the file", given, allowed, "", "");
  }

  /** The sentence without the spot. */
  public String sentence() {
    String subject = keyPath.isEmpty() ? given : keyPath + " " + given;
    return subject + "; " + allowed + "." + (suggestion.isEmpty() ? "" : " " + suggestion);
  }

  /** Spot, two blanks, sentence; below it the excerpt, if there is one. */
  @Override
  public String toString() {
    return spot + "  " + sentence() + (excerpt.isEmpty() ? "" : "\n" + excerpt);
  }
}
