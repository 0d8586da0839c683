package org.stoutwork.joint;

import org.stoutwork.fastener.Peg;
import org.stoutwork.quantity.Writing;

/** How a tenon is held in its mortise. */
public sealed interface Fit {

  /** Whether the cheeks are glued. */
  boolean glued();

  /** Glued cheeks. */
  record Glued() implements Fit {
    @Override
    public boolean glued() {
      return true;
    }
  }

  /**
   * Neither glued nor held.
   *
   * @param play total play of the tenon along the mortise, mm; 0 for a driven fit
   */
  record Dry(double play) implements Fit {

    /** Checks the play. */
    public Dry {
      JointFault.requireAtLeast("play of the tenon", play, 0, "a driven fit has 0 mm");
    }

    @Override
    public boolean glued() {
      return false;
    }
  }

  /**
   * Wedges driven into kerfs of the tenon end, through or blind (fox).
   *
   * @param glued whether the cheeks are glued as well
   * @param wedges 1 or 2
   * @param leaf thickness of the tenon between a kerf and the edge that it spreads, mm
   * @param angle included angle of one wedge, degrees
   * @param spread by which one leaf of the tenon is bent at its tip, mm
   * @param kerf length of the kerf, mm
   * @param flare slope of the mortise end to one side, degrees
   */
  record Wedged(
      boolean glued,
      int wedges,
      double leaf,
      double angle,
      double spread,
      double kerf,
      double flare)
      implements Fit {

    /** Checks the wedges. */
    public Wedged {
      JointFault.requireCount("number of wedges", wedges, 1, 2);
      JointFault.requirePositive("distance of the kerf from the edge", leaf);
      JointFault.requirePositive("length of the kerf", kerf);
      JointFault.requireAtLeast(
          "spread of the tenon", spread, 0, "a wedge spreads or does nothing");
      if (!(angle > 0 && angle < 45 && flare >= 0 && flare < 45)) {
        throw new IllegalArgumentException(
            "wedge angle %s° and flare %s° must lie between 0° and 45°; bench wedges have 4° to 8°"
                .formatted(Writing.number(angle, 3), Writing.number(flare, 3)));
      }
    }
  }

  /**
   * Pegs through post and tenon; drawbored if the holes are offset.
   *
   * @param glued whether the cheeks are glued as well
   * @param peg one peg
   * @param pegs how many, one above the other
   * @param offset of the hole in the tenon towards the shoulder, mm; 0 without drawboring
   * @param fromShoulder distance of the pegs from the shoulder, mm
   * @param spacing between pegs along the tenon height, mm; 0 for a single peg
   */
  record Pegged(
      boolean glued, Peg peg, int pegs, double offset, double fromShoulder, double spacing)
      implements Fit {

    /** Checks the pegs. */
    public Pegged {
      JointFault.requireCount("number of pegs", pegs, 1, 4);
      JointFault.requireAtLeast("drawbore offset", offset, 0, "towards the shoulder");
      JointFault.requireAtMost(
          "drawbore offset",
          offset,
          peg.diameter() / 4,
          "a quarter of the peg, or it breaks before it draws");
      JointFault.requireAtLeast(
          "distance of the peg from the shoulder",
          fromShoulder,
          peg.diameter() / 2,
          "or the peg stands outside the post");
      if (pegs > 1) {
        JointFault.requireAtLeast("peg spacing", spacing, peg.diameter(), "or the holes meet");
      }
    }

    /** Whether the peg draws the shoulder up. */
    public boolean drawbored() {
      return offset > 0;
    }
  }
}
