package org.stoutwork.reference.frames;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stoutwork.analysis.model.CrossSection;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.FrameModelBuilder;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.MemberEnd;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;

/** Reads the reference frames, independently of the reader that the product has. */
public record FrameFile(FrameModel model, LoadCase loads, JsonNode expected, JsonNode root) {

  /** Reads a file beside the package {@code org.stoutwork.reference}. */
  public static FrameFile read(String path) {
    try (InputStream in = FrameFile.class.getResourceAsStream("/org/stoutwork/reference/" + path)) {
      JsonNode root = new ObjectMapper().readTree(in);
      return new FrameFile(model(root), loads(root), root.get("expected"), root);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean asks(String analysis) {
    for (JsonNode a : root.get("analyses")) {
      if (a.asText().equals(analysis)) {
        return true;
      }
    }
    return false;
  }

  private static FrameModel model(JsonNode root) {
    FrameModelBuilder b = FrameModel.builder();
    root.get("nodes").properties().forEach(n -> b.node(n.getKey(), vector(n.getValue())));
    root.get("materials")
        .properties()
        .forEach(
            m -> {
              JsonNode v = m.getValue();
              b.material(
                  m.getKey(),
                  v.get("E").asDouble(),
                  v.get("G").asDouble(),
                  v.path("density_kg_m3").asDouble());
            });
    root.get("sections").properties().forEach(s -> b.section(s.getKey(), section(s.getValue())));
    root.get("members").properties().forEach(m -> member(b, m.getKey(), m.getValue()));
    root.get("supports")
        .properties()
        .forEach(
            s ->
                s.getValue()
                    .properties()
                    .forEach(
                        d ->
                            b.support(s.getKey(), direction(d.getKey()), restraint(d.getValue()))));
    root.path("masses").properties().forEach(m -> b.mass(m.getKey(), m.getValue().asDouble()));
    return b.build();
  }

  private static CrossSection section(JsonNode v) {
    return new CrossSection(
        v.get("A").asDouble(),
        v.get("Iy").asDouble(),
        v.get("Iz").asDouble(),
        v.get("J").asDouble(),
        v.path("Asy").asDouble(),
        v.path("Asz").asDouble());
  }

  private static void member(FrameModelBuilder b, String name, JsonNode m) {
    b.member(
        name,
        m.get("from").asText(),
        m.get("to").asText(),
        m.get("section").asText(),
        m.get("material").asText(),
        Math.toRadians(m.path("roll_deg").asDouble()),
        end(m.path("start"), m.path("start_offset")),
        end(m.path("end"), m.path("end_offset")));
  }

  private static MemberEnd end(JsonNode conditions, JsonNode offset) {
    MemberEnd end = MemberEnd.RIGID;
    for (var c : conditions.properties()) {
      JsonNode v = c.getValue();
      EndCondition condition =
          v.isNumber()
              ? EndCondition.elastic(v.asDouble())
              : v.asText().equals("free") ? EndCondition.FREE : EndCondition.RIGID;
      end = end.with(direction(c.getKey()), condition);
    }
    return offset.isMissingNode() ? end : end.offset(vector(offset));
  }

  private static Restraint restraint(JsonNode v) {
    if (v.isNumber()) {
      return Restraint.elastic(v.asDouble());
    } else if (v.isTextual()) {
      return v.asText().equals("fixed") ? Restraint.FIXED : Restraint.COMPRESSION_ONLY;
    } else if (v.has("prescribed")) {
      return Restraint.prescribed(v.get("prescribed").asDouble());
    }
    return Restraint.compressionOnly(v.get("compression-only").asDouble());
  }

  private static Direction direction(String key) {
    return Direction.valueOf(key.toUpperCase(Locale.ROOT));
  }

  private static Vec3 vector(JsonNode v) {
    return v.isMissingNode()
        ? Vec3.ZERO
        : new Vec3(v.get(0).asDouble(), v.get(1).asDouble(), v.get(2).asDouble());
  }

  private static LoadCase loads(JsonNode root) {
    List<Load> loads = new ArrayList<>();
    for (JsonNode l : root.get("loads")) {
      Load.Axes axes = l.path("axes").asText().equals("local") ? Load.Axes.LOCAL : Load.Axes.GLOBAL;
      loads.add(
          switch (l.get("type").asText()) {
            case "node" ->
                new Load.OnNode(
                    l.get("node").asText(), vector(l.path("force")), vector(l.path("moment")));
            case "member-point" ->
                new Load.OnMemberPoint(
                    l.get("member").asText(),
                    l.get("at").asDouble(),
                    vector(l.path("force")),
                    vector(l.path("moment")),
                    axes);
            case "member-line" ->
                new Load.OnMemberLine(
                    l.get("member").asText(),
                    l.path("from").asDouble(),
                    l.path("to").asDouble(Double.POSITIVE_INFINITY),
                    vector(l.get("start")),
                    vector(l.get("end")),
                    axes);
            case "self-weight" -> new Load.SelfWeight(vector(l.get("direction")));
            default -> throw new IllegalArgumentException(l.toString());
          });
    }
    return new LoadCase("loads", loads);
  }
}
