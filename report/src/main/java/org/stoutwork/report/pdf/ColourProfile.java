package org.stoutwork.report.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Makes an ICC profile (version 2.4, three primaries and one tone curve) for the colour space sRGB.
 * Made here and not taken from the Java runtime, whose profiles differ from release to release.
 * Figures: IEC 61966-2-1, primaries adapted to the D50 white of ICC; from memory.
 */
final class ColourProfile {

  private static final int HEADER = 128;
  private static final int CURVE_POINTS = 256;

  private static final double[] WHITE = {0.9642, 1.0, 0.8249};
  private static final double[] RED = {0.43607, 0.22249, 0.01392};
  private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
  private static final double[] BLUE = {0.14307, 0.06061, 0.7141};

  private ColourProfile() {}

  static byte[] bytes() {
    Map<String, ByteBuffer> entries = new LinkedHashMap<>();
    entries.put("desc", description("sRGB"));
    entries.put("cprt", text("No copyright, use freely"));
    entries.put("wtpt", xyz(WHITE));
    entries.put("rXYZ", xyz(RED));
    entries.put("gXYZ", xyz(GREEN));
    entries.put("bXYZ", xyz(BLUE));
    entries.put("rTRC", curve());
    entries.put("gTRC", curve());
    entries.put("bTRC", curve());
    return assembled(entries);
  }

  private static byte[] assembled(Map<String, ByteBuffer> entries) {
    int place = HEADER + 4 + 12 * entries.size();
    int data = entries.values().stream().mapToInt(ByteBuffer::capacity).sum();
    ByteBuffer out = ByteBuffer.allocate(place + data);
    header(out);
    out.position(HEADER);
    out.putInt(entries.size());
    for (Map.Entry<String, ByteBuffer> entry : entries.entrySet()) {
      int length = entry.getValue().capacity();
      ascii(out, entry.getKey());
      out.putInt(place).putInt(length);
      out.put(place, entry.getValue().array());
      place += length;
    }
    return out.array();
  }

  private static void header(ByteBuffer out) {
    out.putInt(out.capacity()).putInt(0).putInt(0x02400000);
    ascii(out, "mntrRGB XYZ ");
    for (int part : new int[] {2000, 1, 1, 0, 0, 0}) {
      out.putShort((short) part);
    }
    ascii(out, "acsp");
    out.position(68);
    for (double part : WHITE) {
      out.putInt(fixed(part));
    }
  }

  private static ByteBuffer description(String words) {
    ByteBuffer out = ByteBuffer.allocate(4 * ((12 + words.length() + 1 + 8 + 3 + 67 + 3) / 4));
    ascii(out, "desc");
    out.putInt(0).putInt(words.length() + 1);
    ascii(out, words);
    return out;
  }

  private static ByteBuffer text(String words) {
    ByteBuffer out = ByteBuffer.allocate(4 * ((8 + words.length() + 1 + 3) / 4));
    ascii(out, "text");
    out.putInt(0);
    ascii(out, words);
    return out;
  }

  private static ByteBuffer xyz(double[] value) {
    ByteBuffer out = ByteBuffer.allocate(20);
    ascii(out, "XYZ ");
    out.putInt(0);
    for (double part : value) {
      out.putInt(fixed(part));
    }
    return out;
  }

  private static ByteBuffer curve() {
    ByteBuffer out = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
    ascii(out, "curv");
    out.putInt(0).putInt(CURVE_POINTS);
    for (int i = 0; i < CURVE_POINTS; i++) {
      double v = i / (CURVE_POINTS - 1.0);
      double linear = v <= 0.04045 ? v / 12.92 : StrictMath.pow((v + 0.055) / 1.055, 2.4);
      out.putShort((short) Math.round(linear * 65535));
    }
    return out;
  }

  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static void ascii(ByteBuffer out, String text) {
    out.put(text.getBytes(StandardCharsets.US_ASCII));
  }
}
