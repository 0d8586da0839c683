package org.stoutwork.report.sheet;

import java.util.List;

/**
 * Ruled lines to sign on: for every role a name, a qualification, a signature and a date, boxes for
 * the opinion and a line for a comment. Nothing in it is ever filled in by the program.
 *
 * @param roles one or more, each with the words that stand over its lines
 */
public record SignOff(List<String> roles) implements Block {

  /**
   * @throws IllegalArgumentException if there is no role
   */
  public SignOff {
    roles = List.copyOf(roles);
    if (roles.isEmpty()) {
      throw new IllegalArgumentException("a sign-off needs at least one role; none was given");
    }
  }

  /** A sign-off for the given roles. */
  public static SignOff of(String... roles) {
    return new SignOff(List.of(roles));
  }
}
