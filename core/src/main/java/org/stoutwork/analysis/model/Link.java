package org.stoutwork.analysis.model;

/** How a {@link Tie} joins its two nodes in one global direction. */
public sealed interface Link {
  /** Both sides move together. */
  record Rigid() implements Link {}

  /**
   * Linear spring.
   *
   * @param stiffness N/mm or N mm/rad, positive
   */
  record Elastic(double stiffness) implements Link {
    /** Checks the range. */
    public Elastic {
      Check.positive("tie stiffness", stiffness, "N/mm or N mm/rad");
    }
  }

  /** Rigid one-way contact: the upper side may part from the lower along +direction only. */
  record Contact() implements Link {}

  /**
   * Elastic one-way contact.
   *
   * @param stiffness N/mm, positive
   */
  record ElasticContact(double stiffness) implements Link {
    /** Checks the range. */
    public ElasticContact {
      Check.positive("contact stiffness", stiffness, "N/mm");
    }
  }

  /** The rigid link. */
  Link RIGID = new Rigid();

  /** The rigid one-way contact. */
  Link CONTACT = new Contact();

  /** A linear spring. */
  static Link elastic(double stiffness) {
    return new Elastic(stiffness);
  }

  /** An elastic one-way contact. */
  static Link contact(double stiffness) {
    return new ElasticContact(stiffness);
  }
}
