package org.stoutwork.report.sheet;

import java.util.List;
import java.util.Locale;
import org.stoutwork.report.drawing.RichText;

/**
 * Running head and foot of every page. Each text is markup; {@code {page}} and {@code {pages}}
 * stand for the numbers. "Page n of N" is always printed at the right of the foot.
 *
 * @param headLeft one or two lines
 * @param headRight one or two lines
 * @param footLeft one line, may be empty
 */
public record Furniture(List<RichText> headLeft, List<RichText> headRight, RichText footLeft) {

  /**
   * @throws IllegalArgumentException if a head has more than two lines
   */
  public Furniture {
    headLeft = List.copyOf(headLeft);
    headRight = List.copyOf(headRight);
    if (headLeft.size() > 2 || headRight.size() > 2) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a running head has at most two lines a side; %d and %d were given",
              headLeft.size(),
              headRight.size()));
    }
  }

  /** A head of one line a side and a foot, as markup. */
  public static Furniture of(String left, String right, String foot) {
    return new Furniture(
        List.of(RichText.of(left)), List.of(RichText.of(right)), RichText.of(foot));
  }
}
