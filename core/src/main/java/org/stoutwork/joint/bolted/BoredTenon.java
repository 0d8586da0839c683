package org.stoutwork.joint.bolted;

import java.util.List;
import org.stoutwork.quantity.Unit;
import org.stoutwork.source.Source;
import org.stoutwork.working.Formula;
import org.stoutwork.working.Pad;

/**
 * The section of a stub tenon at its shoulder less the round bores of the bolts that run along it.
 * Shear is compared where the bores narrow it: the greatest V·Q/(I·b), with the first moment Q of
 * the sound tenon beyond a level in the bore (on the safe side) and the width b that the bore
 * leaves at its middle.
 *
 * @param thickness of the tenon, mm
 * @param height of the tenon, mm
 * @param bore diameter, mm, less than the thickness
 * @param levers distances of the bores above the tenon's middle, mm; 0 to 2 of them
 */
public record BoredTenon(double thickness, double height, double bore, List<Double> levers) {

  private static final Source STATICS =
      Source.derived("beam theory: section less round bores, V·Q/(I·b)");

  private static final Formula HOLE =
      Formula.define("A_b")
          .meaning("area of one bore")
          .unit(Unit.MM2)
          .where("D", "bore", Unit.MM)
          .as("π*D^2/4")
          .source(Source.derived("geometry"));

