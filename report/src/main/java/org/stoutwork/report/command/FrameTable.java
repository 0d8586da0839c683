package org.stoutwork.report.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stoutwork.analysis.element.Extreme;
import org.stoutwork.analysis.model.FrameModel;
import org.stoutwork.analysis.solve.ContactState;
import org.stoutwork.analysis.solve.FrameResult;
import org.stoutwork.quantity.Writing;
import org.stoutwork.report.file.field.DefaultTaken;
import org.stoutwork.report.file.field.FileReading.Outcome;
import org.stoutwork.report.file.frame.FrameAnswers;
import org.stoutwork.report.file.frame.FrameFile;
import org.stoutwork.report.file.frame.MemberExtremes;

/** The results of a frame for people to read. */
final class FrameTable {

  private static final int DIGITS = 4;

  private FrameTable() {}

  static void print(Outcome<FrameFile> read, FrameAnswers answers, PrintStream out) {
    FrameFile file = read.value();
    List<String> lines = new ArrayList<>();
    lines.add(file.title().isEmpty() ? "Frame" : file.title());
    lines.add("");
    answers.first().ifPresent(result -> statics(lines, "", file.model(), result));
    answers
        .secondOrder()
        .ifPresent(result -> statics(lines, ", second order", file.model(), result));
    answers.bucklingFactors().ifPresent(list -> values(lines, "Buckling load factors", list));
    answers.frequenciesHz().ifPresent(list -> values(lines, "Natural frequencies, Hz", list));
    defaults(lines, read.defaults());
    lines.forEach(out::println);
    out.flush();
  }

  private static void statics(
      List<String> lines, String which, FrameModel model, FrameResult result) {
    lines.add("Displacements (mm, rad; global axes)" + which);
    TextTable moved = new TextTable("node", "ux", "uy", "uz", "rx", "ry", "rz");
    model.nodes().keySet().forEach(node -> moved.row(cells(node, result.displacement(node))));
    end(lines, moved);
    lines.add("Reactions on the structure (N, N mm; global axes)" + which);
    TextTable held = new TextTable("node", "Fx", "Fy", "Fz", "Mx", "My", "Mz");
    model.supports().keySet().forEach(node -> held.row(cells(node, result.reaction(node))));
    end(lines, held);
    lines.add("Members, largest values (N, N mm, mm) and their places from the start" + which);
    TextTable members =
        new TextTable("member", "N", "at", "V", "at", "M", "at", "deflection", "at");
    model
        .members()
        .keySet()
        .forEach(name -> members.row(extremes(name, MemberExtremes.of(result.member(name)))));
    end(lines, members);
    contacts(lines, result.contacts(), which);
    lines.add(
        "Self-check"
            + which
            + ": equilibrium error "
            + Writing.number(result.equilibriumError(), 2)
            + ", residual "
            + Writing.number(result.residual(), 2));
    lines.add("");
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
            extremes.n(),
            extremes.v().extreme(),
            extremes.m().extreme(),
            extremes.deflection().extreme())) {
      cells.add(number(extreme.value()));
      cells.add(number(extreme.at()));
    }
    return cells;
  }

  private static void contacts(List<String> lines, List<ContactState> states, String which) {
    if (states.isEmpty()) {
      return;
    }
    lines.add("One-way supports and contacts (N, mm)" + which);
    TextTable table = new TextTable("part", "state", "force", "gap");
    for (ContactState state : states) {
      table.row(
          List.of(
              state.part(),
              state.touching() ? "touching" : "lifted",
              number(state.force()),
              number(state.gap())));
    }
    end(lines, table);
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

  private static void end(List<String> lines, TextTable table) {
    lines.addAll(table.lines());
    lines.add("");
  }

  private static String number(double value) {
    return Writing.number(value, DIGITS);
  }
}
