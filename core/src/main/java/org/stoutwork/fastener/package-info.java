/**
 * Fasteners as records of geometry and material: wood pegs, coach screws, wood screws, machine
 * bolts with washers and nuts, nails; and the documents their formulas come from.
 *
 * <p>Formulas live in the rooms below: {@code fastener.lateral} (bearing under the shank and yield
 * modes), {@code fastener.withdrawal} (pulling out, pulling through, washers, steel) and {@code
 * fastener.placing} (slip, movement, distances). Start at {@link org.stoutwork.fastener.Fastener}.
 * Knows no joints and no wood tables. Uses {@code quantity} and {@code source}.
 */
package org.stoutwork.fastener;
