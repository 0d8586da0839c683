package org.stoutwork.working;

import java.util.List;

/** Checks that a formula uses what it declares. */
final class Symbols {

  private Symbols() {}

  static void requireAllUsed(String text, Expr tree, List<Symbol> symbols) {
    boolean[] used = new boolean[symbols.size()];
    mark(tree, used);
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        throw new IllegalArgumentException(
            "formula \"%s\" declares %s but does not use it"
                .formatted(text, symbols.get(i).symbol()));
      }
    }
  }

  private static void mark(Expr expr, boolean[] used) {
    if (expr instanceof Expr.Sym sym) {
      used[sym.index()] = true;
    } else if (expr instanceof Expr.Negative negative) {
      mark(negative.inner(), used);
    } else if (expr instanceof Expr.Binary binary) {
      mark(binary.left(), used);
      mark(binary.right(), used);
    } else if (expr instanceof Expr.Call call) {
      call.inputs().forEach(in -> mark(in, used));
    }
  }
}
