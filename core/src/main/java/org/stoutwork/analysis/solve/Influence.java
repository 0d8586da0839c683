package org.stoutwork.analysis.solve;

import java.util.List;
import org.stoutwork.analysis.element.Beam;
import org.stoutwork.analysis.model.Combination;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.LoadCase;
import org.stoutwork.analysis.model.Vec3;

/**
 * What any load anywhere does to one {@link Response}, from a single solution: by reciprocity
 * (Maxwell, Betti) the structure moved by the response's own cause shows the effect of a unit load
 * at every place. Immutable.
 */
public final class Influence {
  private final PreparedFrame frame;
  private final Response response;
  private final double[] motion;

  private Influence(PreparedFrame frame, Response response, double[] motion) {
    this.frame = frame;
    this.response = response;
    this.motion = motion;
  }

  static Influence of(PreparedFrame frame, Response response, boolean[] open) {
    FrameSolver.Layout layout = frame.layout();
    double[] cause = new double[layout.equations.unknowns()];
    if (response instanceof Response.Displacement d) {
      cause[6 * vertex(layout, d.node()) + d.direction().index()] = 1;
    } else if (response instanceof Response.OnPanel p) {
      layout.attached.stream()
          .map(a -> a.form(p))
          .flatMap(java.util.Optional::stream)
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("there is no panel '" + p.panel() + "'"))
          .addTo(cause, 1);
    } else if (response instanceof Response.Reaction r) {
      return new Influence(frame, response, reaction(frame, r, open));
    } else {
      Beam beam = beam(layout, response);
      double[] row = row(beam, response);
      for (int i = 0; i < 12; i++) {
        cause[beam.unknowns()[i]] += row[i];
      }
    }
    return new Influence(frame, response, frame.frozen(cause, open).solved().u());
  }

  /** The motion under a unit settlement, turned round, is the influence of a reaction. */
  private static double[] reaction(PreparedFrame frame, Response.Reaction r, boolean[] open) {
    FrameSolver.Grip grip =
        frame.layout().grips.stream()
            .filter(g -> g.node().equals(r.node()) && g.direction() == r.direction())
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "node '" + r.node() + "' is not held " + r.direction().inWords()));
    if (grip.kind() == FrameSolver.Grip.Kind.CONTACT && open[grip.number()]) {
      return new double[frame.layout().equations.unknowns()];
    }
    double[] u = frame.settled(grip, open);
    for (int i = 0; i < u.length; i++) {
      u[i] = -u[i];
    }
    return u;
  }

  private static int vertex(FrameSolver.Layout layout, String node) {
    Integer vertex = layout.vertices.get(node);
    if (vertex == null) {
      throw new IllegalArgumentException("there is no node '" + node + "'");
    }
    return vertex;
  }

  private static Beam beam(FrameSolver.Layout layout, Response response) {
    String member =
        response instanceof Response.Internal internal
            ? internal.member()
            : ((Response.Deflection) response).member();
    Beam beam = layout.beams.get(member);
    if (beam == null) {
      throw new IllegalArgumentException("there is no member '" + member + "'");
    }
    return beam;
  }

  /** The response to unit displacements of the member's own nodes. */
  private static double[] row(Beam beam, Response response) {
    double[] row = new double[12];
    for (int i = 0; i < 12; i++) {
      double[] unit = new double[12];
      unit[i] = 1;
      row[i] = read(new MemberResult(beam.state(unit, null)), response);
    }
    return row;
  }

  private static double read(MemberResult member, Response response) {
    return response instanceof Response.Internal in
        ? member.along(in.force()).at(in.at())
        : member
            .deflectionAlong(((Response.Deflection) response).direction().index())
            .at(((Response.Deflection) response).at());
  }

  /** The response under a load; contacts keep the state this influence was made for. */
  public double of(Load load) {
    Loading loading =
        new Loading(frame.layout(), Combination.of(new LoadCase("influence", List.of(load))));
    double sum = 0;
    double[] f = loading.forces();
    for (int i = 0; i < f.length; i++) {
      sum += f[i] * motion[i];
    }
    if (response instanceof Response.Internal || response instanceof Response.Deflection) {
      Beam beam = beam(frame.layout(), response);
      if (loading.span(beam) != null) {
        // The loaded member's own part, its nodes held.
        sum += read(new MemberResult(beam.state(new double[12], loading.span(beam))), response);
      }
    }
    return sum;
  }

  /** The response under a unit force at a node along (or a unit moment about) each global axis. */
  public double[] atNode(String node) {
    double[] six = new double[6];
    System.arraycopy(motion, 6 * vertex(frame.layout(), node), six, 0, 6);
    return six;
  }

  /** The response under a force (N, global axes) at a place of a member. */
  public double onMember(String member, double at, Vec3 force) {
    return of(new Load.OnMemberPoint(member, at, force, Vec3.ZERO, Load.Axes.GLOBAL));
  }
}
