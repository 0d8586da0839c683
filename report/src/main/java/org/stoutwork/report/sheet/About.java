package org.stoutwork.report.sheet;

import java.time.Instant;
import java.util.Locale;

/**
 * What a file says about itself without being printed.
 *
 * @param title shown in the window's title; never blank
 * @param subject one sentence on what the sheet covers
 * @param program name and version of the program that made it
 * @param language of the text, as a BCP 47 tag such as {@code en-GB}
 * @param issued moment of issue, taken from the input and never from a clock
 * @param fingerprint of the input, so that a print belongs to a known input
 */
public record About(
    String title,
    String subject,
    String program,
    String language,
    Instant issued,
    String fingerprint) {

  /**
   * @throws IllegalArgumentException if title or language is blank
   */
  public About {
    if (title.isBlank() || language.isBlank()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a sheet needs a title and a language; \"%s\" and \"%s\" were given",
              title,
              language));
    }
  }
}
