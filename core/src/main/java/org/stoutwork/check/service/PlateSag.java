package org.stoutwork.check.service;

import java.util.LinkedHashMap;
import java.util.Map;
import org.stoutwork.action.Action;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.check.PlateAnswer;
import org.stoutwork.check.PlatedTop;

/**
 * Sag by the plate. It may part from its bearings, so effects do not add up: each part is the
 * difference that it makes to what lies on the top already.
 */
final class PlateSag implements SagModel {

  private final PlatedTop plate;
  private final SagLine lines;

  PlateSag(PlatedTop plate, SagLine lines) {
    this.plate = plate;
    this.lines = lines;
  }

  @Override
  public double atOnce(JointLevel level, SagSpot spot) {
    return lines.sag(atOnce(level, spot, true)::at, spot) - own(level, spot);
  }

  private double own(JointLevel level, SagSpot spot) {
    return lines.sag(atOnce(level, spot, false)::at, spot);
  }

  private PlateAnswer atOnce(JointLevel level, SagSpot spot, boolean withAction) {
    return plate.under(level, parts(spot, false, withAction));
  }

  @Override
  public SagParts parts(JointLevel level, SagSpot spot) {
    double own = own(level, spot);
    double stored = together(level, spot, false);
    double all = together(level, spot, true);
    return new SagParts(own, stored - own, all - stored);
  }

  private double together(JointLevel level, SagSpot spot, boolean withAction) {
    return lines.sag(plate.under(level, parts(spot, true, withAction))::at, spot);
  }

  private Map<LoadCase, Double> parts(SagSpot spot, boolean withStored, boolean withAction) {
    Map<LoadCase, Double> parts = new LinkedHashMap<>();
    parts.put(plate.loads().permanent(), 1.0);
    if (withStored && plate.loads().storesAnything()) {
      parts.put(plate.loads().stored(), 1.0);
    }
    if (withAction && spot.stand().force() != 0) {
      LoadCase unit =
          spot.stand().action() instanceof Action.SpreadOnTop
              ? plate.loads().unitSpread()
              : plate.loads().unitPatch(spot.line(), spot.station());
      parts.put(unit, spot.stand().force());
    }
    return parts;
  }

  /** How far two meshes differ in the sag of a spot under all loads, relative. */
  double meshDifference(JointLevel level, SagSpot spot) {
    PlateAnswer answer = atOnce(level, spot, true);
    double usual = lines.sag(answer::onUsual, spot);
    double coarse = lines.sag(answer::onCoarse, spot);
    return usual == 0 ? 0 : Math.abs((usual - coarse) / usual);
  }
}
