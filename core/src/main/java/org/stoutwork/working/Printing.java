package org.stoutwork.working;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.stoutwork.quantity.Writing;

/** Prints the tree of a formula as one line of text, in symbols or with numbers put in. */
final class Printing {

  private static final int DIGITS = 4;
  private static final int LOWEST = 0;
  private static final int PRODUCT = 2;
  private static final int SIGN = 3;
  private static final int POWER = 4;

  private final IntFunction<String> leaf;
  private final boolean leavesHaveUnits;

  private Printing(IntFunction<String> leaf, boolean leavesHaveUnits) {
    this.leaf = leaf;
    this.leavesHaveUnits = leavesHaveUnits;
  }

  static String symbols(Formula formula) {
    return new Printing(i -> formula.symbols().get(i).symbol(), false)
        .print(formula.tree(), LOWEST);
  }

  static String numbers(Formula formula, double[] values) {
    return new Printing(i -> Writing.with(values[i], formula.symbols().get(i).unit(), DIGITS), true)
        .print(formula.tree(), LOWEST);
  }

  private String print(Expr expr, int around) {
    if (expr instanceof Expr.Num num) {
      return num.written();
    }
    if (expr instanceof Expr.Sym sym) {
      return leafText(sym, around);
    }
    if (expr instanceof Expr.Negative negative) {
      return bracket("−" + print(negative.inner(), SIGN), around > SIGN);
    }
    return expr instanceof Expr.Call call ? ofCall(call) : ofBinary((Expr.Binary) expr, around);
  }

  private String leafText(Expr.Sym sym, int around) {
    String text = leaf.apply(sym.index());
    boolean compound = text.indexOf('\u00a0') >= 0 || text.startsWith("−");
    return bracket(text, leavesHaveUnits && compound && (around >= POWER || text.startsWith("−")));
  }

  private String ofCall(Expr.Call call) {
    String inputs =
        call.inputs().stream().map(in -> print(in, LOWEST)).collect(Collectors.joining("; "));
    return call.function() == Function.SQRT
        ? "√(" + inputs + ")"
        : call.function().word() + "(" + inputs + ")";
  }

  private String ofBinary(Expr.Binary binary, int around) {
    return switch (binary.operator()) {
      case '^' -> ofPower(binary, around);
      case '*' ->
          bracket(
              print(binary.left(), PRODUCT) + " · " + print(binary.right(), PRODUCT + 1),
              around > PRODUCT);
      case '/' ->
          bracket(
              print(binary.left(), PRODUCT) + " / " + print(binary.right(), PRODUCT + 1),
              around > PRODUCT);
      case '+' -> bracket(print(binary.left(), 1) + " + " + print(binary.right(), 1), around > 1);
      default -> bracket(print(binary.left(), 1) + " − " + print(binary.right(), 2), around > 1);
    };
  }

  private String ofPower(Expr.Binary power, int around) {
    String base = print(power.left(), POWER + 1);
    if (power.right() instanceof Expr.Num num && num.value() == Math.rint(num.value())) {
      return base + Writing.superscript((int) num.value());
    }
    return bracket(base + "^" + print(power.right(), POWER + 1), around > POWER);
  }

  private static String bracket(String text, boolean needed) {
    return needed ? "(" + text + ")" : text;
  }
}
