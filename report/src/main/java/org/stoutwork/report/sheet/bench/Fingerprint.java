package org.stoutwork.report.sheet.bench;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.bench.Bench;

/**
 * A short hash of everything that a bench is made of, so that a print belongs to a known input: the
 * same bench has the same, and any other value anywhere gives another.
 */
final class Fingerprint {

  private static final int SHOWN = 8;

  private Fingerprint() {}

  /** Eight hexadecimal digits in two groups. */
  static String of(Bench bench) {
    StringBuilder text = new StringBuilder();
    write(bench, text);
    String hex = HexFormat.of().formatHex(hash(text.toString())).substring(0, SHOWN);
    return hex.substring(0, SHOWN / 2) + "\u00a0" + hex.substring(SHOWN / 2);
  }

  private static byte[] hash(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("the Java runtime lacks SHA-256", e);
    }
  }

  private static void write(Object value, StringBuilder out) {
    if (value instanceof Record r) {
      out.append(r.getClass().getSimpleName()).append('(');
      for (RecordComponent component : r.getClass().getRecordComponents()) {
        write(read(component, r), out);
      }
      out.append(')');
    } else if (value instanceof Iterable<?> several) {
      out.append('[');
      several.forEach(each -> write(each, out));
      out.append(']');
    } else if (value instanceof Map<?, ?> map) {
      map.forEach(
          (k, v) -> {
            write(k, out);
            write(v, out);
          });
    } else if (value instanceof Optional<?> maybe) {
      out.append(maybe.isPresent() ? '+' : '-');
      maybe.ifPresent(v -> write(v, out));
    } else {
      plain(value, out);
    }
  }

  private static void plain(Object value, StringBuilder out) {
    boolean known =
        value instanceof Number
            || value instanceof String
            || value instanceof Boolean
            || value instanceof OptionalDouble
            || value instanceof Enum<?>;
    if (!known) {
      throw new IllegalStateException("no fingerprint is known of " + value.getClass());
    }
    String text = value instanceof Enum<?> e ? e.name() : value.toString();
    out.append(text.length()).append(':').append(text).append(';');
  }

  private static Object read(RecordComponent component, Record from) {
    try {
      return component.getAccessor().invoke(from);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("a bench hides its " + component.getName(), e);
    }
  }
}
