package org.stoutwork.fastener;

import org.stoutwork.source.Source;

/** The documents that fastener and joint formulas are recalled from, each named once. */
public final class Documents {

  private Documents() {}

  /** A clause of EN 1995-1-1 that was recalled, not read again. */
  public static Source ec5(String clause) {
    return Source.fromMemory("EN 1995-1-1:2004+A1:2008", clause);
  }

  /** A clause of the National Design Specification that was recalled, not read again. */
  public static Source nds(String clause) {
    return Source.fromMemory("ANSI/AWC NDS 2018", clause);
  }

  /** A place of the timber frame standard that was recalled, not read again. */
  public static Source tfec(String place) {
    return Source.fromMemory("TFEC 1 Standard for Design of Timber Frame Structures", place);
  }

  /** A place of the Wood Handbook that was recalled, not read again. */
  public static Source woodHandbook(String place) {
    return Source.fromMemory("Wood Handbook (FPL-GTR-190)", place);
  }

  /** A formula of beam theory, elasticity or statics. */
  public static Source textbook(String what) {
    return Source.derived(what);
  }
}
