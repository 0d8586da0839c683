package org.stoutwork.report.pdf;

import org.stoutwork.report.sheet.About;

/**
 * Writes the XMP packet: the same facts as the information dictionary, and the claims to PDF/A-3b
 * and PDF/UA-1.
 */
final class Xmp {

  private Xmp() {}

  static String packet(About about) {
    String moment = Metadata.moment(about);
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
            xmlns:dc="http://purl.org/dc/elements/1.1/"
            xmlns:xmp="http://ns.adobe.com/xap/1.0/"
            xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
            xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
            xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
        <dc:format>application/pdf</dc:format>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        %s<dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
        <xmp:CreatorTool>%s</xmp:CreatorTool>
        <xmp:CreateDate>%s</xmp:CreateDate>
        <xmp:ModifyDate>%s</xmp:ModifyDate>
        <pdf:Producer>%s</pdf:Producer>
        <pdfaid:part>3</pdfaid:part>
        <pdfaid:conformance>B</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        </rdf:Description>
        %s</rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="r"?>
        """
        .formatted(
            escape(about.title()),
            subject(about),
            escape(about.language()),
            escape(about.program()),
            moment,
            moment,
            escape(about.program()),
            UA_SCHEMA);
  }

  private static String subject(About about) {
    return about.subject().isEmpty()
        ? ""
        : "<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">"
            + escape(about.subject())
            + "</rdf:li></rdf:Alt></dc:description>\n";
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** PDF/A wants every schema outside its own list described. */
  private static final String UA_SCHEMA =
      """
      <rdf:Description rdf:about=""
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>Part of ISO 14289</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      """;
}
