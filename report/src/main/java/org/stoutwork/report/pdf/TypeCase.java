package org.stoutwork.report.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stoutwork.report.drawing.Face;
import org.stoutwork.report.drawing.TextMeasure;

/**
 * The embedded fonts: one family for text, and a second font with a wide stock of signs for what
 * the family lacks. Measures text exactly as it will be printed. Costs some tens of milliseconds to
 * open; may be used again and again, by one thread at a time.
 */
public final class TypeCase implements TextMeasure {

  private static final String SIGNS = "DejaVuSansCondensed.ttf";

  private final Map<Face, BaseFont> family = new EnumMap<>(Face.class);
  private final BaseFont signs;
  private final MissingGlyph missing;

  private TypeCase(MissingGlyph missing) {
    this.missing = missing;
    family.put(Face.REGULAR, font("Carlito-Regular.ttf"));
    family.put(Face.BOLD, font("Carlito-Bold.ttf"));
    family.put(Face.ITALIC, font("Carlito-Italic.ttf"));
    this.signs = font(SIGNS);
  }

  /** Opens the fonts. */
  public static TypeCase open(MissingGlyph missing) {
    return new TypeCase(missing);
  }

  /**
   * Text in one font.
   *
   * @param font that has all its signs
   * @param text not empty
   */
  record Stretch(BaseFont font, String text) {}

  /**
   * A text parted by the font that prints it.
   *
   * @throws PdfFault if no font has a sign and missing signs are refused
   */
  List<Stretch> stretches(String text, Face face) {
    List<Stretch> out = new ArrayList<>();
    StringBuilder pending = new StringBuilder();
    BaseFont usual = family.get(face);
    BaseFont current = usual;
    for (int i = 0; i < text.length(); ) {
      int sign = text.codePointAt(i);
      String shown = shown(sign, usual, text);
      BaseFont font = has(usual, shown) ? usual : signs;
      if (font != current && pending.length() > 0) {
        out.add(new Stretch(current, pending.toString()));
        pending.setLength(0);
      }
      current = font;
      pending.append(shown);
      i += Character.charCount(sign);
    }
    if (pending.length() > 0) {
      out.add(new Stretch(current, pending.toString()));
    }
    return out;
  }

  @Override
  public double width(String text, Face face, double points) {
    double sum = 0;
    for (Stretch stretch : stretches(text, face)) {
      sum += stretch.font().getWidth(stretch.text());
    }
    return sum / 1000 * points * MM_PER_POINT;
  }

  /** Makes the names of the embedded subsets depend on the fonts alone. Before every document. */
  void settle() {
    family.forEach((face, font) -> font.setSecureRandom(seeded(face.name())));
    signs.setSecureRandom(seeded(SIGNS));
  }

  private String shown(int sign, BaseFont usual, String text) {
    if (usual.charExists(sign) || signs.charExists(sign)) {
      return Character.toString(sign);
    }
    String code = String.format(Locale.ROOT, "[U+%04X]", sign);
    if (missing == MissingGlyph.REFUSE) {
      throw new PdfFault(
          String.format(Locale.ROOT, "no embedded font has the sign %s of \"%s\"", code, text));
    }
    return code;
  }

  private static boolean has(BaseFont font, String shown) {
    return font.charExists(shown.codePointAt(0));
  }

  private static BaseFont font(String name) {
    try (InputStream in = TypeCase.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new PdfFault("font " + name + " is missing from the program");
      }
      BaseFont font =
          BaseFont.createFont(
              name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null);
      font.setIncludeCidSet(false);
      return font;
    } catch (IOException e) {
      throw new PdfFault("font " + name + " cannot be read", e);
    }
  }

  private static SecureRandom seeded(String name) {
    try {
      SecureRandom random = SecureRandom.getInstance("SHA1PRNG");
      random.setSeed(name.getBytes(StandardCharsets.UTF_8));
      return random;
    } catch (NoSuchAlgorithmException e) {
      throw new PdfFault("the Java runtime lacks SHA1PRNG", e);
    }
  }
}
