package org.stoutwork.working;

import java.util.List;

/**
 * A formula as a tree. Every kind of node can evaluate itself for given values of its symbols;
 * printing and typesetting walk the same tree.
 */
public sealed interface Expr {

  /**
   * The value for given values of the symbols.
   *
   * @param values one value for each symbol of the formula, in its order
   */
  double eval(double[] values);

  /** A number written in the formula itself, kept as it was written. */
  record Num(double value, String written) implements Expr {
    @Override
    public double eval(double[] values) {
      return value;
    }
  }

  /** A symbol, by its place in the formula's list. */
  record Sym(int index) implements Expr {
    @Override
    public double eval(double[] values) {
      return values[index];
    }
  }

  /** Two parts joined by {@code + - * / ^}. */
  record Binary(char operator, Expr left, Expr right) implements Expr {
    @Override
    public double eval(double[] values) {
      double a = left.eval(values);
      double b = right.eval(values);
      return switch (operator) {
        case '+' -> a + b;
        case '-' -> a - b;
        case '*' -> a * b;
        case '/' -> a / b;
        case '^' -> b == 2 ? a * a : b == 3 ? a * a * a : Math.pow(a, b);
        default -> throw new IllegalStateException("unknown operator " + operator);
      };
    }
  }

  /** A part with its sign turned. */
  record Negative(Expr inner) implements Expr {
    @Override
    public double eval(double[] values) {
      return -inner.eval(values);
    }
  }

  /** A named function of one part, or of several for {@code min} and {@code max}. */
  record Call(Function function, List<Expr> inputs) implements Expr {

    /** Keeps its own copy of the inputs. */
    public Call {
      inputs = List.copyOf(inputs);
    }

    @Override
    public double eval(double[] values) {
      double result = inputs.get(0).eval(values);
      if (inputs.size() == 1) {
        return function.of(result);
      }
      for (int i = 1; i < inputs.size(); i++) {
        double next = inputs.get(i).eval(values);
        result = function == Function.MIN ? Math.min(result, next) : Math.max(result, next);
      }
      return result;
    }
  }
}
