package org.stoutwork.joint.setting;

/**
 * Glues of the workshop. Shear moduli are orders of magnitude, a project default: the stiffness of
 * a joint hardly depends on them. Classes are those that such glues are usually sold with.
 */
public enum GlueKind {
  PVA_D2(new Glue("PVA D2", 0.1, 150, GlueClass.D2, true)),
  PVA_D3(new Glue("PVA D3", 0.1, 150, GlueClass.D3, true)),
  PVA_D4(new Glue("PVA D4", 0.1, 150, GlueClass.D4, true)),
  HIDE(new Glue("hide glue", 0.1, 500, GlueClass.D1, false)),
  UREA(new Glue("urea resin", 0.1, 1500, GlueClass.STRUCTURAL_II, false)),
  POLYURETHANE(new Glue("polyurethane", 0.1, 300, GlueClass.D4, false)),
  RESORCINOL(new Glue("resorcinol", 0.1, 1500, GlueClass.STRUCTURAL_I, false)),
  EPOXY(new Glue("epoxy", 0.2, 1000, GlueClass.D4, false));

  private final Glue glue;

  GlueKind(Glue glue) {
    this.glue = glue;
  }

  /** The glue. */
  public Glue glue() {
    return glue;
  }

  /** As it is written and printed. */
  public String words() {
    return glue.name();
  }
}
