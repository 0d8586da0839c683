package org.stoutwork.check.service;

import org.stoutwork.assembly.JointLevel;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.LevelAnalysis;

/** Sag by the grillage of strips: bearings hold both ways, so effects add up. */
final class StripSag implements SagModel {

  private final Inquiry inquiry;
  private final SagLine lines;

  StripSag(Inquiry inquiry, SagLine lines) {
    this.inquiry = inquiry;
    this.lines = lines;
  }

  @Override
  public double atOnce(JointLevel level, SagSpot spot) {
    LevelAnalysis analysis = inquiry.at(level);
    return spot.stand().force() * sag(SagLine.of(analysis.alone(spot.stand().unit())), spot);
  }

  @Override
  public SagParts parts(JointLevel level, SagSpot spot) {
    LevelAnalysis analysis = inquiry.at(level);
    double own = sag(SagLine.of(analysis.alone(analysis.permanent())), spot);
    double stored =
        analysis.loads().storesAnything()
            ? sag(SagLine.of(analysis.alone(analysis.stored())), spot)
            : 0;
    return new SagParts(own, stored, atOnce(level, spot));
  }

  private double sag(SagLine.Heights heights, SagSpot spot) {
    return lines.sag(heights, spot);
  }
}
