package org.stoutwork.report.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.element.PlateForces;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.solve.MemberResult.Force;
import org.stoutwork.analysis.solve.PanelPointResult;
import org.stoutwork.analysis.solve.PanelResult;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.field.DefaultTaken;
import org.stoutwork.report.file.field.FileReading.Outcome;
import org.stoutwork.report.file.frame.ContactSummary;
import org.stoutwork.report.file.frame.FrameAnswers;
import org.stoutwork.report.file.frame.FrameFile;
import org.stoutwork.report.file.frame.MemberExtremes;
import org.stoutwork.report.file.frame.Statics;

/** The results of a frame for people to read. */
final class FrameTable {

  private static final int DIGITS = 4;

  private FrameTable() {}

  static void print(Outcome<FrameFile> read, FrameAnswers answers, PrintStream out) {
    FrameFile file = read.value();
    List<String> lines = new ArrayList<>();
    lines.add(file.title().isEmpty() ? "Frame" : file.title());
    lines.add("");
    answers.first().ifPresent(solved -> solved(lines, "", file.model(), solved));
    answers
        .secondOrder()
        .ifPresent(solved -> solved(lines, ", second order", file.model(), solved));
    answers.bucklingFactors().ifPresent(list -> values(lines, "Buckling load factors", list));
    answers.frequenciesHz().ifPresent(list -> values(lines, "Natural frequencies, Hz", list));
    defaults(lines, read.defaults());
    lines.forEach(out::println);
    out.flush();
  }

  private static void solved(
      List<String> lines, String which, FrameModel model, FrameAnswers.Solved solved) {
    statics(lines, which, model, solved.frame());
    solved.panels().forEach((name, panel) -> panel(lines, name, which, panel));
  }

  private static void statics(List<String> lines, String which, FrameModel model, Statics result) {
    TextTable moved = new TextTable("node", "ux", "uy", "uz", "rx", "ry", "rz");
    model.nodes().keySet().forEach(node -> moved.row(cells(node, result.displacement(node))));
    add(lines, "Displacements (mm, rad; global axes)" + which, moved);
    TextTable held = new TextTable("node", "Fx", "Fy", "Fz", "Mx", "My", "Mz");
    model.supports().keySet().forEach(node -> held.row(cells(node, result.reaction(node))));
    add(lines, "Reactions on the structure (N, N mm; global axes)" + which, held);
    TextTable members =
        new TextTable("member", "N", "at", "V", "at", "M", "at", "deflection", "at");
    model
        .members()
        .keySet()
        .forEach(name -> members.row(extremes(name, result.member(name).extremes())));
    add(
        lines,
        "Members, largest values (N, N mm, mm) and their places from the start" + which,
        members);
    contacts(lines, result, which);
    lines.add(
        "Self-check"
            + which
            + ": equilibrium error "
            + Writing.number(result.equilibriumError(), 2)
            + ", residual "
            + Writing.number(result.residual(), 2)
            + ", reciprocity error "
            + Writing.number(result.reciprocityError(), 2));
    lines.add("");
  }

  private static void panel(List<String> lines, String name, String which, PanelResult panel) {
    lines.add("Panel " + name + " (mm; N mm/mm, N/mm)" + which);
    lines.add(
        "  deflection from "
            + number(panel.wMin().value())
            + " at ["
            + number(panel.wMin().x())
            + ", "
            + number(panel.wMin().y())
            + "] to "
            + number(panel.wMax().value())
            + ", estimated error of the mesh "
            + Writing.number(panel.meshError(), 2));
    if (!panel.report().isEmpty()) {
      TextTable points = new TextTable("x", "y", "w", "Mx", "My", "Mxy", "Qx", "Qy");
      panel.report().forEach(point -> points.row(point(point)));
      lines.addAll(points.lines());
    }
    lines.add("");
  }

  private static List<String> point(PanelPointResult at) {
    PlateForces m = at.forces();
    return Stream.of(at.x(), at.y(), at.w(), m.mx(), m.my(), m.mxy(), m.qx(), m.qy())
        .map(FrameTable::number)
        .toList();
  }

  private static List<String> cells(String name, double... values) {
    List<String> cells = new ArrayList<>(List.of(name));
    Arrays.stream(values).mapToObj(FrameTable::number).forEach(cells::add);
    return cells;
  }

  private static List<String> extremes(String name, MemberExtremes extremes) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (Extreme extreme :
        List.of(
            extremes.forces().get(Force.N),
            extremes.shear().extreme(),
            extremes.moment().extreme())) {
      cells.add(number(extreme.value()));
      cells.add(number(extreme.at()));
    }
    cells.add(extremes.deflection().map(d -> number(d.extreme().value())).orElse(""));
    cells.add(extremes.deflection().map(d -> number(d.extreme().at())).orElse(""));
    return cells;
  }

  private static void contacts(List<String> lines, Statics result, String which) {
    TextTable table = new TextTable("part", "state", "force", "gap");
    for (ContactSummary part : ContactSummary.of(result.contacts())) {
      table.row(List.of(part.part(), part.state(), number(part.force()), number(part.gap())));
    }
    add(lines, "One-way supports and contacts (N, mm)" + which, table);
  }

  private static void values(List<String> lines, String what, List<Double> values) {
    String list = String.join(", ", values.stream().map(FrameTable::number).toList());
    lines.add(what + ": " + (list.isEmpty() ? "none found" : list));
    lines.add("");
  }

  private static void defaults(List<String> lines, List<DefaultTaken> defaults) {
    if (defaults.isEmpty()) {
      return;
    }
    lines.add("Not given, taken as");
    for (DefaultTaken taken : defaults) {
      lines.add("  " + taken.keyPath() + ": " + taken.value() + " (" + taken.why() + ")");
    }
  }

  private static void add(List<String> lines, String heading, TextTable table) {
    if (!table.isEmpty()) {
      lines.add(heading);
      lines.addAll(table.lines());
      lines.add("");
    }
  }

  private static String number(double value) {
    return Writing.number(value, DIGITS);
  }
}
