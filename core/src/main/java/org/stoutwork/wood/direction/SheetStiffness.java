package org.stoutwork.wood.direction;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.SheetProperty;

/**
 * Mean stiffness of sheets. What a source does not print is filled by the ratios below, which are
 * defaults of this project.
 */
public final class SheetStiffness {

  /**
   * Stand-ins as parts of the modulus along.
   *
   * @param across E2/E1
   * @param panelShear G12/E1
   * @param planarShear G13/E1, and for layered sheets G23/E1
   * @param poisson ν12
   */
  private record StandIn(double across, double panelShear, double planarShear, double poisson) {}

  private static final StandIn CROSS_LAYERED = new StandIn(0.33, 0.06, 0.02, 0.15);
  private static final StandIn PARALLEL_LAYERED = new StandIn(0.033, 0.05, 0.05, 0.4);
  private static final StandIn WITHOUT_GRAIN = new StandIn(1, 0.38, 0.06, 0.3);

  private static final Map<Product, StandIn> STAND_INS = standIns();

  private static final Source FILLED =
      Source.projectDefault("the source prints no such modulus: part of the modulus along");

  private SheetStiffness() {}

  private static Map<Product, StandIn> standIns() {
    Map<Product, StandIn> map = new EnumMap<>(Product.class);
    map.put(Product.PLYWOOD, CROSS_LAYERED);
    map.put(Product.OSB, new StandIn(0.4, 0.22, 0.01, 0.2));
    map.put(Product.BLOCKBOARD, new StandIn(1, 0.06, 0.02, 0.1));
    map.put(Product.LVL, PARALLEL_LAYERED);
    map.put(Product.GLULAM, PARALLEL_LAYERED);
    return Collections.unmodifiableMap(map);
  }

  /** The moduli of a sheet; empty if not even its bending modulus along is known. */
  public static Optional<PlateModuli> of(SheetGood sheet) {
    Optional<Property> along = sheet.value(SheetProperty.MODULUS_ALONG);
    if (along.isEmpty()) {
      return Optional.empty();
    }
    double e = along.get().value();
    StandIn in = STAND_INS.getOrDefault(sheet.product(), WITHOUT_GRAIN);
    double g13 = value(sheet, SheetProperty.PLANAR_MODULUS_ALONG, in.planarShear() * e);
    return Optional.of(
        new PlateModuli(
            e,
            value(sheet, SheetProperty.MODULUS_ACROSS, in.across() * e),
            value(sheet, SheetProperty.PANEL_SHEAR_MODULUS, in.panelShear() * e),
            g13,
            value(sheet, SheetProperty.PLANAR_MODULUS_ACROSS, g13),
            in.poisson(),
            isWhole(sheet) ? along.get().source() : FILLED));
  }

  private static double value(SheetGood sheet, SheetProperty what, double otherwise) {
    return sheet.value(what).map(Property::value).orElse(otherwise);
  }

  private static boolean isWhole(SheetGood sheet) {
    return sheet.value(SheetProperty.MODULUS_ACROSS).isPresent()
        && sheet.value(SheetProperty.PANEL_SHEAR_MODULUS).isPresent()
        && sheet.value(SheetProperty.PLANAR_MODULUS_ALONG).isPresent()
        && sheet.value(SheetProperty.PLANAR_MODULUS_ACROSS).isPresent();
  }
}
