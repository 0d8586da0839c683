package org.stoutwork.joint;

/**
 * A joint between a rail (the piece that ends in the joint) and a post (the piece it meets). The
 * kinds are a closed set; {@link #fold} makes the compiler ask for every one of them.
 */
public sealed interface Joint
    permits MortiseAndTenon,
        Bridle,
        BoltedTenon,
        LooseWedgeTenon,
        HalfLap,
        DowelledButt,
        Housing,
        ScrewedButt,
        StatedSpring {

  /** What the trade calls it. */
  String title();

  /**
   * Refuses a joint that the pieces leave no room for.
   *
   * @throws JointFault naming the part, its value and the limit
   */
  void requireFits(Members members);

  /** Hands the joint to the case that is its kind. */
  <R> R fold(Cases<R> cases);

  /**
   * The pieces that meet, mm.
   *
   * @param railDepth depth of the rail in the plane of bending, d_r
   * @param railThickness thickness of the rail, b_r
   * @param postDepth depth of the post behind the shoulder, p
   * @param postThickness the other side of the post, b_p
   */
  record Members(double railDepth, double railThickness, double postDepth, double postThickness) {

    /** Checks that all four sides are above nought. */
    public Members {
      JointFault.requirePositive("rail depth", railDepth);
      JointFault.requirePositive("rail thickness", railThickness);
      JointFault.requirePositive("post depth", postDepth);
      JointFault.requirePositive("post thickness", postThickness);
    }
  }

  /** One answer for each kind of joint. */
  interface Cases<R> {
    /** For a mortise and tenon. */
    R mortiseAndTenon(MortiseAndTenon joint);

    /** For an open bridle. */
    R bridle(Bridle joint);

    /** For a stub tenon drawn up by bolts. */
    R boltedTenon(BoltedTenon joint);

    /** For a through tenon held by a loose wedge. */
    R looseWedgeTenon(LooseWedgeTenon joint);

    /** For a half-lap. */
    R halfLap(HalfLap joint);

    /** For a butt joint with dowels. */
    R dowelledButt(DowelledButt joint);

    /** For a housing. */
    R housing(Housing joint);

    /** For a butt joint with screws. */
    R screwedButt(ScrewedButt joint);

    /** For a spring stated by the user. */
    R statedSpring(StatedSpring joint);
  }
}
