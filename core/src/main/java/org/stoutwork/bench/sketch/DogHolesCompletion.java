package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.DogHoles;
import org.stoutwork.bench.sketch.Answers.Range;
import org.stoutwork.quantity.Force;
import org.stoutwork.quantity.Length;

/** Completes the rows of dog holes, and refuses holes that do not fit the top or one another. */
final class DogHolesCompletion {

  private static final double USUAL_SIZE = 19;
  private static final double USUAL_SPACING = 100;
  private static final double USUAL_END = 150;

  /** Wood that must be left beside a hole to be one, mm. */
  private static final double LEAST = 1;

  private static final double STRONGEST_CLAMP_N = 20_000;
  private static final int MOST = 200;

  private final Answers answers;
  private final double length;
  private final double width;

  DogHolesCompletion(Answers answers, double length, double width) {
    this.answers = answers;
    this.length = length;
    this.width = width;
  }

  List<DogHoles> all(List<DogHolesSketch> given) {
    List<DogHoles> out = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      String key = "top.dogHoles[%s]".formatted(i);
      DogHoles row = row(key, given.get(i));
      for (int k = 0; k < out.size(); k++) {
        apart(key, row, k, out.get(k));
      }
      out.add(row);
    }
    return out;
  }

  private DogHoles row(String key, DogHolesSketch d) {
    DogHoles.Shape shape =
        answers.or(
            key + ".shape", d.shape, DogHoles.Shape.ROUND, DogHoles.Shape.ROUND.words(), "bored");
    Length size =
        answers.length(key + ".size", d.size, () -> USUAL_SIZE, new Range(6, 80), "a usual dog");
    double s = size.mm();
    Length fromFront =
        answers.length(
            key + ".fromFront",
            d.fromFront,
            () -> Math.min(4 * s, width / 2),
            new Range(s / 2 + LEAST, width - s / 2 - LEAST),
            "four times the hole, or the middle of a narrow top");
    Length fromLeft =
        answers.length(
            key + ".fromLeft",
            d.fromLeft,
            () -> Math.min(USUAL_END, length / 2),
            new Range(s / 2 + LEAST, length - s / 2 - LEAST),
            "enough wood beyond the first hole for usual work");
    Length spacing =
        answers.length(
            key + ".spacing",
            d.spacing,
            () -> Math.max(USUAL_SPACING, 3 * s),
            new Range(0, length),
            "within the run of a usual vise");
    if (spacing.mm() < s + LEAST) {
      answers.fault(
          key + ".spacing",
          spacing.toString(),
          "%s or more, or the holes run into one another".formatted(Length.ofMm(s + LEAST)));
      spacing = Length.ofMm(2 * s);
    }
    double apart = spacing.mm();
    double end = Math.max(fromLeft.mm(), s / 2 + LEAST);
    int fit = (int) Math.max(1, Math.floor((length - fromLeft.mm() - end) / apart + 1e-9) + 1);
    int usual = Math.min(MOST, fit);
    int count =
        answers.or(
            key + ".count",
            d.count,
            usual,
            Integer.toString(usual),
            "as many as fit with the same wood beyond the last hole");
    int most = (int) Math.floor((length - s / 2 - LEAST - fromLeft.mm()) / apart) + 1;
    if (count < 1 || count > Math.min(MOST, most)) {
      answers.fault(
          key + ".count",
          Integer.toString(count),
          "1 to %s fit between the first hole and the right end".formatted(Math.min(MOST, most)));
      count = 1;
    }
    Force clamp =
        answers.or(
            key + ".clampForce",
            d.clampForce,
            Force.ofNewtons(2000),
            "2 kN",
            "more bends the work up between its dogs");
    if (clamp.newtons() < 0 || clamp.newtons() > STRONGEST_CLAMP_N) {
      answers.fault(key + ".clampForce", clamp.toString(), "0 N to 20000 N is allowed");
    }
    return new DogHoles(shape, size, spacing, fromFront, fromLeft, count, clamp);
  }

  /** Two rows must leave wood between them. */
  private void apart(String key, DogHoles row, int earlier, DogHoles other) {
    double least = (row.size().mm() + other.size().mm()) / 2;
    boolean beside =
        row.fromLeft().mm() - least <= other.lastMm()
            && other.fromLeft().mm() - least <= row.lastMm();
    double between = Math.abs(row.fromFront().mm() - other.fromFront().mm());
    if (beside && between <= least) {
      answers.fault(
          key + ".fromFront",
          row.fromFront().toString(),
          "more than %s from the row top.dogHoles[%s], or their holes meet"
              .formatted(Length.ofMm(least), earlier));
    }
  }
}
