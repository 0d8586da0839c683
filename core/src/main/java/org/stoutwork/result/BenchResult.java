package org.stoutwork.result;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.bench.Bench;

/**
 * Everything that checking a bench yields.
 *
 * @param bench that was checked
 * @param checks in the order of the sheet, the worst first within each topic
 * @param racking along and across
 * @param actions that were looked at
 * @param combinations of them, in words
 * @param masses of the parts, kg, by name
 * @param materials that were used
 * @param joints with their stiffness
 * @param shapes of the governing combinations
 * @param diagrams of the governing parts
 * @param cautions in order of severity
 * @param selfCheck of the analyses
 * @param advice what makers do, joint by joint, those that are alike once
 */
public record BenchResult(
    Bench bench,
    List<CheckResult> checks,
    List<Racking> racking,
    List<ActionLine> actions,
    List<String> combinations,
    Map<String, Double> masses,
    List<MaterialLine> materials,
    List<JointLine> joints,
    List<Shape> shapes,
    List<Diagram> diagrams,
    List<Caution> cautions,
    SelfCheck selfCheck,
    List<AdviceLine> advice) {

  /** Keeps its own copies. */
  public BenchResult {
    checks = List.copyOf(checks);
    racking = List.copyOf(racking);
    actions = List.copyOf(actions);
    combinations = List.copyOf(combinations);
    masses = Collections.unmodifiableMap(new LinkedHashMap<>(masses));
    materials = List.copyOf(materials);
    joints = List.copyOf(joints);
    shapes = List.copyOf(shapes);
    diagrams = List.copyOf(diagrams);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  /** The worst verdict among the checks that came to a number. */
  public Verdict verdict() {
    return checked().stream()
        .map(CheckResult.Checked::verdict)
        .reduce(Verdict.ADEQUATE, Verdict::worse);
  }

  /** The checks that came to a number. */
  public List<CheckResult.Checked> checked() {
    return checks.stream()
        .filter(CheckResult.Checked.class::isInstance)
        .map(CheckResult.Checked.class::cast)
        .toList();
  }

  /** The questions that were not answered. */
  public List<CheckResult.NotChecked> notChecked() {
    return checks.stream()
        .filter(CheckResult.NotChecked.class::isInstance)
        .map(CheckResult.NotChecked.class::cast)
        .toList();
  }

  /** The check that governs: among those with the worst verdict the one that is used most. */
  public CheckResult.Checked worst() {
    return checked().stream()
        .max(
            Comparator.comparing(CheckResult.Checked::verdict)
                .thenComparingDouble(CheckResult.Checked::utilisation))
        .orElseThrow();
  }

  /** Whole mass without what lies on the bench for a time, kg. */
  public double massKg() {
    return masses.values().stream().mapToDouble(Double::doubleValue).sum();
  }
}
