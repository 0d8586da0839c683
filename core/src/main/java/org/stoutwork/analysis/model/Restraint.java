package org.stoutwork.analysis.model;

/** How the ground holds a node in one global direction. */
public sealed interface Restraint {
  /** Cannot move. */
  record Fixed() implements Restraint {}

  /**
   * Linear spring to the ground.
   *
   * @param stiffness N/mm or N mm/rad, positive
   */
  record Elastic(double stiffness) implements Restraint {
    /** Checks the range. */
    public Elastic {
      Check.positive("support stiffness", stiffness, "N/mm or N mm/rad");
    }
  }

  /**
   * Moved by a given amount in every load case.
   *
   * @param displacement mm or rad
   */
  record Prescribed(double displacement) implements Restraint {
    /** Checks that it is a number. */
    public Prescribed {
      Check.finite("prescribed displacement", displacement);
    }
  }

  /** Rigid one-way support: may move in the positive direction, pushes only. */
  record CompressionOnly() implements Restraint {}

  /**
   * Elastic one-way support.
   *
   * @param stiffness N/mm, positive
   */
  record CompressionOnlyElastic(double stiffness) implements Restraint {
    /** Checks the range. */
    public CompressionOnlyElastic {
      Check.positive("one-way support stiffness", stiffness, "N/mm");
    }
  }

  /** The fixed restraint. */
  Restraint FIXED = new Fixed();

  /** The rigid one-way restraint. */
  Restraint COMPRESSION_ONLY = new CompressionOnly();

  /** A linear spring to the ground. */
  static Restraint elastic(double stiffness) {
    return new Elastic(stiffness);
  }

  /** A settlement or imposed rotation. */
  static Restraint prescribed(double displacement) {
    return new Prescribed(displacement);
  }

  /** An elastic one-way support. */
  static Restraint compressionOnly(double stiffness) {
    return new CompressionOnlyElastic(stiffness);
  }
}
