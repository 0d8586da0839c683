package org.stoutwork.analysis.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.element.BeamState;
import org.stoutwork.analysis.element.LinearForm;

/** Responses chosen beforehand, found once, read off many solutions of one layout. */
final class Readings {
  /** One solution: displacements, forces of conditions, and the state of each beam. */
  record Motion(GlobalSystem.Solved solved, Function<Beam, BeamState> beams) {}

  private final FrameSolver.Layout layout;
  private final List<Response> responses;

  Readings(FrameSolver.Layout layout, List<? extends Response> responses) {
    this.layout = layout;
    this.responses = List.copyOf(responses);
    this.responses.forEach(this::check);
  }

  private void check(Response response) {
    if (response instanceof Response.Displacement d) {
      known(layout.vertices.containsKey(d.node()), "node", d.node());
    } else if (response instanceof Response.Reaction r) {
      grip(r);
    } else if (response instanceof Response.Internal in) {
      onBeam(in.member(), in.at());
    } else if (response instanceof Response.Deflection d) {
      onBeam(d.member(), d.at());
    } else if (response instanceof Response.OnPanel p) {
      form(p);
    }
  }

  private void onBeam(String member, double at) {
    known(layout.beams.containsKey(member), "member", member);
    double length = layout.beams.get(member).length();
    if (!(at >= 0 && at <= length)) {
      throw new IllegalArgumentException(
          "a response at " + at + " mm leaves member '" + member + "', 0 to " + length + " mm");
    }
  }

  private static void known(boolean known, String kind, String name) {
    if (!known) {
      throw new IllegalArgumentException("there is no " + kind + " '" + name + "'");
    }
  }

  private FrameSolver.Grip grip(Response.Reaction r) {
    return layout.grips.stream()
        .filter(g -> g.node().equals(r.node()) && g.direction() == r.direction())
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "node '" + r.node() + "' is not held " + r.direction().inWords()));
  }

  private LinearForm form(Response.OnPanel p) {
    return layout.attached.stream()
        .map(a -> a.form(p))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no panel '" + p.panel() + "'"));
  }

  int size() {
    return responses.size();
  }

  List<Response> responses() {
    return responses;
  }

  /** All responses in one solution. */
  double[] of(Motion motion) {
    double[] values = new double[responses.size()];
    for (int o = 0; o < values.length; o++) {
      values[o] = read(responses.get(o), motion);
    }
    return values;
  }

  private double read(Response response, Motion motion) {
    double[] u = motion.solved().u();
    if (response instanceof Response.Displacement d) {
      return u[6 * layout.vertices.get(d.node()) + d.direction().index()];
    } else if (response instanceof Response.Reaction r) {
      FrameSolver.Grip grip = grip(r);
      return switch (grip.kind()) {
        case CONDITION -> motion.solved().conditionForce()[grip.number()];
        case SPRING ->
            -grip.stiffness() * u[6 * layout.vertices.get(r.node()) + r.direction().index()];
        case CONTACT -> motion.solved().contactForce()[grip.number()];
      };
    } else if (response instanceof Response.Internal in) {
      BeamState state = motion.beams().apply(layout.beams.get(in.member()));
      return new MemberResult(state).along(in.force()).at(in.at());
    } else if (response instanceof Response.Deflection d) {
      BeamState state = motion.beams().apply(layout.beams.get(d.member()));
      return new MemberResult(state).deflectionAlong(d.direction().index()).at(d.at());
    }
    return form((Response.OnPanel) response).at(u);
  }

  /** The solutions of some load cases, no contacts being there. */
  static List<Motion> cases(PreparedFrame frame, List<Loading> loadings) {
    List<Motion> motions = new ArrayList<>();
    for (Loading loading : loadings) {
      motions.add(motion(frame, loading, true));
    }
    return motions;
  }

  /** One solution, with or without the prescribed displacements. */
  static Motion motion(PreparedFrame frame, Loading loading, boolean withGiven) {
    GlobalSystem.Solved solved = frame.system().solve(loading.forces(), withGiven, null);
    return new Motion(
        solved, beam -> beam.state(SecondOrder.own(beam, solved.u()), loading.span(beam)));
  }
}
