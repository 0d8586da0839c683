package org.stoutwork.report.sheet.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.stoutwork.action.ActionPlan;
import org.stoutwork.action.Criteria;
import org.stoutwork.bench.Air;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.sheet.Block;
import org.stoutwork.report.sheet.Column;
import org.stoutwork.report.sheet.Heading;
import org.stoutwork.report.sheet.Paragraph;
import org.stoutwork.report.sheet.Table;
import org.stoutwork.result.ActionLine;
import org.stoutwork.result.JointLine;
import org.stoutwork.source.Source;

/** What went in: use and place, limits, joints, woods, actions, combinations, masses, defaults. */
final class InputsSection {

  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  private InputsSection() {}

  static List<Block> of(Matter m) {
    List<Block> out = new ArrayList<>();
    out.add(
        Block.Together.of(
            Heading.of(1, "Inputs", "inputs"),
            Paragraph.of(
                "Sizes and number of the parts are in table {table:parts}. S and a number name a"
                    + " source in section {section:sources}; the word beside it says how firm the"
                    + " value is."),
            place(m)));
    out.add(Block.Together.of(limits(m)));
    out.add(joints(m));
    AdviceTable.of(m).ifPresent(out::add);
    out.add(WoodsTable.of(m));
    out.add(actions(m));
    out.add(Block.Together.of(combinations(m)));
    out.add(Block.Together.of(masses(m)));
    out.add(defaults(m));
    return out;
  }

  private static Table place(Matter m) {
    Bench b = m.bench();
    Air air = b.air();
    String pupils = b.pupils() == 0 ? "no class bench" : Integer.toString(b.pupils());
    return Table.of(Column.share(1, "Use and place"), Column.share(2.2, "As described"))
        .caption("Use and place")
        .dense()
        .row("Duty", Shown.plain(b.duty().words()))
        .row("Pupils at one time", pupils)
        .row("Stands", footing(m))
        .row("Air", air(air))
        .row("Moisture of the wood", moisture(air))
        .row("Safety format of strength", Shown.plain(b.basis().words()))
        .row("Top, its layers", layers(b))
        .row("Top, held down by", fixing(m))
        .row("Top, dog holes", dogHoles(m))
        .build();
  }

  private static String footing(Matter m) {
    double friction = m.bench().footing().friction();
    String words = Shown.plain(m.bench().footing().words());
    return Double.isInfinite(friction)
        ? words
        : words
            + ", coefficient of friction "
            + Writing.number(friction, 2)
            + " ("
            + cite(m, m.bench().footing().source())
            + ")";
  }

  private static String air(Air air) {
    return String.format(
        Locale.ROOT,
        "%s, service class %s, relative humidity %.0f\u00a0%% to %.0f\u00a0%%",
        Shown.plain(air.climate().words()),
        air.climate().serviceClass().name().replaceAll("[^0-9]", ""),
        100 * air.climate().lowHumidity(),
        100 * air.climate().highHumidity());
  }

  private static String moisture(Air air) {
    return String.format(
        Locale.ROOT,
        "%.1f\u00a0%% at assembly; in use %.1f\u00a0%% to %.1f\u00a0%%",
        air.atAssembly(),
        air.range().low(),
        air.range().high());
  }

  private static String layers(Bench b) {
    int n = b.top().layers().size();
    return n == 1 ? "one" : n + ", " + Shown.plain(b.top().hold().words());
  }

  private static String dogHoles(Matter m) {
    var rows = m.bench().top().dogHoles();
    if (rows.isEmpty()) {
      return "none";
    }
    return rows.stream()
        .map(
            d ->
                Shown.plain(
                    "%s %s of %s, %s apart, %s from the front, the first %s from the left"
                        .formatted(
                            d.count(),
                            d.shape().words(),
                            m.amounts().length(d.size().mm()),
                            m.amounts().length(d.spacing().mm()),
                            m.amounts().length(d.fromFront().mm()),
                            m.amounts().length(d.fromLeft().mm()))))
        .collect(Collectors.joining("; "));
  }

  private static String fixing(Matter m) {
    TopFixing f = m.bench().top().fixing();
    ScrewHole hole = f.hole();
    String held =
        switch (f.held()) {
          case MIDDLE -> ", the middle one in a hole that fits it";
          case FRONT -> ", the foremost in a hole that fits it";
          case NOWHERE -> "";
        };
    return Shown.plain(
        "%s %ss a rail, %s across, %s of thread and the rail's whole depth under the head, in %s%s"
            .formatted(
                f.perRail(),
                f.screw().words(),
                m.amounts().length(f.screwDiameter().mm()),
                m.amounts().length(f.threadLength().mm()),
                hole.isRound()
                    ? "holes of " + m.amounts().length(hole.width())
                    : "slots of %s along the rail"
                        .formatted(m.amounts().size(hole.width(), hole.length())),
                f.fitsAcross() ? "" : held));
  }

