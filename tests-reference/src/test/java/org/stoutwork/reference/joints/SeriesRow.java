package org.stoutwork.reference.joints;

import java.util.Map;
import org.stoutwork.joint.Joint;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/** One row of {@code joint-series.csv}. */
record SeriesRow(Map<String, String> fields) {

  private static final WoodCatalogue WOODS = WoodCatalogue.load();

  String in(String column) {
    return fields.get(column);
  }

  /** Size or result; 0 where the cell is empty. */
  double number(String column) {
    String cell = in(column);
    return cell.isEmpty() ? 0 : Double.parseDouble(cell);
  }

  Joint.Members members() {
    return new Joint.Members(
        number("rail_depth_mm"),
        number("rail_thickness_mm"),
        number("post_depth_mm"),
        number("post_thickness_mm"));
  }

  /** Mean shear strength of clear wood near 12 %, from the product's own table, MPa. */
  double shear(String column) {
    return mean(column, ClearProperty.SHEAR);
  }

  /** Mean bending strength of clear wood near 12 %, from the product's own table, MPa. */
  double bending(String column) {
    return mean(column, ClearProperty.BENDING);
  }

  private double mean(String column, ClearProperty what) {
    Species wood = (Species) WOODS.byKey(in(column)).orElseThrow();
    return wood.clear().dry(what).map(Property::value).orElseThrow();
  }

  /** Mean of the paper in the sense that more is better: flexibility is turned over. */
  double measured() {
    double mean = number("mean");
    return in("shape").equals("tenon stiffness") ? 1 / mean : mean;
  }
}
