package org.stoutwork.report.file.frame;

import java.util.List;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.report.file.tree.JsonOut;

/** Writes the results of a frame as canonical JSON. Units as in the frame file. */
public final class FrameResultsWriter {

  private FrameResultsWriter() {}

  /**
   * Writes results.
   *
   * @param file what was solved
   * @param answers what was worked out
   * @return the text, ending in a newline
   * @throws IllegalArgumentException when a result is not finite
   */
  public static String json(FrameFile file, FrameAnswers answers) {
    return JsonOut.object(
        out -> {
          out.put("schemaVersion", FrameFile.SCHEMA_VERSION);
          out.put("title", file.title()).put("units", FrameMapping.UNITS);
          answers.first().ifPresent(solved -> solved(out, file.model(), solved));
          answers
              .secondOrder()
              .ifPresent(solved -> out.object("secondOrder", o -> solved(o, file.model(), solved)));
          answers.bucklingFactors().ifPresent(list -> out.numbers("bucklingFactors", array(list)));
          answers.frequenciesHz().ifPresent(list -> out.numbers("frequenciesHz", array(list)));
        });
  }

  private static double[] array(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void solved(JsonOut out, FrameModel model, FrameAnswers.Solved solved) {
    statics(out, model, solved.frame());
    PanelResultOut.panels(out, solved.panels());
  }

  private static void statics(JsonOut out, FrameModel model, Statics result) {
    out.object(
        "displacements",
        o -> model.nodes().keySet().forEach(node -> o.numbers(node, result.displacement(node))));
    out.object(
        "reactions",
        o -> model.supports().keySet().forEach(node -> o.numbers(node, result.reaction(node))));
    out.object(
        "members",
        o ->
            model
                .members()
                .keySet()
                .forEach(name -> o.object(name, m -> MemberOut.write(m, result.member(name)))));
    contacts(out, result);
    out.put("equilibriumError", result.equilibriumError()).put("residual", result.residual());
    out.put("reciprocityError", result.reciprocityError());
  }

  private static void contacts(JsonOut out, Statics result) {
    List<ContactSummary> parts = ContactSummary.of(result.contacts());
    if (!parts.isEmpty()) {
      out.object("contact", o -> parts.forEach(part -> o.put(part.part(), part.state())));
    }
  }
}
