package org.stoutwork.report.file.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stoutwork.quantity.Dimension;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Faults;

/** What one reading of one file gathers. Belongs to one thread. */
final class Reading {

  private final Faults faults;
  private final List<DefaultTaken> defaults = new ArrayList<>();
  private final List<Fields> opened = new ArrayList<>();
  private final Map<Dimension, Unit> bareUnits = new HashMap<>();

  Reading(Faults faults) {
    this.faults = faults;
  }

  void add(Fault fault) {
    faults.add(fault);
  }

  int faultCount() {
    return faults.count();
  }

  void add(DefaultTaken taken) {
    defaults.add(taken);
  }

  void open(Fields fields) {
    opened.add(fields);
  }

  void bareUnit(Unit unit) {
    bareUnits.put(unit.dimension(), unit);
  }

  Optional<Unit> bareUnit(Dimension dimension) {
    return Optional.ofNullable(bareUnits.get(dimension));
  }

  /** Reports unknown keys; possible only now, when every map has said what it knows. */
  void reportUnknownKeys() {
    for (Fields fields : opened) {
      UnknownKeys.report(fields, faults);
    }
  }

  List<DefaultTaken> defaults() {
    return List.copyOf(defaults);
  }
}
