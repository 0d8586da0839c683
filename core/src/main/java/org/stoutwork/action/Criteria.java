package org.stoutwork.action;

import org.stoutwork.source.Source;

/**
 * What a duty asks of a bench.
 *
 * @param spanRatio span over sag of the top under a person or stock
 * @param levelRatio span over final sag under what stays on the bench
 * @param flatness sag of the top under the plane, mm
 * @param swayRatio height over sway under thrust
 * @param tipping resisting over tipping moment, at least
 * @param sliding friction over thrust, at least
 * @param strengthUse utilisation of strength, at most
 * @param source of these figures
 */
public record Criteria(
    double spanRatio,
    double levelRatio,
    double flatness,
    double swayRatio,
    double tipping,
    double sliding,
    double strengthUse,
    Source source) {

  private static final double LASTING_EASE = 1.4;

  /** Where the limit of lasting sag comes from. */
  public static final Source LASTING =
      Source.projectDefault("sag after years: 1.4 times what is allowed at once");

  /** Span over final sag of the top under a person or stock, with creep. */
  public double lastingRatio() {
    return spanRatio / LASTING_EASE;
  }
}
