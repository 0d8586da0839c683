package org.stoutwork.report.file.frame;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Tie;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes a frame file, as canonical JSON that {@link FrameFileReader} reads back as the same. */
public final class FrameWriter {

  private FrameWriter() {}

  /**
   * Writes a frame file.
   *
   * @param file what it says
   * @return the text, ending in a newline
   */
  public static String json(FrameFile file) {
    return JsonOut.object(
        out -> {
          out.put("schemaVersion", FrameFile.SCHEMA_VERSION);
          if (!file.title().isEmpty()) {
            out.put("title", file.title());
          }
          out.put("units", FrameMapping.UNITS);
          structure(out, file.model());
          PanelOut.panels(out, file.panels());
          ties(out, file);
          loads(out, file);
          out.texts("analyses", file.analyses().stream().map(Words::of).toList());
        });
  }

  private static void structure(JsonOut out, FrameModel model) {
    out.object("nodes", o -> model.nodes().forEach((name, at) -> o.numbers(name, at.toArray())));
    out.object(
        "materials",
        o ->
            model
                .materials()
                .forEach(
                    (name, m) ->
                        o.object(
                            name,
                            v ->
                                v.put("E", m.e())
                                    .put("G", m.g())
                                    .put("density_kg_m3", m.density()))));
    out.object(
        "sections",
        o ->
            model
                .sections()
                .forEach(
                    (name, s) ->
                        o.object(
                            name,
                            v ->
                                v.put("A", s.area())
                                    .put("Iy", s.iy())
                                    .put("Iz", s.iz())
                                    .put("J", s.j())
                                    .put("Asy", s.asy())
                                    .put("Asz", s.asz()))));
    out.object("members", o -> model.members().forEach((n, m) -> o.object(n, v -> member(v, m))));
    out.object(
        "supports",
        o -> model.supports().forEach((n, held) -> o.object(n, v -> supports(v, held))));
    if (!model.masses().isEmpty()) {
      out.object("masses", o -> model.masses().forEach(o::put));
    }
  }

  private static void member(JsonOut out, Member member) {
    out.put("from", member.from()).put("to", member.to());
    out.put("section", member.section()).put("material", member.material());
    if (member.roll() != 0) {
      out.put("roll_deg", Math.toDegrees(member.roll()));
    }
    end(out, "start", member.start());
    end(out, "end", member.end());
    offset(out, "start_offset", member.start().offset());
    offset(out, "end_offset", member.end().offset());
  }

  private static void end(JsonOut out, String key, MemberEnd end) {
    if (end.isRigid()) {
      return;
    }
    out.object(
        key,
        o -> {
          for (Direction direction : Direction.values()) {
            EndCondition condition = end.in(direction);
            if (condition instanceof EndCondition.Free) {
              o.put(Words.of(direction), "free");
            } else if (condition instanceof EndCondition.Elastic spring) {
              o.put(Words.of(direction), spring.stiffness());
            }
          }
        });
  }

  private static void offset(JsonOut out, String key, Vec3 offset) {
    if (!offset.equals(Vec3.ZERO)) {
      out.numbers(key, offset.toArray());
    }
  }

  private static void supports(JsonOut out, Map<Direction, Restraint> held) {
    held.forEach((direction, restraint) -> support(out, Words.of(direction), restraint));
  }

  private static void support(JsonOut out, String key, Restraint restraint) {
    if (restraint instanceof Restraint.Elastic spring) {
      out.put(key, spring.stiffness());
    } else if (restraint instanceof Restraint.Prescribed given) {
      out.object(key, o -> o.put("prescribed", given.displacement()));
    } else if (restraint instanceof Restraint.CompressionOnly) {
      out.put(key, Words.COMPRESSION_ONLY);
    } else if (restraint instanceof Restraint.CompressionOnlyElastic oneWay) {
      out.object(key, o -> o.put(Words.COMPRESSION_ONLY, oneWay.stiffness()));
    } else {
      out.put(key, "fixed");
    }
  }

  private static void ties(JsonOut out, FrameFile file) {
    List<Tie> between = List.copyOf(file.model().ties().values());
    int count = between.size() + file.panelTies().size();
    if (count == 0) {
      return;
    }
    out.objects(
        "ties",
        IntStream.range(0, count).boxed().toList(),
        (o, i) -> {
          if (i < between.size()) {
            tie(o, between.get(i));
          } else {
            PanelOut.tie(o, file.panelTies().get(i - between.size()));
          }
        });
  }

  private static void tie(JsonOut out, Tie tie) {
    out.put("name", tie.name()).put("lower", tie.lower()).put("upper", tie.upper());
    out.numbers("at", tie.place().toArray());
    links(out, tie.links());
  }

  static void links(JsonOut out, Map<Direction, Link> links) {
    for (Direction direction : Direction.values()) {
      if (links.containsKey(direction)) {
        link(out, Words.of(direction), links.get(direction));
      }
    }
  }

  private static void link(JsonOut out, String key, Link link) {
    if (link instanceof Link.Elastic spring) {
      out.put(key, spring.stiffness());
    } else if (link instanceof Link.Contact) {
      out.put(key, Words.COMPRESSION_ONLY);
    } else if (link instanceof Link.ElasticContact oneWay) {
      out.object(key, o -> o.put(Words.COMPRESSION_ONLY, oneWay.stiffness()));
    } else {
      out.put(key, "rigid");
    }
  }

  private static void loads(JsonOut out, FrameFile file) {
    List<Load> frame = file.loads().loads();
    int count = frame.size() + file.panelLoads().size();
    out.objects(
        "loads",
        IntStream.range(0, count).boxed().toList(),
        (o, i) -> {
          if (i < frame.size()) {
            LoadOut.load(o, frame.get(i));
          } else {
            PanelOut.load(o, file.panelLoads().get(i - frame.size()));
          }
        });
  }
}
