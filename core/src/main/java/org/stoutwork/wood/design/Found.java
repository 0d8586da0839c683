package org.stoutwork.wood.design;

import java.util.List;
import java.util.OptionalDouble;

/** The answer to the question for a design value. */
public sealed interface Found {

  /** What was asked. */
  DesignQuantity what();

  /** The value in the unit of what was asked, if the basis gives it. */
  OptionalDouble value();

  /**
   * The value, where the caller has made sure that there is one.
   *
   * @throws IllegalStateException with the reason if there is none
   */
  double orElseThrow();

  /**
   * A value.
   *
   * @param what was asked
   * @param number in the unit of what was asked, above 0
   */
  record Known(DesignQuantity what, double number) implements Found {

    /**
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Known {
      if (!(number > 0 && Double.isFinite(number))) {
        throw new IllegalArgumentException(
            "%s must be above 0 %s; it came out as %s"
                .formatted(what.meaning(), what.unit().symbol(), number));
      }
    }

    @Override
    public OptionalDouble value() {
      return OptionalDouble.of(number);
    }

    @Override
    public double orElseThrow() {
      return number;
    }
  }

  /**
   * The basis cannot give the value.
   *
   * @param what was asked
   * @param basis in words
   * @param reason why it cannot
   * @param offers what there is instead, each a sentence part
   */
  record Missing(DesignQuantity what, String basis, String reason, List<String> offers)
      implements Found {

    /** Keeps its own copy. */
    public Missing {
      offers = List.copyOf(offers);
    }

    @Override
    public OptionalDouble value() {
      return OptionalDouble.empty();
    }

    @Override
    public double orElseThrow() {
      throw new IllegalStateException(sentence());
    }

    /** The answer as a sentence for people. */
    public String sentence() {
      String missing =
          "no %s (%s) under %s: %s".formatted(what.meaning(), what.symbol(), basis, reason);
      return offers.isEmpty() ? missing : missing + "; there is: " + String.join("; ", offers);
    }
  }
}
