package org.stoutwork.bench;

import java.util.Optional;
import org.stoutwork.quantity.Length;

/**
 * An end frame: a front and a back leg with their rails. A bench has two or more; those between the
 * ends are built alike and carry the same name for want of a better.
 *
 * @param name in words, such as "left"
 * @param at distance of the leg centres from the left end of the top
 * @param leg both legs
 * @param frontInset from the front edge of the top to the outer face of the front leg
 * @param backInset from the back edge of the top to the outer face of the back leg
 * @param topRail under the top
 * @param bottomRail near the floor, if any
 * @param foot a sled under the legs, if any
 */
public record EndFrame(
    String name,
    Length at,
    Leg leg,
    Length frontInset,
    Length backInset,
    Rail topRail,
    Optional<Rail> bottomRail,
    Optional<Foot> foot) {}
