package org.stoutwork.check;

import org.stoutwork.analysis.solve.Loose;

/**
 * A bench that cannot be analysed: a part of it moves without any resistance. This is a fault of
 * the description, such as a joint whose stated stiffness leaves a direction free, or of the way in
 * which the program models it; either way there is no result to report.
 */
public final class LooseBench extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  private final String part;
  private final String direction;

  LooseBench(Loose loose) {
    super(words(loose));
    this.part = part(loose);
    this.direction = loose.direction();
  }

  private static String words(Loose loose) {
    return "the bench cannot stand as it is described: next to nothing keeps the %s from %s. Its joints"
            .formatted(part(loose), motion(loose.direction()))
        + " turn too freely: glue them, choose a joint that resists turning, or add a rail or a"
        + " stretcher whose joints do.";
  }

  /** Nodes and pieces are named by their part and a place in it, which no maker knows. */
  private static String part(Loose loose) {
    return loose.part().replaceFirst("( at [\\d.]+|, length \\d+| \\d+\\.\\d+)$", "");
  }

  private static String motion(String direction) {
    return switch (direction) {
      case "along x" -> "sliding along the bench";
      case "along y" -> "sliding across the bench";
      case "along z" -> "rising";
      case "about x" -> "swinging across the bench";
      case "about y" -> "swinging along the bench";
      default -> "turning (" + direction + ")";
    };
  }

  /** The part that moves most, as the sheet names it. */
  public String part() {
    return part;
  }

  /** How it moves, in words: {@code along x}, {@code about z}. */
  public String direction() {
    return direction;
  }
}
