package org.stoutwork.reference.joints;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a comma-separated resource with quoted fields. */
final class CsvRows {

  private CsvRows() {}

  static List<Map<String, String>> of(String resource) {
    try (InputStream in = CsvRows.class.getResourceAsStream(resource)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
      List<String> names = fields(lines.get(0));
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        List<String> values = fields(line);
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
          row.put(names.get(i), values.get(i));
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> fields(String line) {
    List<String> out = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        out.add(field.toString());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    out.add(field.toString());
    return out;
  }
}
