package org.stoutwork.quantity;

import java.util.Map;
import java.util.Optional;

/** The many ways in which people write the name of a unit. */
final class Spelling {

  private static final Map<String, Unit> ALIASES =
      Map.ofEntries(
          Map.entry("\"", Unit.IN),
          Map.entry("″", Unit.IN),
          Map.entry("inch", Unit.IN),
          Map.entry("inches", Unit.IN),
          Map.entry("'", Unit.FT),
          Map.entry("′", Unit.FT),
          Map.entry("foot", Unit.FT),
          Map.entry("feet", Unit.FT),
          Map.entry("lbs", Unit.LB),
          Map.entry("kgs", Unit.KG),
          Map.entry("N/mm2", Unit.MPA),
          Map.entry("Nm", Unit.N_M),
          Map.entry("Nmm", Unit.N_MM),
          Map.entry("kNm", Unit.KN_M),
          Map.entry("kNm/rad", Unit.KN_M_PER_RAD),
          Map.entry("Nmm/rad", Unit.N_MM_PER_RAD),
          Map.entry("ftlbf", Unit.LBF_FT),
          Map.entry("ft.lbf", Unit.LBF_FT),
          Map.entry("psf", Unit.PSF),
          Map.entry("deg", Unit.DEG),
          Map.entry("degree", Unit.DEG),
          Map.entry("degrees", Unit.DEG));

  private Spelling() {}

  /**
   * A spelling without blanks, with ASCII digits for superscripts and a dot for any product sign.
   */
  static String plain(String text) {
    return text.strip()
        .replace(" ", "")
        .replace("·", ".")
        .replace("*", ".")
        .replace("⋅", ".")
        .replace("^", "")
        .replace("²", "2")
        .replace("³", "3")
        .replace("⁴", "4");
  }

  static Optional<Unit> alias(String plain) {
    return Optional.ofNullable(ALIASES.get(plain));
  }
}
