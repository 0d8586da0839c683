package org.stoutwork.report.drawing;

/**
 * The few inks of the product: black, greys and one accent, chosen so that a print without colour
 * reads the same.
 */
public enum Ink {
  BLACK(0x000000),
  /** Secondary text; 9 : 1 against white. */
  DARK(0x444444),
  /** Lines and bars that must stand against white; 4 : 1. */
  MID(0x7A7A7A),
  /** Light rules and tints that carry no meaning of their own. */
  PALE(0xC9C9C9),
  /** Ground of table heads and boxes. */
  MIST(0xEFEFEF),
  WHITE(0xFFFFFF),
  /** The one accent: a dark petrol that prints as dark grey; 9 : 1 against white. */
  ACCENT(0x0F4C5C);

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  /** Red part, 0 to 1. */
  public double red() {
    return (rgb >> 16 & 0xFF) / 255.0;
  }

  /** Green part, 0 to 1. */
  public double green() {
    return (rgb >> 8 & 0xFF) / 255.0;
  }

  /** Blue part, 0 to 1. */
  public double blue() {
    return (rgb & 0xFF) / 255.0;
  }

  /** The ink as {@code #rrggbb}. */
  public String hex() {
    return String.format(java.util.Locale.ROOT, "#%06x", rgb);
  }

  /**
   * Contrast against another ink, 1 to 21, by the relative luminance of WCAG 2.1: (L1 + 0.05) / (L2
   * + 0.05).
   */
  public double contrast(Ink other) {
    double a = luminance();
    double b = other.luminance();
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private double luminance() {
    return 0.2126 * linear(red()) + 0.7152 * linear(green()) + 0.0722 * linear(blue());
  }

  private static double linear(double part) {
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }
}
