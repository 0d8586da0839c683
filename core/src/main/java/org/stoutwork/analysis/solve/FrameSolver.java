package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.LinearForm;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Link;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Tie;
import org.stoutwork.analysis.model.Vec3;

/**
 * The way in: turns a model into equations, factorised once, ready for any number of load cases.
 */
public final class FrameSolver {
  private FrameSolver() {}

  /**
   * Prepares a frame.
   *
   * @return the prepared frame, or {@link Loose} naming what can move without resistance
   */
  public static Preparation prepare(FrameModel model) {
    return prepare(model, List.of());
  }

  /** Prepares a frame with other things joined to it, panels for example. */
  public static Preparation prepare(FrameModel model, List<? extends Attachment> attachments) {
    Layout layout = new Layout(model);
    Loose loose = looseMember(layout);
    if (loose != null) {
      return loose;
    }
    return prepare(layout, attachments);
  }

  static Loose looseMember(Layout layout) {
    for (Beam beam : layout.beams.values()) {
      String motion = beam.looseMotion();
      if (motion != null) {
        return new Loose(
            beam.part(),
            motion,
            "member '" + beam.part() + "' is loose " + motion + "; hold it at one end at least");
      }
    }
    return null;
  }

  private static Preparation prepare(Layout layout, List<? extends Attachment> attachments) {
    layout.attach(attachments);
    GlobalSystem.Made made = GlobalSystem.of(layout.equations);
    if (made instanceof GlobalSystem.Refused refused) {
      return refused.loose();
    }
    GlobalSystem system = ((GlobalSystem.Ready) made).system();
    return new PreparedFrame(layout, system, List.copyOf(attachments));
  }

  /** Which unknown, spring or condition of the equations stands for which thing of the model. */
  static final class Layout {
    final FrameModel model;
    final Equations equations;
    final Map<String, Integer> vertices = new LinkedHashMap<>();
    final Map<String, Beam> beams = new LinkedHashMap<>();
    final Map<String, List<Beam>> pieces = new LinkedHashMap<>();
    final List<Grip> grips = new ArrayList<>();
    private final Map<String, List<Grip>> gripsOf = new LinkedHashMap<>();
    final List<Attached> attached = new ArrayList<>();
    final Vec3 centre;
    double reach;

    Layout(FrameModel model) {
      this(model, 1);
    }

    /** A layout in which each member is a chain of equal pieces. */
    Layout(FrameModel model, int count) {
      this.model = model;
      this.equations = new Equations();
      for (String node : model.nodes().keySet()) {
        vertices.put(node, equations.vertex(node));
      }
      this.centre = centre(model);
      double far = 1;
      for (Vec3 at : model.nodes().values()) {
        far = Math.max(far, at.minus(centre).length());
      }
      this.reach = far;
      equations.reach(far);
      for (Member member : model.members().values()) {
        Beam beam = new Beam(model, member, vertices.get(member.from()), vertices.get(member.to()));
        beams.put(member.name(), beam);
        pieces.put(member.name(), chain(beam, count));
        pieces.get(member.name()).forEach(equations::add);
      }
      model.supports().forEach(this::support);
      model.ties().values().forEach(this::tie);
    }

    private Layout(Layout other, FrameModel model) {
      this.model = model;
      this.centre = other.centre;
      this.reach = other.reach;
      this.vertices.putAll(other.vertices);
      this.grips.addAll(other.grips);
      this.gripsOf.putAll(other.gripsOf);
      this.attached.addAll(other.attached);
      List<Beam> all = new ArrayList<>();
      for (Member member : model.members().values()) {
        Beam old = other.beams.get(member.name());
        boolean same =
            old.member().equals(member)
                && old.section().equals(model.sectionOf(member))
                && old.material().equals(model.materialOf(member));
        Beam beam =
            same ? old : new Beam(model, member, old.unknowns()[0] / 6, old.unknowns()[6] / 6);
        beams.put(member.name(), beam);
        pieces.put(member.name(), List.of(beam));
        all.add(beam);
      }
      this.equations = other.equations.withElements(0, all);
    }

