package org.stoutwork.result;

import java.util.List;
import org.stoutwork.quantity.Measure;
import org.stoutwork.source.Source;
import org.stoutwork.working.Working;

/**
 * A wood of the bench and the values that the checks used.
 *
 * @param key of the wood
 * @param name of it
 * @param usedFor the parts made of it, in words
 * @param values mean stiffness and density, then strengths under a short action
 */
public record MaterialLine(String key, String name, String usedFor, List<Value> values) {

  /** Keeps its own copy. */
  public MaterialLine {
    values = List.copyOf(values);
  }

  /**
   * One value.
   *
   * @param symbol as printed
   * @param meaning in words
   * @param measure with its unit
   * @param source the least firm of its working
   * @param working that leads to it
   */
  public record Value(
      String symbol, String meaning, Measure measure, Source source, Working working) {}
}