  private static final Formula AREA =
      Formula.define("A_n")
          .meaning("area of the tenon less its bores")
          .unit(Unit.MM2)
          .where("t", "tenon thickness", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("n_b", "number of bores in the tenon", Unit.ONE)
          .where("A_b", "area of one bore", Unit.MM2)
          .as("t*h - n_b*A_b")
          .source(Source.derived("geometry"));

  private static final Formula SHIFT =
      Formula.define("c_n")
          .meaning("shift of the net middle away from the bores")
          .unit(Unit.MM)
          .where("A_b", "area of one bore", Unit.MM2)
          .where("y_Σ", "sum of the distances of the bores from mid-height", Unit.MM)
          .where("A_n", "net area", Unit.MM2)
          .as("A_b*abs(y_Σ)/A_n")
          .source(Source.derived("geometry"));

  private static final Formula UPRIGHT =
      Formula.define("I_n")
          .meaning("second moment of the tenon less its bores, bent up and down")
          .unit(Unit.MM4)
          .where("t", "tenon thickness", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("n_b", "number of bores in the tenon", Unit.ONE)
          .where("D", "bore", Unit.MM)
          .where("A_b", "area of one bore", Unit.MM2)
          .where("y_q", "sum of the squared distances of the bores", Unit.MM2)
          .where("A_n", "net area", Unit.MM2)
          .where("c_n", "shift of the net middle", Unit.MM)
          .as("t*h^3/12 - n_b*π*D^4/64 - A_b*y_q - A_n*c_n^2")
          .source(Source.derived("parallel axes"));

  private static final Formula SIDEWAYS =
      Formula.define("I_z")
          .meaning("second moment of the tenon less its bores, bent sideways")
          .unit(Unit.MM4)
          .where("h", "tenon height", Unit.MM)
          .where("t", "tenon thickness", Unit.MM)
          .where("n_b", "number of bores in the tenon", Unit.ONE)
          .where("D", "bore", Unit.MM)
          .as("h*t^3/12 - n_b*π*D^4/64")
          .source(Source.derived("parallel axes"));

  private static final Formula AT_MIDDLE =
      Formula.define("t_m")
          .meaning("thickness that counts at mid-height, between the bores")
          .unit(Unit.MM)
          .where("I_n", "net second moment", Unit.MM4)
          .where("h", "tenon height", Unit.MM)
          .as("12*I_n/h^3")
          .source(STATICS);

  private static final Formula LEVEL =
      Formula.define("y")
          .meaning("level at which the bore is looked at: towards mid-height shear grows")
          .unit(Unit.MM)
          .where("y_b", "distance of the bore's middle from mid-height", Unit.MM)
          .where("D", "bore", Unit.MM)
          .as("max(y_b, D/8) - D/8")
          .source(
              Source.projectDefault(
                  "an eighth of the bore; never more than slices of the round bore give"));

  private static final Formula AT_BORE =
      Formula.define("t_b")
          .meaning("thickness that counts at the level of a bore, where two webs are left")
          .unit(Unit.MM)
          .where("I_n", "net second moment", Unit.MM4)
          .where("t", "tenon thickness", Unit.MM)
          .where("D", "bore", Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("y", "distance of the level from mid-height", Unit.MM)
          .as("12*I_n*(t - D)/(t*h*(h^2 - 4*y^2))")
          .source(STATICS);

  private static final Formula ACROSS =
      Formula.define("h_b")
          .meaning("height that counts for shear across the frame, the bores left out")
          .unit(Unit.MM)
          .where("I_z", "net second moment, sideways", Unit.MM4)
          .where("h", "tenon height", Unit.MM)
          .where("n_b", "number of bores in the tenon", Unit.ONE)
          .where("D", "bore", Unit.MM)
          .where("t", "tenon thickness", Unit.MM)
          .as("12*I_z*(h - n_b*D)/(h*t^3)")
          .source(STATICS);

  private static final Formula UPRIGHT_MODULUS =
      Formula.define("W_y")
          .meaning("section modulus of the tenon less its bores, bent up and down")
          .unit(Unit.MM3)
          .where("I_n", "net second moment", Unit.MM4)
          .where("h", "tenon height", Unit.MM)
          .where("c_n", "shift of the net middle", Unit.MM)
          .as("I_n/(h/2 + c_n)")
          .source(Source.derived("beam theory"));

  private static final Formula SIDEWAYS_MODULUS =
      Formula.define("W_z")
          .meaning("section modulus of the tenon less its bores, bent sideways")
          .unit(Unit.MM3)
          .where("I_z", "net second moment, sideways", Unit.MM4)
          .where("t", "tenon thickness", Unit.MM)
          .as("2*I_z/t")
          .source(Source.derived("beam theory"));

  private static final Formula TWISTED =
      Formula.define("h_T")
          .meaning("height of tenon that twists, the wood beside the bores left out")
          .unit(Unit.MM)
          .where("h", "tenon height", Unit.MM)
          .where("n_b", "number of bores in the tenon", Unit.ONE)
          .where("D", "bore", Unit.MM)
          .as("h - n_b*D")
          .source(Source.derived("on the safe side: less wood twists"));

  /** Checks that the bores lie inside the tenon. */
  public BoredTenon {
    levers = List.copyOf(levers);
    for (double lever : levers) {
      if (!(bore > 0 && bore < thickness && Math.abs(lever) + bore / 2 <= height / 2 + 1e-9)) {
        throw new IllegalArgumentException(
            "a bore of %s mm, %s mm from the middle, does not lie inside a tenon of %s mm × %s mm"
                .formatted(bore, lever, thickness, height));
      }
    }
    if (levers.size() * bore >= height) {
      throw new IllegalArgumentException(
          "%s bores of %s mm leave nothing of a tenon %s mm high"
              .formatted(levers.size(), bore, height));
    }
  }

  /** A tenon without bores. */
  public static BoredTenon sound(double thickness, double height) {
    return new BoredTenon(thickness, height, 0, List.of());
  }

  /** Whether a bore runs through it. */
  public boolean bored() {
    return !levers.isEmpty();
  }

  private record Net(double area, double shift, double inertia) {}

  private Net net(Pad pad) {
    double hole = pad.take(HOLE, bore);
    int n = levers.size();
    double area = pad.take(AREA, thickness, height, n, hole);
    double sum = levers.stream().mapToDouble(Double::doubleValue).sum();
    double squares = levers.stream().mapToDouble(y -> y * y).sum();
    double shift = pad.take(SHIFT, hole, sum, area);
    double inertia = pad.take(UPRIGHT, thickness, height, n, bore, hole, squares, area, shift);
    return new Net(area, shift, inertia);
  }

  private double sideways(Pad pad) {
    return pad.take(SIDEWAYS, height, thickness, levers.size(), bore);
  }

  /**
   * Thickness of a sound tenon of this height in which the same force up or down makes the same
   * greatest shear stress, mm.
   */
  public double shearThickness(Pad pad) {
    if (!bored()) {
      return thickness;
    }
    double inertia = net(pad).inertia();
    double least = pad.take(AT_MIDDLE, inertia, height);
    for (double lever : levers.stream().map(Math::abs).distinct().toList()) {
      double y = pad.take(LEVEL, lever, bore);
      least = Math.min(least, pad.take(AT_BORE, inertia, thickness, bore, height, y));
    }
    return least;
  }

  /** Height of a sound tenon of this thickness with the same greatest shear sideways, mm. */
  public double shearHeight(Pad pad) {
    return bored()
        ? pad.take(ACROSS, sideways(pad), height, levers.size(), bore, thickness)
        : height;
  }

  /**
   * What bends and pulls at the root.
   *
   * @param area mm²
   * @param upright section modulus up and down, mm³
   * @param sideways section modulus sideways, mm³
   */
  public record Root(double area, double upright, double sideways) {}

  /** The net section that bends and is pulled. */
  public Root root(Pad pad) {
    Net net = net(pad);
    return new Root(
        net.area(),
        pad.take(UPRIGHT_MODULUS, net.inertia(), height, net.shift()),
        pad.take(SIDEWAYS_MODULUS, sideways(pad), thickness));
  }

  /** Height that twists, mm. */
  public double twistHeight(Pad pad) {
    return bored() ? pad.take(TWISTED, height, levers.size(), bore) : height;
  }
}
