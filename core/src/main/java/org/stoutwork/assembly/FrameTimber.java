package org.stoutwork.assembly;

import java.util.Optional;
import org.stoutwork.joint.setting.TimberStiffness;
import org.stoutwork.wood.direction.PlateModuli;

/**
 * What a frame needs to know of a wood or a sheet, means at the moisture of use.
 *
 * @param e modulus along the grain or the stronger way, MPa
 * @param eAcross modulus across, in the plane of a board or sheet, MPa
 * @param g shear modulus of bending along, and of twisting in the plane of a board, MPa
 * @param gAcross shear modulus of bending across (rolling shear), MPa
 * @param density kg/m³
 * @param plate moduli of a plate whose grain or stronger way runs along
 * @param directions all elastic values, where the wood can be jointed; sheets cannot
 */
public record FrameTimber(
    double e,
    double eAcross,
    double g,
    double gAcross,
    double density,
    PlateModuli plate,
    Optional<TimberStiffness> directions) {}
