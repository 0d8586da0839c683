package org.stoutwork.check.service;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** The greatest of several; the first of equals. */
final class Greatest {

  private Greatest() {}

  static <T> T of(List<T> several, ToDoubleFunction<T> value) {
    T worst = several.get(0);
    double most = value.applyAsDouble(worst);
    for (T one : several.subList(1, several.size())) {
      double own = value.applyAsDouble(one);
      if (own > most) {
        worst = one;
        most = own;
      }
    }
    return worst;
  }
}
