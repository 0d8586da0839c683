package org.stoutwork.analysis.solve;

import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.model.Link;

/**
 * One link of a panel among the equations: what it measures and where its force is found.
 *
 * @param form displacement of the panel against what holds it
 * @param kind how it holds
 * @param number of the condition or contact, -1 for a spring
 * @param stiffness N/mm or N mm/rad of a spring
 */
record PanelGrip(LinearForm form, Kind kind, int number, double stiffness) {
  enum Kind {
    CONDITION,
    SPRING,
    CONTACT
  }

  /** Puts a link into the equations. */
  static PanelGrip put(Equations equations, String part, LinearForm form, Link link) {
    if (link instanceof Link.Elastic spring) {
      equations.spring(part, form, spring.stiffness());
      return new PanelGrip(form, Kind.SPRING, -1, spring.stiffness());
    }
    if (link instanceof Link.Contact) {
      int number = equations.contact(part, form, Double.POSITIVE_INFINITY);
      return new PanelGrip(form, Kind.CONTACT, number, 0);
    }
    if (link instanceof Link.ElasticContact spring) {
      return new PanelGrip(
          form, Kind.CONTACT, equations.contact(part, form, spring.stiffness()), 0);
    }
    return new PanelGrip(form, Kind.CONDITION, equations.hold(form, 0), 0);
  }

  /** Force of the link on the panel. */
  double force(HoldingForces forces) {
    return switch (kind) {
      case CONDITION -> forces.condition(number);
      case SPRING -> -stiffness * form.at(forces.displacements());
      case CONTACT -> forces.contact(number);
    };
  }

  boolean isOpen(HoldingForces forces) {
    return kind == Kind.CONTACT && forces.isOpen(number);
  }
}
