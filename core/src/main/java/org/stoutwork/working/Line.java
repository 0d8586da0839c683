package org.stoutwork.working;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.quantity.Writing;
import org.stoutwork.source.Source;

/** One line of a working. */
public sealed interface Line {

  /** Digits with which a working shows its numbers; the calculation itself carries all of them. */
  int DIGITS = 4;

  /** The line as plain text, for terminals, tests and files. */
  String text();

  /**
   * A value that enters from elsewhere.
   *
   * @param symbol what it is
   * @param value in the symbol's unit
   * @param source where it comes from
   */
  record Given(Symbol symbol, double value, Source source) implements Line {
    @Override
    public String text() {
      return "%s = %s   %s   [%s]"
          .formatted(
              symbol.symbol(),
              Writing.with(value, symbol.unit(), DIGITS),
              symbol.meaning(),
              source.line());
    }
  }

  /**
   * A formula with the values put in and the result.
   *
   * @param formula the one expression that was evaluated and is printed
   * @param values of its symbols, in order
   * @param value its result
   */
  record Calculated(Formula formula, List<Double> values, double value) implements Line {

    /** Keeps its own copy of the values. */
    public Calculated {
      values = List.copyOf(values);
    }

    static Calculated of(Formula formula, double[] values) {
      List<Double> kept = new ArrayList<>(values.length);
      for (double v : values) {
        kept.add(v);
      }
      return new Calculated(formula, kept, formula.value(values));
    }

    /** The right-hand side with numbers and units put in. */
    public String withNumbers() {
      return formula.withNumbers(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The result with its unit. */
    public String resultText() {
      return Writing.with(value, formula.result().unit(), DIGITS);
    }

    @Override
    public String text() {
      return "%s = %s = %s = %s   %s   [%s]"
          .formatted(
              formula.result().symbol(),
              formula.inSymbols(),
              withNumbers(),
              resultText(),
              formula.result().meaning(),
              formula.source().line());
    }
  }

  /**
   * A sentence a reader needs.
   *
   * @param text the sentence
   */
  record Remark(String text) implements Line {}
}
