package org.stoutwork.report.file.frame;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.analysis.solve.ContactState;
import org.stoutwork.analysis.solve.MemberResult.Force;
import org.stoutwork.analysis.solve.SecondOrderResult;

/**
 * Second-order results as {@link Statics}. Extremes are the largest of the values at the stations
 * into which members are divided.
 *
 * @param model what was solved
 * @param result what the solver found
 */
public record OnDisplaced(FrameModel model, SecondOrderResult result) implements Statics {

  /** The internal forces in the order in which the solver lists them. */
  private static final List<Force> ORDER =
      List.of(Force.N, Force.VY, Force.VZ, Force.T, Force.MY, Force.MZ);

  @Override
  public double[] displacement(String node) {
    return result.displacement(node);
  }

  @Override
  public double[] reaction(String node) {
    return result.reaction(node);
  }

  @Override
  public List<ContactState> contacts() {
    return result.contacts();
  }

  @Override
  public double equilibriumError() {
    return result.equilibriumError();
  }

  @Override
  public double residual() {
    return result.residual();
  }

  @Override
  public double reciprocityError() {
    return result.reciprocityError();
  }

  @Override
  public MemberStatics member(String name) {
    Member member = model.members().get(name);
    Vec3 start = model.nodes().get(member.from()).plus(member.start().offset());
    Vec3 end = model.nodes().get(member.to()).plus(member.end().offset());
    return new OfMember(name, end.minus(start).length(), result);
  }

  private record OfMember(String name, double length, SecondOrderResult result)
      implements MemberStatics {
    @Override
    public double[] start() {
      return result.start(name);
    }

    @Override
    public double[] end() {
      return result.end(name);
    }

    @Override
    public double[] internal(int quarter) {
      return result.internal(name, result.stations() * quarter / 4);
    }

    @Override
    public MemberExtremes extremes() {
      Map<Force, Extreme> largest = new EnumMap<>(Force.class);
      for (int station = 0; station <= result.stations(); station++) {
        double[] six = result.internal(name, station);
        double x = length * station / result.stations();
        for (int i = 0; i < ORDER.size(); i++) {
          largest.merge(ORDER.get(i), new Extreme(six[i], x), (a, b) -> isLarger(b, a) ? b : a);
        }
      }
      return new MemberExtremes(
          largest,
          Optional.of(MemberExtremes.Component.larger(farthest(1, false), farthest(2, false))),
          Optional.of(MemberExtremes.Component.larger(farthest(1, true), farthest(2, true))));
    }

    /** The largest deflection along y (1) or z (2), as it is or from the line between both ends. */
    private Extreme farthest(int index, boolean fromChord) {
      int last = result.stations();
      double start = fromChord ? result.deflection(name, 0)[index] : 0;
      double end = fromChord ? result.deflection(name, last)[index] : 0;
      Extreme most = new Extreme(0, 0);
      for (int station = 0; station <= last; station++) {
        double part = (double) station / last;
        double line = start + part * (end - start);
        double w = result.deflection(name, station)[index] - line;
        Extreme here = new Extreme(w, part * length);
        most = isLarger(here, most) ? here : most;
      }
      return most;
    }

    private static boolean isLarger(Extreme one, Extreme other) {
      return Math.abs(one.value()) > Math.abs(other.value());
    }
  }
}
