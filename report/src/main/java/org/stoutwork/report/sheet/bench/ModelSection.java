package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.bench.Footing;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Bullets;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.result.SelfCheck;

/** The model in words, how well its equations hold, what is assumed and what is left out. */
final class ModelSection {

  private ModelSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(Heading.of(1, "Model and assumptions", "model"));
    out.add(Heading.of(2, "The model in words"));
    out.add(bullets(model(m)));
    out.add(Heading.of(2, "How well it holds together"));
    out.add(Paragraph.of(selfCheck(m.result().selfCheck())));
    out.add(Heading.of(2, "Assumptions"));
    out.add(bullets(assumptions(m)));
    out.add(Heading.of(2, "What this sheet does not cover"));
    out.add(bullets(notCovered(m)));
    return out;
  }

  private static Bullets bullets(List<String> markups) {
    return new Bullets(markups.stream().map(RichText::of).toList());
  }

  private static List<String> model(Matter m) {
    List<String> out = new ArrayList<>();
    out.add(
        "Legs, rails, stretchers and feet are straight members in space that bend, shear, stretch"
            + " and twist (Timoshenko beams); their axes run through the middle of each part, and"
            + " stiff arms lead from the axis of a leg to the shoulder of a rail.");
    out.add(
        "Each joint is a set of springs at the shoulder. Every analysis is made three times, with"
            + " all joints soft, mean and stiff (table {table:joints}).");
    out.add(
        "The top is a grillage: strips along the grain and strips across it, each with its own"
            + " stiffness and half of the slab's resistance to twisting. It rests on the rails, and"
            + " on stretchers that touch it, through bearings that pass force but no moment;"
            + " sideways they pass what the screws or the glue can. "
            + play(m));
    out.add(
        "Sag, level and give of the top are those of a plate in place of the grillage: orthotropic,"
            + " with shear, on the same bearings, from which it may part against the pull of its"
            + " screws. Both figures stand in the workings.");
    out.add(
        m.bench().footing() == Footing.FIXED
            ? "The feet are held to the floor in all directions; they may turn."
            : "The feet press on the floor and may lift from it; sideways the floor holds them, and"
                + " sliding is checked for the bench as a whole against friction.");
    out.add(
        "Weights act where they are. A point action is tried at every crossing of the grillage, a"
            + " thrust on every side and in both senses; the worst place of each response is found"
            + " by superposition and then analysed with feet free to lift.");
    out.add(
        "Sway includes the second-order effect of the weight that leans with the frame (table"
            + " {table:racking}). Members in compression are checked for buckling, deep thin ones"
            + " that are bent for lateral buckling.");
    return out;
  }

  /** How the play of the top's screws is treated. */
  private static String play(Matter m) {
    TopFixing fixing = m.bench().top().fixing();
    if (fixing.play() > 0) {
      return "All screws of the top have play in their holes: in its direction one of each rail is"
          + " counted as bearing from the start; the slide before that, up to "
          + Shown.plain(m.amounts().movement(fixing.play()))
          + ", is in no figure, nor is friction.";
    }
    boolean all = fixing.tightAlong() == fixing.perRail();
    if (all && fixing.tightAcross() == fixing.perRail()) {
      return "The screws of the top fit their holes and share alike.";
    }
    return all
        ? "Across the bench only the screw of each rail that fits its hole passes force; along it"
            + " all do, their slots being no wider than they are."
        : "Only the screw of each rail that fits its hole passes force sideways; the others have"
            + " play.";
  }

  private static String selfCheck(SelfCheck check) {
    return "**"
        + check.analyses()
        + "** load cases and combinations were solved. In the worst of them **equilibrium holds to "
        + small(check.equilibriumError())
        + " of the load**, the nodal residual is "
        + small(check.residual())
        + " of the largest nodal load, and two displacements that must be equal by reciprocity differ"
        + " by "
        + small(check.reciprocityError())
        + " of their size. The sheet asks for "
        + small(SelfCheck.ALLOWED)
        + " in equilibrium: **"
        + (check.holds() ? "it holds" : "it does not hold, and no figure here may be relied on")
        + "**.";
  }

  private static String small(double value) {
    return Shown.plain(Writing.number(value, 2));
  }

  private static List<String> assumptions(Matter m) {
    List<String> out = new ArrayList<>();
    out.add(
        "Material and joints are linear and elastic; movements are small against the sizes; parts"
            + " are straight, sound, and of the sizes and woods in table {table:parts}.");
    out.add(
        "Joints fit as drawn. If they are softer than the soft end of table {table:joints}, sway"
            + " grows in step: measure it after building (section {section:care}).");
    out.add("All feet bear on an even floor.");
    out.add(
        "The screws of the top stand clear of the joints in the rails, and run through their whole"
            + " depth: a head that is sunk into the rail weakens it, and is not covered.");
    out.add(
        "Least distances of screws and nails grow evenly from those to an unloaded edge or end to"
            + " those to a loaded one, with the part of the strength that is used. The codes ask for"
            + " the greater at any load: who signs accepts this departure.");
    out.add(
        "The actions of table {table:actions} are as large as anything that will happen; nobody"
            + " drops, hoists or drives on the bench.");
    out.add(
        m.bench().defaults().isEmpty()
            ? "No value was left to a default."
            : "Values that nobody gave are those of table {table:defaults}.");
    return out;
  }

  private static List<String> notCovered(Matter m) {
    List<String> out = new ArrayList<>();
    if (!m.result().notChecked().isEmpty()) {
      out.add("What table {table:open} leaves open, for the reasons given there.");
    }
    out.add("Blows, vibration, fatigue by many load cycles, fire, decay and insects.");
    out.add("Knots, checks and sloping grain beyond what the grade or the growth class allows.");
    out.add("Wear and loosening of joints, and changes made after this sheet was printed.");
    return out;
  }
}
