package org.stoutwork.report.sheet.page;

/** What an element of the sheet's structure is, named as in ISO 32000. */
public enum Role {
  DOCUMENT("Document"),
  H1("H1"),
  H2("H2"),
  H3("H3"),
  P("P"),
  LIST("L"),
  LIST_ITEM("LI"),
  LIST_LABEL("Lbl"),
  LIST_BODY("LBody"),
  TABLE("Table"),
  ROW("TR"),
  HEAD_CELL("TH"),
  CELL("TD"),
  FIGURE("Figure"),
  CAPTION("Caption"),
  FORMULA("Formula"),
  SECTION("Sect");

  private final String tag;

  Role(String tag) {
    this.tag = tag;
  }

  /** The name of the tag. */
  public String tag() {
    return tag;
  }
}
