package org.stoutwork.report.sheet.math;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.working.Expr;
import org.stoutwork.working.Function;

/** Sets the tree of a formula, its leaves as symbols or as numbers. */
final class TermSetter {

  private static final double SMALLER = 0.88;
  private static final double INDEX = 0.72;
  private static final double LEAST = 7.5;
  private static final int LOWEST = 0;
  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int SIGN = 3;
  private static final int POWER = 4;

  private final TextMeasure measure;
  private final double points;
  private final Glyphs glyphs;
  private final IntFunction<RichText> leaf;

  TermSetter(TextMeasure measure, double points, IntFunction<RichText> leaf) {
    this.measure = measure;
    this.points = points;
    this.glyphs = new Glyphs(measure, points);
    this.leaf = leaf;
  }

  /** The term as parts between which a line may break. */
  List<MathBox> parts(Expr expr) {
    List<MathBox> parts = new ArrayList<>();
    if (expr instanceof Expr.Binary sum && isSum(sum)) {
      parts.addAll(parts(sum.left()));
      int around = sum.operator() == '-' ? PRODUCT : SUM;
      parts.add(MathBox.row(List.of(sign(sum.operator()), box(sum.right(), around))));
    } else if (expr instanceof Expr.Binary product && product.operator() == '*') {
      parts.addAll(factors(product.left()));
      parts.add(MathBox.row(List.of(sign('*'), box(product.right(), PRODUCT + 1))));
    } else {
      parts.add(box(expr, LOWEST));
    }
    return parts;
  }

  private List<MathBox> factors(Expr expr) {
    return expr instanceof Expr.Binary product && product.operator() == '*'
        ? parts(product)
        : List.of(box(expr, PRODUCT));
  }

  private static boolean isSum(Expr.Binary binary) {
    return binary.operator() == '+' || binary.operator() == '-';
  }

  private MathBox box(Expr expr, int around) {
    if (expr instanceof Expr.Num num) {
      return glyphs.plain(num.written());
    }
    if (expr instanceof Expr.Sym sym) {
      return leafBox(sym, around);
    }
    if (expr instanceof Expr.Negative negative) {
      MathBox inner = MathBox.row(List.of(glyphs.plain("−"), box(negative.inner(), SIGN)));
      return around > SIGN ? glyphs.bracketed(inner) : inner;
    }
    return expr instanceof Expr.Call call ? call(call) : binary((Expr.Binary) expr, around);
  }

  private MathBox leafBox(Expr.Sym sym, int around) {
    RichText text = leaf.apply(sym.index());
    String characters = text.characters();
    boolean negative = characters.startsWith("−");
    boolean compound = characters.indexOf('\u00a0') >= 0;
    MathBox box = glyphs.text(text);
    boolean bracket = (compound && around >= POWER) || (negative && around > LOWEST);
    return bracket ? glyphs.bracketed(box) : box;
  }

  private MathBox call(Expr.Call call) {
    if (call.function() == Function.SQRT) {
      return glyphs.root(box(call.inputs().get(0), LOWEST));
    }
    List<MathBox> inputs = new ArrayList<>();
    for (Expr input : call.inputs()) {
      if (!inputs.isEmpty()) {
        inputs.add(glyphs.plain(";\u00a0"));
      }
      inputs.add(box(input, LOWEST));
    }
    MathBox name = glyphs.plain(call.function().word());
    return MathBox.row(List.of(name, glyphs.bracketed(MathBox.row(inputs))));
  }

  private MathBox binary(Expr.Binary binary, int around) {
    return switch (binary.operator()) {
      case '^' -> power(binary, around);
      case '/' -> fraction(binary, around);
      case '*' -> joined(binary, PRODUCT, PRODUCT + 1, around > PRODUCT);
      case '+' -> joined(binary, SUM, SUM, around > SUM);
      default -> joined(binary, SUM, PRODUCT, around > SUM);
    };
  }

  private MathBox joined(Expr.Binary binary, int left, int right, boolean bracket) {
    MathBox row =
        MathBox.row(
            List.of(box(binary.left(), left), sign(binary.operator()), box(binary.right(), right)));
    return bracket ? glyphs.bracketed(row) : row;
  }

  private MathBox fraction(Expr.Binary binary, int around) {
    TermSetter smaller = sized(SMALLER);
    MathBox box =
        glyphs.fraction(smaller.box(binary.left(), LOWEST), smaller.box(binary.right(), LOWEST));
    return around >= POWER ? glyphs.bracketed(box) : box;
  }

  private MathBox power(Expr.Binary power, int around) {
    MathBox exponent = sized(INDEX).inline(power.right());
    MathBox box = glyphs.power(box(power.left(), POWER + 1), exponent);
    return around > POWER ? glyphs.bracketed(box) : box;
  }

  /** A term as an exponent: fractions with a stroke. */
  private MathBox inline(Expr expr) {
    if (expr instanceof Expr.Binary quotient && quotient.operator() == '/') {
      return MathBox.row(
          List.of(box(quotient.left(), PRODUCT), glyphs.plain("/"), box(quotient.right(), SIGN)));
    }
    return box(expr, LOWEST);
  }

  private TermSetter sized(double factor) {
    return new TermSetter(measure, Math.max(Math.min(LEAST, points), points * factor), leaf);
  }

  private MathBox sign(char operator) {
    String sign =
        switch (operator) {
          case '*' -> "·";
          case '-' -> "−";
          default -> Character.toString(operator);
        };
    double gap = operator == '*' ? 0.14 : 0.24;
    return MathBox.row(List.of(glyphs.space(gap), glyphs.plain(sign), glyphs.space(gap)));
  }
}
