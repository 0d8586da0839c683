package org.stoutwork.report.file.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Fetches the text of a file: bounded, UTF-8 only, text only. */
public final class SourceReader {

  private SourceReader() {}

  /**
   * Reads a file.
   *
   * @param path the file; messages call it by this path as it was given
   * @param limits how large it may be; never more than one byte beyond is read
   * @return its text
   * @throws UnreadableFile when it is absent, no plain file, too large, or no UTF-8 text
   */
  public static SourceText read(Path path, Limits limits) throws UnreadableFile {
    String file = path.toString();
    if (Files.isDirectory(path)) {
      throw refuse(Fault.ofFile(file, "is a directory", "the name of a file is needed"));
    }
    try {
      long size = Files.size(path);
      if (size > limits.bytes()) {
        throw refuse(tooLarge(file, "has " + number(size) + " bytes", limits));
      }
      return decode(file, bounded(path, limits), limits);
    } catch (NoSuchFileException e) {
      throw refuse(Fault.ofFile(file, "does not exist", "the name of an existing file is needed"));
    } catch (IOException e) {
      throw refuse(
          Fault.ofFile(
              file,
              "cannot be read (" + e.getClass().getSimpleName() + ")",
              "a file that may be read is needed"));
    }
  }

  private static byte[] bounded(Path path, Limits limits) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(limits.bytes() + 1);
    }
  }

  /**
   * Decodes the bytes of a file.
   *
   * @param file the name used in messages
   * @param bytes the content
   * @param limits how large it may be
   * @return its text, without a byte order mark
   * @throws UnreadableFile when it is too large or no UTF-8 text
   */
  public static SourceText decode(String file, byte[] bytes, Limits limits) throws UnreadableFile {
    if (bytes.length > limits.bytes()) {
      throw refuse(tooLarge(file, "has more than " + number(limits.bytes()) + " bytes", limits));
    }
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
      throw refuse(
          Fault.ofFile(file, "is UTF-16 text", "UTF-8 is needed: save the file again as UTF-8"));
    }
    int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (text.indexOf('\0') >= 0) {
      throw refuse(Fault.ofFile(file, "holds binary data", "a text file in UTF-8 is needed"));
    }
    if (result.isError()) {
      throw refuse(notUtf8(file, text, bytes[in.position()]));
    }
    return checked(new SourceText(file, text));
  }

  /**
   * Checks a text that is in memory already.
   *
   * @param source the text
   * @return the same text
   * @throws UnreadableFile when it holds control characters or broken characters
   */
  public static SourceText checked(SourceText source) throws UnreadableFile {
    String text = source.text();
    int at = 0;
    while (at < text.length()) {
      int c = text.codePointAt(at);
      if (!isText(c)) {
        Spot spot = LineBreaks.spot(source.file(), text, at);
        String code = String.format(Locale.ROOT, "U+%04X", c);
        throw refuse(
            new Fault(
                spot,
                "",
                "the character " + code + " is no part of a text",
                "remove it",
                "",
                source.excerpt(spot)));
      }
      at += Character.charCount(c);
    }
    return source;
  }

  /** What YAML calls printable. */
  private static boolean isText(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c == 0x85
        || (c >= 0x20 && c <= 0x7E)
        || (c >= 0xA0 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD && c != 0xFEFF)
        || c >= 0x10000;
  }

  private static Fault notUtf8(String file, String before, byte wrong) {
    Spot spot = LineBreaks.spot(file, before, before.length());
    return new Fault(
        spot,
        "",
        String.format(Locale.ROOT, "the byte 0x%02X is not UTF-8", wrong),
        "save the file again as UTF-8",
        "",
        "");
  }

  private static Fault tooLarge(String file, String given, Limits limits) {
    return Fault.ofFile(
        file, given, "a file of at most " + number(limits.bytes()) + " bytes is read");
  }

  private static String number(long value) {
    return String.format(Locale.ROOT, "%,d", value).replace(',', ' ');
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static UnreadableFile refuse(Fault fault) {
    return new UnreadableFile(List.of(fault), 1);
  }
}