  private static Table limits(Matter m) {
    Criteria c = ActionPlan.of(m.bench()).criteria();
    String duty = cite(m, c.source());
    boolean machine = ActionPlan.freeMachine(m.bench());
    return Table.of(
            Column.share(2.6, "Limit"),
            Column.share(0.6, "Value").right(),
            Column.share(1, "Source"))
        .caption("Limits of use")
        .dense()
        .row("Span over sag of the top under a person or stock, at least", n(c.spanRatio()), duty)
        .row(
            "Span over sag after years under the same, with creep, at least",
            n(c.lastingRatio()),
            cite(m, Criteria.LASTING))
        .row(
            "Span over sag after years under what stays on the bench, at least",
            n(c.levelRatio()),
            duty)
        .row(
            "Give of the top under a plane, at most",
            Shown.plain(m.amounts().movement(c.flatness())),
            duty)
        .row("Height over sway under the thrust, at least", n(c.swayRatio()), duty)
        .row(
            machine
                ? "Factor against tipping with a machine that is not fixed, at least"
                : "Factor against tipping, at least",
            n(c.tipping()),
            machine ? cite(m, ActionPlan.MACHINE_TIPPING) : duty)
        .row("Factor against sliding, at least", n(c.sliding()), duty)
        .row("Part of the strength that may be used, at most", n(c.strengthUse()), duty)
        .build();
  }

  private static String n(double value) {
    return Writing.number(value, 3);
  }

  private static Table joints(Matter m) {
    Table.Builder table =
        Table.of(
                Column.share(1.2, "Joint, one of each kind"),
                Column.share(1.6, "Kind and sizes"),
                Column.mm(27, "Stiffness, " + m.amounts().turningStiffnessUnit()).right(),
                Column.share(2.4, "Reason for the range"))
            .caption("Joints and their stiffness in the plane of the frame: soft, mean, stiff")
            .anchor("joints")
            .dense();
    for (JointLine j : m.result().joints()) {
      table.row(
          m.say(j.name()),
          "**" + m.say(j.kind()) + "**: " + m.say(j.sizes()),
          stiffness(m, j),
          m.say(j.reason()));
    }
    return table.build();
  }

  private static String stiffness(Matter m, JointLine j) {
    String low = m.amounts().bareTurningStiffness(j.stiffness().low());
    String mean = m.amounts().bareTurningStiffness(j.stiffness().mean());
    String high = m.amounts().bareTurningStiffness(j.stiffness().high());
    boolean one = low.equals(mean) && mean.equals(high);
    return Shown.plain(one ? mean : low + ", " + mean + ", " + high);
  }

  private static Table actions(Matter m) {
    Table.Builder table =
        Table.of(
                Column.share(1.6, "Action"),
                Column.mm(20, "Size").right(),
                Column.share(1.6, "Direction and place"),
                Column.mm(20, "Duration"),
                Column.mm(33, "Source"))
            .caption("Actions, without factors")
            .anchor("actions")
            .dense();
    for (ActionLine a : m.result().actions()) {
      table.row(
          m.say(Shown.sentence(a.name())),
          Shown.plain(m.amounts().of(a.size())),
          m.say(a.direction()),
          Shown.plain(a.duration()),
          cite(m, a.source()));
    }
    return table.build();
  }

  private static Table combinations(Matter m) {
    Table.Builder table =
        Table.of(Column.share(1, "Combination"))
            .caption("Combinations; every action leads in turn, in every place that matters")
            .dense();
    m.result().combinations().forEach(c -> table.row(m.say(Shown.sentence(c))));
    return table.build();
  }

  private static Table masses(Matter m) {
    Table.Builder table =
        Table.of(Column.share(1, "Part"), Column.mm(30, "Mass").right())
            .caption("Masses of what stays on the bench")
            .anchor("masses")
            .dense();
    m.result()
        .masses()
        .forEach(
            (name, kg) ->
                table.row(m.say(Shown.sentence(name)), Shown.plain(m.amounts().mass(kg))));
    table.row("**Together**", "**" + Shown.plain(m.amounts().mass(m.result().massKg())) + "**");
    double weight = m.result().massKg() * GRAVITY;
    table.row("Weight, with g = 9.80665\u00a0m/s²", Shown.plain(m.amounts().force(weight)));
    return table.build();
  }

  private static Block defaults(Matter m) {
    if (m.bench().defaults().isEmpty()) {
      return Paragraph.of("**Defaults:** none; every value was given.");
    }
    Table.Builder table =
        Table.of(
                Column.mm(66, "Where it would stand"),
                Column.mm(31, "Value taken"),
                Column.share(1, "Reason"))
            .caption(
                "Values that were not given, and what was taken in their place; of a list, [0] is"
                    + " the first entry")
            .anchor("defaults")
            .dense();
    for (DefaultTaken d : m.bench().defaults()) {
      table.row(Shown.plain(d.key()), m.say(d.value()), m.say(d.reason()));
    }
    return table.build();
  }

  /** The short name of a source with its mark. */
  static String cite(Matter m, Source source) {
    return m.sources().name(source) + "\u00a0" + Shown.plain(source.mark().words());
  }
}
