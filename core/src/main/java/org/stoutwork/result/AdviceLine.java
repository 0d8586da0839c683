package org.stoutwork.result;

import java.util.Optional;
import org.stoutwork.quantity.Measure;
import org.stoutwork.source.Source;

/**
 * A joint held against what makers do. No verdict: nothing fails by leaving a proportion of the
 * trade.
 *
 * @param joint where it is
 * @param part of the joint it speaks of
 * @param words the rule as a maker would say it
 * @param value of this joint
 * @param of what the value is a share or a multiple of, such as {@code of the rail's thickness};
 *     empty where it has a unit
 * @param followed whether the joint follows the rule
 * @param effect of following it, in words; empty where it is followed or nothing is known
 * @param ratio of that effect: with the rule followed over as it is
 * @param source of the rule
 */
public record AdviceLine(
    String joint,
    String part,
    String words,
    Measure value,
    String of,
    boolean followed,
    String effect,
    Optional<Double> ratio,
    Source source) {}
