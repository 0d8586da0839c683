package org.stoutwork.source;

/**
 * How far a value's origin was checked. One list for the whole product, ordered from the firmest to
 * the least firm ground.
 */
public enum Mark {
  /** Worked out from marked values by statics, elasticity or arithmetic. */
  DERIVED("derived"),
  /** Read in the named document. */
  PUBLISHED("published"),
  /** Entered by the user, who answers for it. */
  YOURS("yours"),
  /** Of a named document, but not read again when it was entered here. */
  FROM_MEMORY("from memory"),
  /** What the trade does; no publication found. */
  COMMON_PRACTICE("common practice, no source"),
  /** A choice of this project, nobody's standard; meant to be replaced by the user. */
  PROJECT_DEFAULT("project default");

  private final String words;

  Mark(String words) {
    this.words = words;
  }

  /** The mark as it is printed. */
  public String words() {
    return words;
  }

  /** Whether a result that rests on this value should be looked up before it is relied on. */
  public boolean wantsLookingUp() {
    return this == FROM_MEMORY || this == COMMON_PRACTICE;
  }

  /**
   * What a value worked out from values of this mark may claim: it was not itself read anywhere.
   */
  public Mark ofWorkedOut() {
    return this == PUBLISHED ? DERIVED : this;
  }

  /** The less firm of this mark and another: what a result made from both may claim. */
  public Mark weaker(Mark other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
