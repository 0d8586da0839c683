package org.stoutwork.source;

import java.util.Objects;

/**
 * A citation: the document, the place in it, and the mark that says how far it was checked.
 *
 * @param document title with edition, or a plain statement such as "statics"; never blank
 * @param place clause, table, equation or page; empty where the document is short
 * @param mark how far the place was checked
 */
public record Source(String document, String place, Mark mark) {

  /**
   * @throws IllegalArgumentException if the document is blank
   */
  public Source {
    Objects.requireNonNull(mark, "mark");
    if (document.isBlank()) {
      throw new IllegalArgumentException("a source needs a document; it was blank");
    }
    Objects.requireNonNull(place, "place");
  }

  /** A place read in the named document. */
  public static Source published(String document, String place) {
    return new Source(document, place, Mark.PUBLISHED);
  }

  /** A place of the named document that was recalled and not read again. */
  public static Source fromMemory(String document, String place) {
    return new Source(document, place, Mark.FROM_MEMORY);
  }

  /** A result of statics, elasticity or arithmetic; says from what. */
  public static Source derived(String from) {
    return new Source(from, "", Mark.DERIVED);
  }

  /** A fact of the trade without a publication. */
  public static Source commonPractice(String what) {
    return new Source(what, "", Mark.COMMON_PRACTICE);
  }

  /** A choice of this project; says why. */
  public static Source projectDefault(String why) {
    return new Source(why, "", Mark.PROJECT_DEFAULT);
  }

  /** A value entered by the user; says where. */
  public static Source yours(String where) {
    return new Source(where, "", Mark.YOURS);
  }

  /** The citation in one line: document, place and mark. */
  public String line() {
    String where = place.isEmpty() ? document : document + ", " + place;
    return where + " (" + mark.words() + ")";
  }
}
