package org.stoutwork.report.sheet;

import java.util.Arrays;
import java.util.List;
import org.stoutwork.report.drawing.RichText;

/**
 * A boxed caution.
 *
 * @param grade how grave it is
 * @param headline what it is about
 * @param body one or more paragraphs
 */
public record Caution(Grade grade, RichText headline, List<RichText> body) implements Block {

  /** Signal words in rising order, as safety signs use them. */
  public enum Grade {
    /** No harm to people. */
    NOTICE,
    /** May hurt a little. */
    CAUTION,
    /** May hurt badly. */
    WARNING,
    /** Will hurt badly if not heeded. */
    DANGER
  }

  /**
   * @throws IllegalArgumentException if there is nothing to read
   */
  public Caution {
    body = List.copyOf(body);
    if (body.isEmpty()) {
      throw new IllegalArgumentException("a caution needs at least one paragraph; none was given");
    }
  }

  /** A caution in marked-up text. */
  public static Caution of(Grade grade, String headline, String... body) {
    return new Caution(
        grade, RichText.of(headline), Arrays.stream(body).map(RichText::of).toList());
  }
}
