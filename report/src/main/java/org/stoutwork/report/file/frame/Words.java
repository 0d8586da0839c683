package org.stoutwork.report.file.frame;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.stoutwork.analysis.model.Direction;

/** Words of the format. */
final class Words {

  static final String COMPRESSION_ONLY = "compression-only";

  private Words() {}

  static String of(Direction direction) {
    return direction.name().toLowerCase(Locale.ROOT);
  }

  static String of(Analysis analysis) {
    return analysis.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static <T> Map<String, T> inOrder(String first, T firstValue, String second, T secondValue) {
    Map<String, T> words = new LinkedHashMap<>();
    words.put(first, firstValue);
    words.put(second, secondValue);
    return words;
  }
}
