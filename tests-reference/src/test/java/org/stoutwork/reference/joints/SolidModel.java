package org.stoutwork.reference.joints;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.joint.Bridle;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.Joint;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.joint.setting.FaceGrain;
import org.stoutwork.joint.setting.Glue;
import org.stoutwork.joint.setting.JointSetting;
import org.stoutwork.joint.setting.TimberStiffness;

/** One row of the solid models, and the joint it speaks of. */
record SolidModel(Map<String, String> row) {

  /** J. Wood Sci. 65 (2019), doi 10.1186/s10086-019-1794-4, Table 1; Poisson as the models took. */
  private static final TimberStiffness BEECH =
      new TimberStiffness(12205, 1858, 774, 899, 595, 195, 0.45, 0.51, 720);

  /** Ratios after the Wood Handbook, from memory, as the models took them. */
  private static final TimberStiffness FIR =
      new TimberStiffness(13400, 911, 670, 858, 1045, 94, 0.292, 0.449, 500);

  static List<SolidModel> all() {
    return CsvRows.of("/joints/joint-stiffness.csv").stream().map(SolidModel::new).toList();
  }

  /** Rows of the base mesh with one interface. */
  static List<SolidModel> of(String contact) {
    return all().stream()
        .filter(m -> m.row.get("interface").equals(contact))
        .filter(m -> m.number("mesh_refinement") == 1)
        .toList();
  }

  double number(String name) {
    return Double.parseDouble(row.get(name));
  }

  double mm(String name) {
    return number(name + "_mm");
  }

  String id() {
    return row.get("id");
  }

  boolean is(String kind) {
    return row.get("joint").equals(kind);
  }

  double rotation() {
    return number("k_rot_mesh_corrected");
  }

  TimberStiffness wood() {
    return row.get("material").equals("beech") ? BEECH : FIR;
  }

  private static FaceGrain grain(String letter) {
    return letter.equals("R") ? FaceGrain.RADIAL : FaceGrain.TANGENTIAL;
  }

  JointSetting setting() {
    return new JointSetting(
        new Joint.Members(mm("d"), mm("b"), mm("p"), mm("bp")),
        grain(row.get("post_face_grain")),
        grain(row.get("rail_depth_grain")),
        wood(),
        wood(),
        Glue.PVA,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        90);
  }

  double haunchHeight() {
    return is("haunched") ? mm("d") - mm("h") - mm("s_b") : 0;
  }

  Joint joint(Fit fit) {
    if (is("bridle")) {
      return new Bridle(mm("t"), 1, true, fit);
    }
    Optional<MortiseAndTenon.Haunch> haunch =
        is("haunched")
            ? Optional.of(new MortiseAndTenon.Haunch(haunchHeight(), mm("haunch")))
            : Optional.empty();
    boolean through = mm("l") >= mm("p");
    return new MortiseAndTenon(mm("h"), mm("t"), mm("l"), mm("s_b"), 0, 1, through, haunch, fit);
  }
}
