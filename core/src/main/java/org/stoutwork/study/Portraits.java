package org.stoutwork.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stoutwork.action.Factors;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;
import org.stoutwork.assembly.BenchModel;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.assembly.Part;
import org.stoutwork.assembly.PartKind;
import org.stoutwork.assembly.Piece;
import org.stoutwork.check.Inquiry;
import org.stoutwork.check.Stand;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Curve;
import org.stoutwork.result.Diagram;
import org.stoutwork.result.Shape;
import org.stoutwork.result.Topic;

/** Draws, as data, how the bench moves and what its parts feel under what governs. */
final class Portraits {

  private static final int STEPS = 8;
  private static final int MOST_DIAGRAMS = 4;

  private final Inquiry inquiry;
  private final BenchModel model;

  Portraits(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.model = inquiry.at(JointLevel.MEAN).model();
  }

  /** The shapes of the governing sags and sways. */
  List<Shape> shapes(List<CheckResult> checks) {
    List<Shape> out = new ArrayList<>();
    for (CheckResult check : checks) {
      boolean wanted = Set.of("top-sag-point", "sway-along", "sway-across").contains(check.key());
      if (wanted && check instanceof CheckResult.Checked checked) {
        stand(checked.load()).ifPresent(stand -> out.add(shape(checked, stand)));
      }
    }
    return out;
  }

  private Optional<Stand> stand(String words) {
    return inquiry.stands().stream().filter(s -> s.words().equals(words)).findFirst();
  }

  private Shape shape(CheckResult.Checked check, Stand stand) {
    FrameResult result = inquiry.solve(JointLevel.MEAN, Factors.use(), stand);
    List<Curve> curves = new ArrayList<>();
    double largest = 0;
    String largestAt = "";
    for (Part part : model.parts()) {
      for (Piece piece : part.pieces()) {
        Curve curve = curve(part, piece, result);
        curves.add(curve);
        for (Curve.Point p : curve.points()) {
          double size = Math.sqrt(p.ux() * p.ux() + p.uy() * p.uy() + p.uz() * p.uz());
          if (size > largest) {
            largest = size;
            largestAt =
                "%s, %s mm from the left, %s mm from the front, %s mm above the floor"
                    .formatted(
                        kindOf(part),
                        Writing.fixed(p.x(), 0),
                        Writing.fixed(p.y(), 0),
                        Writing.fixed(p.z(), 0));
          }
        }
      }
    }
    return new Shape(check.title(), check.key(), stand.words(), curves, largest, largestAt);
  }

  private static String kindOf(Part part) {
    return part.kind() == PartKind.TOP ? "top" : part.name();
  }

  private Curve curve(Part part, Piece piece, FrameResult result) {
    Member member = model.frame().members().get(piece.member());
    Vec3 from = model.frame().nodes().get(member.from()).plus(member.start().offset());
    Vec3 to = model.frame().nodes().get(member.to()).plus(member.end().offset());
    MemberResult moved = result.member(piece.member());
    List<Curve.Point> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double t = (double) i / STEPS;
      Vec3 at = from.plus(to.minus(from).times(t));
      double[] u = moved.globalDeflectionAt(t * moved.length());
      points.add(new Curve.Point(at.x(), at.y(), at.z(), u[0], u[1], u[2]));
    }
    return new Curve(kindOf(part), points);
  }

  /** Moment and shear along the parts that are bent the most for their strength. */
  List<Diagram> diagrams(List<CheckResult> checks) {
    List<CheckResult.Checked> bent =
        checks.stream()
            .filter(c -> c.topic() == Topic.MEMBER && c.key().startsWith("bending"))
            .filter(CheckResult.Checked.class::isInstance)
            .map(CheckResult.Checked.class::cast)
            .sorted(Comparator.comparingDouble(CheckResult.Checked::utilisation).reversed())
            .toList();
    List<Diagram> out = new ArrayList<>();
    Set<PartKind> shown = new LinkedHashSet<>();
    for (CheckResult.Checked check : bent) {
      Optional<Part> part = partOf(check.part());
      if (part.isPresent() && shown.add(part.get().kind()) && out.size() < MOST_DIAGRAMS) {
        stand(check.load()).ifPresent(stand -> out.add(diagram(part.get(), stand)));
      }
    }
    return out;
  }

  private Optional<Part> partOf(String name) {
    return model.parts().stream().filter(p -> p.name().equals(name)).findFirst();
  }

  private Diagram diagram(Part part, Stand stand) {
    FrameResult result =
        inquiry.solve(JointLevel.MEAN, Factors.strength(inquiry.bench().basis()), stand);
    boolean sideways = sideways(part, result);
    List<Diagram.Station> stations = new ArrayList<>();
    for (Piece piece : part.pieces()) {
      MemberResult member = result.member(piece.member());
      for (int i = 0; i <= STEPS; i++) {
        double x = member.length() * i / STEPS;
        double[] f = member.internalAt(x);
        stations.add(
            sideways
                ? new Diagram.Station(piece.from() + x, f[0], f[1], f[5])
                : new Diagram.Station(piece.from() + x, f[0], f[2], -f[4]));
      }
    }
    String plane =
        part.kind() == PartKind.LEG
            ? sideways ? ", across the bench" : ", along the bench"
            : sideways ? ", sideways" : "";
    return new Diagram(part.name() + plane, part.name(), stand.words(), part.length(), stations);
  }

  /** Whether a part is bent more in its local x-y plane than in its x-z plane. */
  private static boolean sideways(Part part, FrameResult result) {
    double upDown = 0;
    double side = 0;
    for (Piece piece : part.pieces()) {
      MemberResult member = result.member(piece.member());
      for (double x : new double[] {0, member.length()}) {
        double[] f = member.internalAt(x);
        upDown = Math.max(upDown, Math.abs(f[4]));
        side = Math.max(side, Math.abs(f[5]));
      }
    }
    return side > upDown;
  }
}
