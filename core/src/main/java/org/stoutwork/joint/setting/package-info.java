/**
 * What a joint connects and under which rules it is judged: the two pieces with the direction of
 * their growth rings, their elastic values and strengths as plain numbers, the glue, the forces,
 * and the family of formulas.
 *
 * <p>The numbers come from outside; this room knows no species and no classes. Start at {@link
 * org.stoutwork.joint.setting.JointSetting}. Uses {@code joint}.
 */
package org.stoutwork.joint.setting;
