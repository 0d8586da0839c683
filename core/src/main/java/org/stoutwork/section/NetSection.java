package org.stoutwork.section;

/**
 * A rectangle less one opening. A mortise filled with a glued tenon still counts as a hole: the
 * glue may not carry tension.
 *
 * @param gross the whole rectangle
 * @param opening what is taken out of it
 */
public record NetSection(Rectangle gross, Opening opening) implements Weakened {

  /**
   * @throws IllegalArgumentException if the opening leaves nothing of the rectangle
   */
  public NetSection {
    boolean through = opening.width() >= gross.b() && opening.depth() > 0;
    boolean outside = Math.abs(opening.offset()) + opening.depth() / 2 > gross.h() / 2 + 1e-9;
    if (through || opening.depth() >= gross.h() || (outside && opening.depth() > 0)) {
      throw new IllegalArgumentException(
          ("an opening of %s mm × %s mm, %s mm off centre, does not fit in a section of"
                  + " %s mm × %s mm")
              .formatted(opening.width(), opening.depth(), opening.offset(), gross.b(), gross.h()));
    }
  }

  @Override
  public double area() {
    return gross.area() - hole();
  }

  private double hole() {
    return opening.width() * opening.depth();
  }

  /** Distance of the net centroid from the gross centroid, along h, mm. */
  public double centroid() {
    return -hole() * opening.offset() / area();
  }

  /** Net second moment about the net centroid, mm⁴ (parallel axes). */
  public double secondMoment() {
    double c = centroid();
    double fromHole = opening.offset() - c;
    return gross.secondMoment()
        + gross.area() * c * c
        - opening.width() * Math.pow(opening.depth(), 3) / 12
        - hole() * fromHole * fromHole;
  }

  @Override
  public double sectionModulus() {
    return secondMoment() / (gross.h() / 2 + Math.abs(centroid()));
  }

  /**
   * Area with which 1.5·V/A is the greatest shear stress, mm². Either V·S/(I·b) of the net section
   * as one piece, or its two sides beside the opening bent alike, each taking shear as the cube of
   * its depth: whichever carries more, for a section may choose the stiffer way.
   */
  @Override
  public double shearArea() {
    return Math.max(inOnePiece(), inTwoPieces());
  }

  private double inTwoPieces() {
    double upper = gross.h() / 2 - opening.offset() - opening.depth() / 2;
    double lower = gross.h() / 2 + opening.offset() - opening.depth() / 2;
    double deeper = Math.max(upper, lower);
    return gross.b() * (Math.pow(upper, 3) + Math.pow(lower, 3)) / (deeper * deeper);
  }

  private double inOnePiece() {
    double c = centroid();
    double upper = gross.h() / 2 - c;
    double firstMoment = gross.b() * upper * upper / 2 - holeFirstMomentAbove(c);
    double width = crossesHole(c) ? gross.b() - opening.width() : gross.b();
    return 1.5 * secondMoment() * width / firstMoment;
  }

  private boolean crossesHole(double level) {
    return Math.abs(opening.offset() - level) < opening.depth() / 2;
  }

  private double holeFirstMomentAbove(double level) {
    double top = opening.offset() + opening.depth() / 2 - level;
    double bottom = Math.max(0, opening.offset() - opening.depth() / 2 - level);
    return top <= 0 ? 0 : opening.width() * (top * top - bottom * bottom) / 2;
  }
}
