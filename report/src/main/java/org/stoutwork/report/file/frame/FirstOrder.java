package org.stoutwork.report.file.frame;

import java.util.List;
import org.stoutwork.analysis.solve.ContactState;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.analysis.solve.MemberResult;

/**
 * First-order results as {@link Statics}.
 *
 * @param result what the solver found
 */
public record FirstOrder(FrameResult result) implements Statics {

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
    return new OfMember(result.member(name));
  }

  private record OfMember(MemberResult member) implements MemberStatics {
    @Override
    public double length() {
      return member.length();
    }

    @Override
    public double[] start() {
      return member.start();
    }

    @Override
    public double[] end() {
      return member.end();
    }

    @Override
    public double[] internal(int quarter) {
      return member.internalAt(member.length() * quarter / 4);
    }

    @Override
    public MemberExtremes extremes() {
      return MemberExtremes.of(member);
    }
  }
}
