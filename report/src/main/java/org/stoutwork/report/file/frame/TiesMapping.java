package org.stoutwork.report.file.frame;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Tie;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Got;
import org.stoutwork.report.file.field.Kinds;
import org.stoutwork.report.file.field.Range;
import org.stoutwork.report.file.field.Value;

/**
 * The ties of a file. An entry with {@code panel} joins a point of a panel to a node; one with
 * {@code lower} and {@code upper} joins two nodes.
 *
 * @param nodeTies between nodes, by name
 * @param panelTies between panels and nodes
 */
record TiesMapping(Got<Map<String, Tie>> nodeTies, Got<List<PanelTie>> panelTies) {

  private static final String LINK =
      "rigid, a stiffness above 0, or along z compression-only or {compression-only: stiffness}";

  static TiesMapping read(Fields file, Names names, Map<String, PanelEntry> panels) {
    Map<String, Tie> nodeTies = new LinkedHashMap<>();
    List<PanelTie> panelTies = new ArrayList<>();
    Got<List<Boolean>> all =
        FrameMapping.orEmpty(
            file.list("ties", value -> value.map(f -> tie(f, names, panels, nodeTies, panelTies))));
    return new TiesMapping(all.map(done -> nodeTies), all.map(done -> panelTies));
  }

  private static Got<Boolean> tie(
      Fields fields,
      Names names,
      Map<String, PanelEntry> panels,
      Map<String, Tie> nodeTies,
      List<PanelTie> panelTies) {
    if (fields.has("lower") || fields.has("upper")) {
      Got<Tie> tie = nodeTie(fields, names, "tie" + (nodeTies.size() + 1));
      tie.ifThere(
          read -> {
            if (nodeTies.put(read.name(), read) != null) {
              fields.fault("name", "is given to two ties", "a name of its own is needed", "");
            }
          });
      return tie.map(read -> true);
    }
    Got<PanelTie> tie = panelTie(fields, names, panels);
    tie.ifThere(panelTies::add);
    return tie.map(read -> true);
  }

  private static Got<Tie> nodeTie(Fields fields, Names names, String usualName) {
    Got<String> name = fields.text("name").optional().map(given -> given.orElse(usualName));
    Got<String> lower = fields.scalar("lower", names.node()).required();
    Got<String> upper = fields.scalar("upper", names.node()).required();
    Got<Vec3> at = Vectors.vector(fields, "at").required();
    Got<Map<Direction, Link>> links = links(fields);
    return fields.build(() -> new Tie(name.get(), lower.get(), upper.get(), at.get(), links.get()));
  }

  private static Got<PanelTie> panelTie(
      Fields fields, Names names, Map<String, PanelEntry> panels) {
    Got<String> panel = fields.scalar("panel", names.panel()).required();
    Got<PanelEntry.Point> at = Points.required(fields, "at");
    Got<String> node = fields.scalar("node", names.node()).required();
    Got<Map<Direction, Link>> links = links(fields);
    PanelEntry entry = panels.get(panel.orElse(""));
    if (entry != null && at.isThere() && !entry.contains(at.get().x(), at.get().y())) {
      fields.fault("at", "lies off the panel", Points.onPanel(entry), "");
    }
    return fields.build(() -> new PanelTie(panel.get(), at.get(), node.get(), links.get()));
  }

  private static Got<Map<Direction, Link>> links(Fields fields) {
    Map<Direction, Got<Link>> held = new EnumMap<>(Direction.class);
    for (Direction direction : Direction.values()) {
      String key = Words.of(direction);
      boolean given = fields.has(key);
      Got<Link> link =
          fields
              .either(key, LINK, value -> link(value, direction))
              .optional()
              .map(found -> found.orElse(Link.RIGID));
      if (given) {
        held.put(direction, link);
      }
    }
    if (held.isEmpty()) {
      return fields.fault("joins nothing", "one of ux, uy, uz, rx, ry, rz is needed", "");
    }
    return fields.build(
        () -> {
          Map<Direction, Link> built = new EnumMap<>(Direction.class);
          held.forEach((direction, got) -> built.put(direction, got.get()));
          return built;
        });
  }

  private static Got<Link> link(Value value, Direction direction) {
    if (value.isNumber()) {
      return value.as(Kinds.number(Range.POSITIVE)).map(Link::elastic);
    }
    boolean vertical = direction == Direction.UZ;
    if (value.isMap() && vertical) {
      return value.map(
          fields ->
              fields.number(Words.COMPRESSION_ONLY, Range.POSITIVE).required().map(Link::contact));
    }
    Map<String, Link> words =
        vertical
            ? Words.inOrder("rigid", Link.RIGID, Words.COMPRESSION_ONLY, Link.CONTACT)
            : Map.of("rigid", Link.RIGID);
    return value.as(Kinds.choice(words).named(LINK));
  }
}