    /** The layout of a model that differs in member stiffness only; unchanged beams are shared. */
    Layout changed(FrameModel changed) {
      if (!changed.members().keySet().equals(model.members().keySet())) {
        throw new IllegalArgumentException("members may be changed here, not added or removed");
      }
      for (Member member : changed.members().values()) {
        Member old = model.members().get(member.name());
        if (!member.from().equals(old.from()) || !member.to().equals(old.to())) {
          throw new IllegalArgumentException(
              "member '" + member.name() + "' must stay between its nodes");
        }
      }
      return new Layout(this, changed);
    }

    private List<Beam> chain(Beam beam, int count) {
      if (count == 1) {
        return List.of(beam);
      }
      List<Beam> chain = new ArrayList<>();
      int from = beam.unknowns()[0] / 6;
      for (int k = 0; k < count; k++) {
        boolean last = k == count - 1;
        int to = last ? beam.unknowns()[6] / 6 : equations.vertex(beam.part());
        chain.add(beam.piece(k, count, from, to));
        from = to;
      }
      return chain;
    }

    /** How the ground holds a node, in the order of the model. */
    List<Grip> gripsOf(String node) {
      return gripsOf.getOrDefault(node, List.of());
    }

    /** Joins other things than beams. */
    void attach(List<? extends Attachment> attachments) {
      attachments.forEach(a -> attached.add(a.join(equations, vertices)));
      reach = Math.max(reach, equations.reach());
    }

    private static Vec3 centre(FrameModel model) {
      Vec3 sum = Vec3.ZERO;
      for (Vec3 at : model.nodes().values()) {
        sum = sum.plus(at);
      }
      return sum.times(1.0 / Math.max(1, model.nodes().size()));
    }

    private void support(String node, Map<Direction, Restraint> held) {
      held.forEach(
          (direction, restraint) -> {
            LinearForm form = LinearForm.of(6 * vertices.get(node) + direction.index());
            Grip grip = grip(node, direction, restraint, form);
            grips.add(grip);
            gripsOf.computeIfAbsent(node, n -> new ArrayList<>()).add(grip);
          });
    }

    private Grip grip(String node, Direction direction, Restraint restraint, LinearForm form) {
      if (restraint instanceof Restraint.Fixed) {
        return new Grip(
            node, vertices.get(node), direction, Grip.Kind.CONDITION, equations.hold(form, 0), 0);
      } else if (restraint instanceof Restraint.Prescribed moved) {
        int condition = equations.hold(form, moved.displacement());
        return new Grip(node, vertices.get(node), direction, Grip.Kind.CONDITION, condition, 0);
      } else if (restraint instanceof Restraint.Elastic spring) {
        int number = equations.spring(node, form, spring.stiffness());
        return new Grip(
            node, vertices.get(node), direction, Grip.Kind.SPRING, number, spring.stiffness());
      } else {
        double k =
            restraint instanceof Restraint.CompressionOnlyElastic elastic
                ? elastic.stiffness()
                : Double.POSITIVE_INFINITY;
        return new Grip(
            node,
            vertices.get(node),
            direction,
            Grip.Kind.CONTACT,
            equations.contact(node, form, k),
            k);
      }
    }

    private void tie(Tie tie) {
      Vec3 lowerArm = tie.place().minus(model.nodes().get(tie.lower()));
      Vec3 upperArm = tie.place().minus(model.nodes().get(tie.upper()));
      tie.links()
          .forEach(
              (direction, link) -> {
                int d = direction.index();
                LinearForm form =
                    LinearForm.onArm(vertices.get(tie.upper()), upperArm, d)
                        .plus(-1, LinearForm.onArm(vertices.get(tie.lower()), lowerArm, d));
                link(tie.name(), form, link);
              });
    }

    private void link(String name, LinearForm form, Link link) {
      if (link instanceof Link.Rigid) {
        equations.hold(form, 0);
      } else if (link instanceof Link.Elastic spring) {
        equations.spring(name, form, spring.stiffness());
      } else if (link instanceof Link.Contact) {
        equations.contact(name, form, Double.POSITIVE_INFINITY);
      } else if (link instanceof Link.ElasticContact elastic) {
        equations.contact(name, form, elastic.stiffness());
      }
    }
  }

  /** How the ground holds one direction of one node, and where the equations keep it. */
  record Grip(
      String node, int vertex, Direction direction, Kind kind, int number, double stiffness) {
    enum Kind {
      CONDITION,
      SPRING,
      CONTACT
    }
  }
}
