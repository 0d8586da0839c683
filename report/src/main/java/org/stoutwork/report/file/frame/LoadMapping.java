package org.stoutwork.report.file.frame;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.tree.ShortNumber;

/** One load of the list. */
final class LoadMapping {

  /**
   * A load on the frame or on a panel.
   *
   * @param frame the load, if it is one on the frame
   * @param panel the load, if it is one on a panel
   */
  record Entry(Optional<Load> frame, Optional<PanelLoad> panel) {
    static Entry of(Load load) {
      return new Entry(Optional.of(load), Optional.empty());
    }

    static Entry of(PanelLoad load) {
      return new Entry(Optional.empty(), Optional.of(load));
    }
  }

  private enum Type {
    NODE,
    MEMBER_POINT,
    MEMBER_LINE,
    SELF_WEIGHT,
    PANEL_PRESSURE,
    PANEL_PATCH
  }

  private final Fields fields;
  private final Names names;
  private final Map<String, Double> lengths;

  private LoadMapping(Fields fields, Names names, Map<String, Double> lengths) {
    this.fields = fields;
    this.names = names;
    this.lengths = lengths;
  }

  static Got<Entry> read(
      Fields fields, Names names, Map<String, Double> lengths, Map<String, PanelEntry> panels) {
    Got<Type> type = fields.choice("type", Type.class).required();
    if (!type.isThere()) {
      fields.leaveRest();
      return Got.nothing();
    }
    LoadMapping mapping = new LoadMapping(fields, names, lengths);
    return switch (type.get()) {
      case NODE -> mapping.node().map(Entry::of);
      case MEMBER_POINT -> mapping.point().map(Entry::of);
      case MEMBER_LINE -> mapping.line().map(Entry::of);
      case SELF_WEIGHT -> mapping.weight().map(Entry::of);
      case PANEL_PRESSURE -> PanelLoadMapping.pressure(fields, names).map(Entry::of);
      case PANEL_PATCH -> PanelLoadMapping.patch(fields, names, panels).map(Entry::of);
    };
  }

  private Got<Load> node() {
    Got<String> node = fields.scalar("node", names.node()).required();
    Got<Vec3> force = Vectors.orZero(fields, "force");
    Got<Vec3> moment = Vectors.orZero(fields, "moment");
    refuseNothing();
    return fields.build(() -> new Load.OnNode(node.get(), force.get(), moment.get()));
  }

  private Got<Load> point() {
    Got<String> member = fields.scalar("member", names.member()).required();
    Got<Double> at = fields.number("at", Range.NOT_NEGATIVE).required();
    Got<Vec3> force = Vectors.orZero(fields, "force");
    Got<Vec3> moment = Vectors.orZero(fields, "moment");
    Got<Load.Axes> axes = axes();
    refuseNothing();
    refuseBeyond(member, "at", at);
    return fields.build(
        () ->
            new Load.OnMemberPoint(member.get(), at.get(), force.get(), moment.get(), axes.get()));
  }

  private Got<Load> line() {
    Got<String> member = fields.scalar("member", names.member()).required();
    Got<Double> from =
        fields.number("from", Range.NOT_NEGATIVE).optional().map(given -> given.orElse(0.0));
    Got<Double> to =
        fields
            .number("to", Range.NOT_NEGATIVE)
            .optional()
            .map(given -> given.orElse(Double.POSITIVE_INFINITY));
    Got<Vec3> start = Vectors.vector(fields, "start").required();
    Got<Vec3> end = Vectors.vector(fields, "end").required();
    Got<Load.Axes> axes = axes();
    refuseBeyond(member, "from", from);
    refuseBeyond(member, "to", to);
    if (from.isThere() && to.isThere() && !(to.get() > from.get())) {
      fields.fault(
          "to",
          "is " + ShortNumber.of(to.get()),
          "a place behind `from` (" + ShortNumber.of(from.get()) + ") is needed",
          "");
    }
    return fields.build(
        () ->
            new Load.OnMemberLine(
                member.get(), from.get(), to.get(), start.get(), end.get(), axes.get()));
  }

  private Got<Load> weight() {
    Got<Vec3> direction = Vectors.vector(fields, "direction").required();
    return fields.build(() -> new Load.SelfWeight(direction.get()));
  }

  private Got<Load.Axes> axes() {
    Map<String, Load.Axes> words = new LinkedHashMap<>();
    words.put("global", Load.Axes.GLOBAL);
    words.put("local", Load.Axes.LOCAL);
    return fields.choice("axes", words).optional().map(given -> given.orElse(Load.Axes.GLOBAL));
  }

  private void refuseNothing() {
    if (!fields.has("force") && !fields.has("moment")) {
      fields.fault("holds neither `force` nor `moment`", "at least one of them is needed", "");
    }
  }

  private void refuseBeyond(Got<String> member, String key, Got<Double> place) {
    Double length = lengths.get(member.orElse(""));
    boolean finite = place.isThere() && Double.isFinite(place.get());
    if (length != null && finite && place.get() > length * (1 + 1e-9)) {
      fields.fault(
          key,
          "is " + ShortNumber.of(place.get()),
          "the flexible length of this member is "
              + Writing.number(length, 6)
              + " mm; a place on it is needed",
          "");
    }
  }
}
