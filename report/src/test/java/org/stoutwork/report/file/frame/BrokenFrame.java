package org.stoutwork.report.file.frame;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * A frame file with one thing changed for the worse.
 *
 * @param what the mistake, as a sentence
 * @param right the part of the right file that is replaced; empty to replace the whole
 * @param wrong what stands in its place
 * @param refusal who refuses it
 * @param message the whole message
 */
record BrokenFrame(String what, String right, String wrong, Refusal refusal, String message) {

  /** Who refuses. */
  enum Refusal {
    /** The reader and the schema. */
    BOTH,
    /** The reader alone: a schema knows no names and no geometry. */
    READER_ONLY,
    /** The reader, and a parser of strict JSON before the schema is asked. */
    READER_AND_PARSER
  }

  /** The right file. */
  static String rightText() {
    try (InputStream in = BrokenFrame.class.getResourceAsStream("rack.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The broken file. */
  String text() {
    String whole = rightText();
    if (right.isEmpty()) {
      return wrong;
    }
    int at = whole.indexOf(right);
    if (at < 0) {
      throw new IllegalStateException("the right file does not hold " + right);
    }
    return whole.substring(0, at) + wrong + whole.substring(at + right.length());
  }

  @Override
  public String toString() {
    return what;
  }
}
