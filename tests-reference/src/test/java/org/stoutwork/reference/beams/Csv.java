package org.stoutwork.reference.beams;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a comma-separated file with quoted fields, as maps from heading to text. */
public final class Csv {
  private Csv() {}

  /** Reads a file beside the package {@code org.stoutwork.reference}. */
  public static List<Map<String, String>> read(String path) {
    try (InputStream in = Csv.class.getResourceAsStream("/org/stoutwork/reference/" + path)) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      List<String> heads = fields(lines.get(0));
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        List<String> values = fields(line);
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < heads.size(); i++) {
          row.put(heads.get(i), values.get(i));
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        fields.add(field.toString());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    fields.add(field.toString());
    return fields;
  }
}
