package org.stoutwork.working;

import java.util.List;
import org.stoutwork.quantity.Dimension;
import org.stoutwork.quantity.Unit;

/**
 * Follows the units through a formula, so that a term left out or a forgotten square is refused
 * when the formula is built and not found by a reader of the sheet. Both the dimension and the
 * scale must come out as declared: newtons over square metres are not megapascals.
 */
final class UnitCheck {

  private static final double CLOSE = 1e-9;

  private final String text;
  private final List<Unit> units;

  private UnitCheck(String text, List<Unit> units) {
    this.text = text;
    this.units = units;
  }

  /** Length, mass and time exponents (angles count as ratios), and the logarithm of the scale. */
  private record Kind(double length, double mass, double time, double logScale) {

    static Kind of(Unit unit) {
      Dimension d = unit.dimension();
      return new Kind(d.length(), d.mass(), d.time(), Math.log(unit.toSi()));
    }

    Kind times(Kind o, double power) {
      return new Kind(
          length + power * o.length,
          mass + power * o.mass,
          time + power * o.time,
          logScale + power * o.logScale);
    }

    boolean matches(Kind o) {
      return Math.abs(length - o.length) < CLOSE
          && Math.abs(mass - o.mass) < CLOSE
          && Math.abs(time - o.time) < CLOSE
          && Math.abs(logScale - o.logScale) < CLOSE;
    }
  }

  private static final Kind RATIO = new Kind(0, 0, 0, 0);

  static void check(String text, Expr expr, List<Unit> units, Unit result) {
    UnitCheck check = new UnitCheck(text, units);
    check.same(check.kind(expr), Kind.of(result), "its value is not in " + result.symbol());
  }

  private Kind kind(Expr expr) {
    if (expr instanceof Expr.Num) {
      return RATIO;
    }
    if (expr instanceof Expr.Sym sym) {
      return Kind.of(units.get(sym.index()));
    }
    if (expr instanceof Expr.Negative negative) {
      return kind(negative.inner());
    }
    return expr instanceof Expr.Call call ? ofCall(call) : ofBinary((Expr.Binary) expr);
  }

  private Kind ofCall(Expr.Call call) {
    Kind first = kind(call.inputs().get(0));
    return switch (call.function()) {
      case SQRT -> RATIO.times(first, 0.5);
      case ABS -> first;
      case MIN, MAX -> {
        call.inputs().forEach(in -> same(kind(in), first, "min and max need parts in one unit"));
        yield first;
      }
      default -> same(first, RATIO, call.function().word() + " needs a plain ratio");
    };
  }

  private Kind ofBinary(Expr.Binary binary) {
    Kind left = kind(binary.left());
    return switch (binary.operator()) {
      case '*' -> left.times(kind(binary.right()), 1);
      case '/' -> left.times(kind(binary.right()), -1);
      case '^' -> ofPower(left, binary.right());
      default -> same(left, kind(binary.right()), "two parts that are added are not in one unit");
    };
  }

  private Kind ofPower(Kind base, Expr exponent) {
    if (exponent instanceof Expr.Num num) {
      return RATIO.times(base, num.value());
    }
    if (exponent instanceof Expr.Negative n && n.inner() instanceof Expr.Num num) {
      return RATIO.times(base, -num.value());
    }
    same(kind(exponent), RATIO, "an exponent needs a plain ratio");
    return same(base, RATIO, "only a plain ratio can be raised to a changing power");
  }

  private Kind same(Kind a, Kind b, String why) {
    if (!a.matches(b)) {
      throw new IllegalArgumentException("formula \"%s\": %s".formatted(text, why));
    }
    return a;
  }
}
