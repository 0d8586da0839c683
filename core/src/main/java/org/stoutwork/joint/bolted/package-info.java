/**
 * Rails drawn up by bolts: bed bolts with barrel or captive nuts, and the lever they work on.
 *
 * <p>Start at {@link org.stoutwork.joint.bolted.BedBolt}. Knows no wood tables: strengths of the
 * wood are handed in. Uses {@code quantity}, {@code source}, {@code working} and {@code
 * joint.setting}.
 */
package org.stoutwork.joint.bolted;
