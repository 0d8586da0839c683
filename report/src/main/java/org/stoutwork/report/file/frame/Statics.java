package org.stoutwork.report.file.frame;

import java.util.List;
import org.stoutwork.analysis.solve.ContactState;

/** What first-order and second-order results have in common. Units N, mm, rad. */
public interface Statics {

  /** Displacement of a node, ux uy uz rx ry rz, global axes. */
  double[] displacement(String node);

  /** Force and moment by the support on the structure, global axes. */
  double[] reaction(String node);

  /** Results of a member. */
  MemberStatics member(String name);

  /** The state of every one-way support and contact. */
  List<ContactState> contacts();

  /** What remains of loads and reactions, relative to the sum of their sizes. */
  double equilibriumError();

  /** Largest unbalanced nodal force relative to the largest nodal load. */
  double residual();

  /** By how much the solution fails Betti's theorem together with probing forces, relative. */
  double reciprocityError();
}
