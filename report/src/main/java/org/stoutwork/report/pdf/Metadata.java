package org.stoutwork.report.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.GregorianCalendar;
import java.util.Locale;
import org.stoutwork.report.sheet.About;

/** Writes what a file says about itself: information, XMP, language, identity, colour space. */
final class Metadata {

  private Metadata() {}

  /** Everything, into an open document. */
  static void write(About about, PdfWriter writer) throws IOException {
    information(about, writer.getInfo());
    writer.setXmpMetadata(Xmp.packet(about).getBytes(StandardCharsets.UTF_8));
    PdfDictionary catalog = writer.getExtraCatalog();
    catalog.put(new PdfName("Lang"), new PdfString(about.language()));
    catalog.put(new PdfName("OutputIntents"), colourSpace(writer));
    writer.addViewerPreference(new PdfName("DisplayDocTitle"), PdfBoolean.PDFTRUE);
  }

  private static void information(About about, PdfDictionary info) {
    put(info, "Title", about.title());
    put(info, "Subject", about.subject());
    put(info, "Creator", about.program());
    put(info, "Producer", about.program());
    GregorianCalendar moment = GregorianCalendar.from(about.issued().atZone(ZoneOffset.UTC));
    info.put(PdfName.CREATIONDATE, new PdfDate(moment));
    info.put(PdfName.MODDATE, new PdfDate(moment));
    byte[] identity = identity(about);
    info.put(PdfName.FILEID, PdfEncryption.createInfoId(identity, identity));
  }

  private static void put(PdfDictionary info, String key, String value) {
    if (!value.isEmpty()) {
      info.put(new PdfName(key), new PdfString(value, PdfObject.TEXT_UNICODE));
    }
  }

  private static byte[] identity(About about) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(about.toString().getBytes(StandardCharsets.UTF_8));
      return Arrays.copyOf(hash, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new PdfFault("the Java runtime lacks SHA-256", e);
    }
  }

  private static PdfArray colourSpace(PdfWriter writer) throws IOException {
    PdfStream profile = new PdfStream(ColourProfile.bytes());
    profile.put(PdfName.N, new PdfNumber(3));
    profile.flateCompress(9);
    PdfDictionary intent = new PdfDictionary(new PdfName("OutputIntent"));
    intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
    intent.put(new PdfName("OutputConditionIdentifier"), new PdfString("sRGB IEC61966-2.1"));
    intent.put(new PdfName("Info"), new PdfString("sRGB IEC61966-2.1"));
    intent.put(new PdfName("DestOutputProfile"), writer.addToBody(profile).getIndirectReference());
    PdfArray intents = new PdfArray();
    intents.add(intent);
    return intents;
  }

  /** A moment as XMP writes it. */
  static String moment(About about) {
    return DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss'Z'", Locale.ROOT)
        .withZone(ZoneOffset.UTC)
        .format(about.issued());
  }
}
