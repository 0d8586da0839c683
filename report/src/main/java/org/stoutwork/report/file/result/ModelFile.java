package org.stoutwork.report.file.result;

import java.util.List;
import java.util.Set;
import org.stoutwork.check.GoverningCase;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.frame.Analysis;
import org.stoutwork.report.file.frame.FrameFiles;
import org.stoutwork.report.file.frame.FrameWriter;
import org.stoutwork.study.GoverningModel;

/** Writes the model behind a check as a frame file; its title says what to read from it. */
public final class ModelFile {

  private static final int DIGITS = 9;
  private static final double FULL = 1e-12;

  private ModelFile() {}

  /**
   * Writes a model.
   *
   * @param bench name of the bench
   * @param model behind a check
   * @return a frame file, ending in a newline
   */
  public static String json(String bench, GoverningModel model) {
    String title =
        "%s: %s, %s; %s%s"
            .formatted(
                bench,
                model.check().key(),
                model.check().title(),
                model.check().load(),
                read(model));
    return FrameWriter.json(
        FrameFiles.of(title, model.frame(), List.of(), model.loads(), Set.of(Analysis.STATIC)));
  }

  /** What the check read, as a sum of displacements; nothing where it read the forces of a part. */
  private static String read(GoverningModel model) {
    if (model.terms().isEmpty()) {
      return "; forces of " + model.check().part();
    }
    StringBuilder sum = new StringBuilder();
    for (GoverningCase.Term term : model.terms()) {
      if (Math.abs(term.factor()) > FULL) {
        sum.append(
            sum.isEmpty() ? (term.factor() < 0 ? "−" : "") : term.factor() < 0 ? " − " : " + ");
        double size = Math.abs(term.factor());
        sum.append(size == 1 ? "" : Writing.number(size, DIGITS) + "·");
        sum.append(term.direction().name().toLowerCase(java.util.Locale.ROOT));
        sum.append("(").append(term.node()).append(")");
      }
    }
    return "; %s = %s = %s"
        .formatted(model.quantity(), sum, Writing.with(model.value(), Unit.MM, DIGITS));
  }
}
