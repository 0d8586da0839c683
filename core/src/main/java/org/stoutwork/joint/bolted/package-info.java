/**
 * Rails drawn up by bolts: bed bolts with barrel or captive nuts, and the lever they work on.
 *
 * <p>Start at {@link org.stoutwork.joint.bolted.BedBolt}. Uses {@code working}.
 */
package org.stoutwork.joint.bolted;
