package org.stoutwork.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.assembly.JointLevel;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.check.Inquiry;
import org.stoutwork.result.BenchResult;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;

/** The result of a bench together with the models from which it was taken. */
public final class Examination {

  private final Inquiry inquiry;
  private final BenchResult result;

  Examination(Inquiry inquiry, BenchResult result) {
    this.inquiry = inquiry;
    this.result = result;
  }

  /** What the checks say. */
  public BenchResult result() {
    return result;
  }

  /**
   * The model behind a check.
   *
   * @param check of this result
   * @return the model; empty where a check needs no frame, such as one of standing or movement
   */
  public Optional<GoverningModel> model(CheckResult.Checked check) {
    return inquiry.behind(check).map(behind -> model(check, behind));
  }

  private GoverningModel model(CheckResult.Checked check, GoverningCase behind) {
    return new GoverningModel(
        check,
        inquiry.at(JointLevel.MEAN).frame(behind),
        behind.loads().asOneCase(),
        behind.quantity(),
        behind.value(),
        behind.terms());
  }

  /** The model of the governing check that rests on one, then the worst of each other topic. */
  public List<GoverningModel> governingModels() {
    Map<Topic, GoverningModel> byTopic = new LinkedHashMap<>();
    List<CheckResult.Checked> byUse = new ArrayList<>(result.checked());
    byUse.sort(
        Comparator.comparing(CheckResult.Checked::verdict)
            .thenComparingDouble(CheckResult.Checked::utilisation)
            .reversed());
    for (CheckResult.Checked check : byUse) {
      if (!byTopic.containsKey(check.topic())) {
        model(check).ifPresent(model -> byTopic.put(check.topic(), model));
      }
    }
    return List.copyOf(byTopic.values());
  }
}
