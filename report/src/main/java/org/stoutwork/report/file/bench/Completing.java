package org.stoutwork.report.file.bench;

import java.util.List;
import java.util.Optional;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.bench.sketch.BenchFault;
import org.stoutwork.bench.sketch.UnsoundBench;
import org.stoutwork.report.file.field.FileReading.SecondStep;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Faults;
import org.stoutwork.report.file.tree.Nearest;
import org.stoutwork.report.file.tree.Node;

/**
 * Completes what was read, and turns what cannot be built into faults of the file. Where a value
 * was refused, the completion sees a gap and fills it; what it finds wrong with such a filling
 * would only mislead, so it is left out until the value is repaired.
 */
final class Completing implements SecondStep<Draft, BenchFile> {

  @Override
  public Optional<BenchFile> take(Draft draft, Node root, Faults faults) {
    Unsettled unsettled = Unsettled.by(faults.inFileOrder());
    try {
      Bench bench = draft.sketch().complete(draft.woods());
      return Optional.of(
          new BenchFile(relisted(bench, new DefaultPlaces(root, draft.places())), draft.woods()));
    } catch (UnsoundBench unsound) {
      for (BenchFault fault : unsound.faults()) {
        FilePlace place = FilePlace.best(root, draft.places().of(fault.key()));
        if (!unsettled.leavesOpen(fault.key(), place.path())) {
          faults.add(fault(fault, place));
          unsettled.restsOn(fault.key());
        }
      }
      return Optional.empty();
    }
  }

  private static Fault fault(BenchFault fault, FilePlace place) {
    return new Fault(
        place.spot(),
        place.path(),
        "is " + typed(fault.given()),
        typed(fault.allowed()),
        Nearest.question(fault.nearest()),
        "");
  }

  /** With plain blanks, so that what a message offers can be typed again. */
  private static String typed(String words) {
    return words.replace('\u00a0', ' ');
  }

  private static Bench relisted(Bench bench, DefaultPlaces places) {
    List<DefaultTaken> listed =
        bench.defaults().stream()
            .flatMap(
                d ->
                    places.of(d.key()).stream()
                        .map(path -> new DefaultTaken(path, d.value(), d.reason())))
            .distinct()
            .toList();
    return bench.withDefaults(listed);
  }
}
