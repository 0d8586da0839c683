package org.stoutwork.check.caution;

import org.stoutwork.quantity.Writing;
import org.stoutwork.result.Caution;
import org.stoutwork.result.Severity;
import org.stoutwork.result.Utilisation;

/** The cautions: hazard, consequence, what to do, in under forty words each. */
final class CautionText {

  private CautionText() {}

  static Caution assumptions() {
    return notice(
        "C-02",
        "This sheet is a calculation on stated assumptions. Local building, workplace and school"
            + " rules come first, and a licensed engineer's judgement overrides this sheet.");
  }

  static Caution notCheckedByAnother() {
    return notice(
        "C-03",
        "Nobody else has checked this yet. Keep a shared, school or work bench out of use until a"
            + " second competent person has followed the sheet and signed it.");
  }

  static Caution defaults() {
    return notice(
        "C-04",
        "Values marked \"project default\" were not chosen for your bench. Put measured ones in their"
            + " place where you can.");
  }

  static Caution fromMemory(String where) {
    return notice(
        "C-05",
        "The governing check (%s) rests on values not verified against their source. Look them up"
                .formatted(where)
            + " before relying on it.");
  }

  static Caution close(String where) {
    return notice(
        "C-06",
        "%s holds by less than the accuracy of the inputs. Treat it as not shown to hold, or make the"
                .formatted(where)
            + " part larger.");
  }

  static Caution fails(String where) {
    return warning(
        "C-07",
        "Does not hold: %s. Do not load the bench as described. Change the design and check again."
            .formatted(where));
  }

  static Caution clearWood() {
    return notice(
        "C-10",
        "Strengths start from averages of small faultless pieces. Real boards are weaker and vary."
            + " The stated reductions were applied; choose boards by eye as well.");
  }

  static Caution knots() {
    return caution(
        "C-11",
        "Keep knots out of the middle third and the lower edge of rails, and away from joints. A knot"
            + " wider than a quarter of the face is a reject here.");
  }

  static Caution slope() {
    return caution(
        "C-12",
        "Follow the grain: if it runs out faster than 1 in 10, reject the piece for a leg or rail."
            + " Sloping grain breaks suddenly, with little warning.");
  }

  static Caution movement() {
    return notice(
        "C-16",
        "The holes leave the top less room than its own movement needs. Expect a split, a cupped top"
            + " or a racked frame. Slot the holes, or make the slots longer.");
  }

  static Caution unheld(double play) {
    return caution(
        "C-27",
        "No screw holds the top in its place: it may slide by %s mm on its rails before one bears,"
                .formatted(Writing.fixed(play, 1))
            + " which no sway here holds. Let one screw of each rail fit its hole.");
  }

  static Caution creep(double factor) {
    return notice(
        "C-17",
        "Wood keeps sagging under steady load: in the end %s times the first day's sag. Level the"
                .formatted(Writing.fixed(factor, 1))
            + " bench again after a year.");
  }

  static Caution glue() {
    return caution(
        "C-20",
        "Glue is taken as strong as the wood. That needs close fit, clean fresh surfaces, right"
            + " spread, pressure and full cure. A glue line thicker than 0.2 mm is not that joint.");
  }

  static Caution gluesPoorly(String woods) {
    return caution(
        "C-26",
        "%s: wood that glues poorly. Plane it just before gluing, use an adhesive made for such wood,"
                .formatted(woods)
            + " and test a scrap joint: it must break in the wood. Its glue lines are counted lower.");
  }

  static Caution jointStiffness(double low, double high) {
    return notice(
        "C-21",
        ("Sway depends mainly on how stiff the joints are, the least known input. With the softest"
                + " joints its utilisation is %s, with the stiffest %s.")
            .formatted(Utilisation.shown(low), Utilisation.shown(high)));
  }

  static Caution bolts() {
    return caution(
        "C-22",
        "A loose bolt lets the bench wobble. Tighten every bolt, again after a month and after the"
            + " first heating season; the check counts on it.");
  }

  static Caution countsOn(String what) {
    return caution(
        "C-41",
        ("Tipping and sliding count on: %s. Without it this sheet does not hold; sweep the floor and"
                + " look after it.")
            .formatted(what));
  }

  static Caution tipping() {
    return warning(
        "C-30",
        "May overturn when pushed or sat on: serious crush injury. Fix it to floor or wall, widen the"
            + " feet, or add low ballast.");
  }

  static Caution sliding() {
    return caution(
        "C-31",
        "The bench may walk across the floor under planing. Use rubber pads, ballast or a floor"
            + " fixing.");
  }

  static Caution clamp() {
    return caution(
        "C-33",
        "The force of vises is checked on the edge of the top only, not on their jaws and fixings."
            + " A tube on the handle can crack the jaw or fling the work.");
  }

  static Caution machine() {
    return warning(
        "C-35",
        "Bolt the machine down as its maker says; keep guards, stop switch and safe standing room."
            + " This sheet checks the bench only.");
  }

  static Caution heavy(double kg) {
    return warning(
        "C-37",
        "Heavy: %s kg. Plan the lift: helpers or a dolly, a clear path, gloves and strong shoes, no"
                .formatted(Writing.number(kg, 3))
            + " lifting by the overhang of the top.");
  }

  static Caution school() {
    return warning(
        "C-38",
        "Pupils sit, lean and pull together. Supervise them, fix the bench to the floor, keep vise"
            + " handles out of walkways.");
  }

  static Caution outreach() {
    return caution(
        "C-39",
        "Vises or work stand out far at hip height: mark, pad or remove them when not in use.");
  }

  static Caution dust() {
    return warning(
        "C-51",
        "Wood dust harms lungs and can cause asthma; hardwood dust can cause nasal cancer. Extract at"
            + " the source, wear a fitted mask, do not sweep dry.");
  }

  static Caution method() {
    return notice(
        "C-60",
        "Linear-elastic frame, small movements, straight members, joints as given. Buckling and creep"
            + " only as stated.");
  }

  static Caution unevenFloor() {
    return notice(
        "C-63",
        "All feet are taken to bear. Shim the bench on an uneven floor, or expect it to rock and one"
            + " leg to carry up to half of everything.");
  }

  private static Caution warning(String code, String message) {
    return new Caution(code, Severity.WARNING, message);
  }

  private static Caution caution(String code, String message) {
    return new Caution(code, Severity.CAUTION, message);
  }

  private static Caution notice(String code, String message) {
    return new Caution(code, Severity.NOTICE, message);
  }
}
