/**
 * Every kind of joint a bench is made with, as validated records of geometry in millimetres.
 *
 * <p>Start at {@link org.stoutwork.joint.Joint}. A record checks what it can know alone; {@link
 * org.stoutwork.joint.Joint#requireFits} checks it against the pieces it joins and names the part
 * that cannot be. Nothing is calculated here: {@code joint.setting} says what the joint connects,
 * {@code joint.stiffness} and {@code joint.capacity} are the front doors of the calculation, and
 * {@code joint.tenon}, {@code joint.glue}, {@code joint.peg} and {@code joint.bolted} hold the
 * formulas. Uses {@code quantity} and {@code fastener}.
 */
package org.stoutwork.joint;
