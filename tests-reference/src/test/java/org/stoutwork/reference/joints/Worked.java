package org.stoutwork.reference.joints;

import java.util.Map;

/** Inputs of one worked block and what the product makes of them. */
record Worked(Map<String, String> inputs, Map<String, Object> found) {

  double in(String name) {
    return Double.parseDouble(inputs.get(name));
  }

  Worked put(String quantity, double value) {
    found.put(quantity, value);
    return this;
  }

  Worked put(String quantity, String word) {
    found.put(quantity, word);
    return this;
  }

  /** A quantity tabulated in a unit a thousand times larger. */
  Worked putThousand(String quantity, double value) {
    return put(quantity, value / 1e3);
  }

  /** A quantity tabulated in a unit a million times larger. */
  Worked putMillion(String quantity, double value) {
    return put(quantity, value / 1e6);
  }
}
