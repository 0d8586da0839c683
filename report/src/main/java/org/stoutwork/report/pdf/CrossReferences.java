package org.stoutwork.report.pdf;

import java.nio.charset.StandardCharsets;

/**
 * Rights the table of object offsets at the end of a file. OpenPDF 2.0.5 writes its figures with
 * the digits of the machine's locale and cuts them to one byte, so that under a locale with digits
 * of its own the table cannot be read. Its first entry is known to be zero, which tells the digits
 * in use; they are put back in place.
 */
final class CrossReferences {

  private static final int ENTRY = 20;
  private static final byte[] HEAD = "\nxref\n0 ".getBytes(StandardCharsets.ISO_8859_1);
  private static final byte[] FOOT = "startxref\n".getBytes(StandardCharsets.ISO_8859_1);

  private CrossReferences() {}

  /** The file with Latin digits in its table; the same array if they are already. */
  static byte[] righted(byte[] file) {
    int table = offset(file, lastPlace(file, FOOT) + FOOT.length);
    int at = table + HEAD.length - 1;
    int entries = offset(file, at);
    while (file[at] != '\n') {
      at++;
    }
    int first = at + 1;
    byte zero = file[first];
    if (zero == '0') {
      return file;
    }
    byte[] out = file.clone();
    for (int i = 0; i < entries; i++) {
      right(out, first + i * ENTRY, 10, zero);
      right(out, first + i * ENTRY + 11, 5, zero);
    }
    return out;
  }

  private static void right(byte[] out, int from, int length, byte zero) {
    for (int i = from; i < from + length; i++) {
      int digit = (out[i] - zero) & 0xFF;
      if (digit > 9) {
        throw new PdfFault("the table of offsets cannot be read at byte " + i);
      }
      out[i] = (byte) ('0' + digit);
    }
  }

  private static int offset(byte[] file, int from) {
    int value = 0;
    for (int i = from; file[i] >= '0' && file[i] <= '9'; i++) {
      value = value * 10 + file[i] - '0';
    }
    return value;
  }

  private static int lastPlace(byte[] file, byte[] what) {
    for (int at = file.length - what.length; at >= 0; at--) {
      int k = 0;
      while (k < what.length && file[at + k] == what[k]) {
        k++;
      }
      if (k == what.length) {
        return at;
      }
    }
    throw new PdfFault("the file has no table of offsets");
  }
}
