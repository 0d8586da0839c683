package org.stoutwork.bench.sketch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.bench.Air;
import org.stoutwork.bench.EndFrame;
import org.stoutwork.bench.FixingScrew;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.ScrewRow;
import org.stoutwork.bench.Timber;
import org.stoutwork.bench.Top;
import org.stoutwork.bench.TopFixing;
import org.stoutwork.bench.TopHeld;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.fastener.ScrewHole;
import org.stoutwork.quantity.Length;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.moisture.SeasonalRoom;
import org.stoutwork.working.Pad;

/**
 * Completes the holes in the top rails for the screws of the top. It comes after the rails and the
 * air are known: a hole takes what the rail can spare and should let the top move with the seasons.
 */
final class HoleCompletion {

  /** Part of a rail's thickness that a hole may take; project default. */
  private static final double OF_THICKNESS = 0.5;

  /** Part of the distance from screw to screw that a hole may take; project default. */
  private static final double OF_PITCH = 0.5;

  /** Room for a solid top whose species is not known; common practice, no source, mm. */
  private static final double UNKNOWN_WOOD = 8;

  /** Room for tops whose movement is small or held back; common practice, no source, mm. */
  private static final double SMALL = 4;

  private static final String FIXING = "top.fixing.";
  private static final String DIAMETER = FIXING + "holeDiameter";
  private static final String WIDTH = FIXING + "slotWidth";
  private static final String LENGTH = FIXING + "slotLength";

  private final Answers answers;
  private final FixingSketch sketch;
  private final Top top;
  private final TopFixing fixing;
  private final List<EndFrame> frames;
  private final boolean heldElsewhere;
  private final double screw;
  private final boolean sound;

  /**
   * @param heldElsewhere whether a stretcher under the top is fixed to it and so keeps it in its
   *     place
   */
  HoleCompletion(
      Answers answers, FixingSketch sketch, Top top, List<EndFrame> frames, boolean heldElsewhere) {
    this.answers = answers;
    this.sketch = sketch;
    this.top = top;
    this.fixing = top.fixing();
    this.frames = frames;
    this.heldElsewhere = heldElsewhere;
    this.screw = fixing.screwDiameter().mm();
    this.sound = answers.faults().isEmpty();
  }

  Top complete(Air air, Map<String, Timber> timbers) {
    TopHeld held = held();
    ScrewHole hole = hole(held, air, Optional.ofNullable(timbers.get(bottom().wood())));
    if (sound) {
      spare(hole);
    }
    return top.with(fixing.with(hole, held));
  }

  private TopLayer bottom() {
    return top.layers().get(0);
  }

  private TopHeld held() {
    int count = fixing.perRail();
    boolean middle = count % 2 == 1;
    if (sketch.heldAt.filter(h -> h == TopHeld.MIDDLE).isPresent() && !middle) {
      answers.fault(
          FIXING + "heldAt",
          "middle, with %s screws a rail".formatted(count),
          "an even number has none in the middle: say front or nowhere, or take one screw more");
    }
    boolean onlyOne = count == 1 && given();
    TopHeld usual =
        onlyOne || heldElsewhere ? TopHeld.NOWHERE : middle ? TopHeld.MIDDLE : TopHeld.FRONT;
    String reason =
        switch (usual) {
          case MIDDLE -> "the middle screw fits its hole, the top moves to the front and the back";
          case FRONT -> "none stands in the middle; the foremost fits its hole, the top moves back";
          case NOWHERE ->
              heldElsewhere
                  ? "the stretcher that is fixed to the top keeps it in its place"
                  : "the only screw of a rail stands in the hole that was given";
        };
    return answers.or(FIXING + "heldAt", sketch.heldAt, usual, usual.words(), reason);
  }

  private boolean given() {
    return sketch.holeDiameter.isPresent()
        || sketch.slotWidth.isPresent()
        || sketch.slotLength.isPresent();
  }

  private ScrewHole hole(TopHeld held, Air air, Optional<Timber> timber) {
    if (sketch.holeDiameter.isPresent()) {
      if (sketch.slotWidth.isPresent() || sketch.slotLength.isPresent()) {
        answers.fault(
            DIAMETER,
            sketch.holeDiameter.get() + " beside a slot",
            "round holes have holeDiameter, slots have slotWidth and slotLength; leave one out");
      }
      return ScrewHole.round(wide(DIAMETER, sketch.holeDiameter.get().mm()));
    }
    if (fixing.perRail() == 1 && held != TopHeld.NOWHERE && !given()) {
      String fits = "as wide as the screw: it alone holds the top on its rail";
      answers.or(DIAMETER, Optional.empty(), screw, Length.ofMm(screw).toString(), fits);
      return ScrewHole.round(screw);
    }
    Length usual = Length.ofMm(screw);
    String guides = "as wide as the screw, which so holds the top along the bench";
    double width = answers.or(WIDTH, sketch.slotWidth, usual, usual.toString(), guides).mm();
    width = wide(WIDTH, width);
    double length = sketch.slotLength.map(Length::mm).orElse(0.0);
    if (sketch.slotLength.isEmpty()) {
      length = usualLength(width, held, air, timber);
    } else if (length < width) {
      answers.fault(
          LENGTH,
          Length.ofMm(length).toString(),
          "at least its width of %s; a round hole is given by holeDiameter"
              .formatted(Length.ofMm(width)));
    }
    return new ScrewHole(width, Math.max(width, length));
  }

  /** The width of a hole that lets the screw in and keeps its head or washer out. */
  private double wide(String key, double width) {
    double head = fixing.washerDiameter().mm();
    if (width < screw) {
      answers.fault(
          key,
          Length.ofMm(width).toString(),
          "at least %s, or the screw does not go in".formatted(fixing.screwDiameter()));
      return screw;
    }
    if (width >= head) {
      answers.fault(
          key,
          Length.ofMm(width).toString(),
          "less than the %s of %s, which pulls through otherwise; take a wider one, or a slot no"
                  .formatted(
                      fixing.screw() == FixingScrew.COACH_SCREW ? "washer" : "head",
                      fixing.washerDiameter())
              + " wider than the screw");
      return screw;
    }
    return width;
  }

  /** Long enough for the movement of the top, where the rail can spare as much. */
  private double usualLength(double width, TopHeld held, Air air, Optional<Timber> timber) {
    OptionalDouble moves = moves(held, air, timber);
    double room = moves.orElse(unknown(timber) ? UNKNOWN_WOOD : SMALL);
    double wanted = Math.max(width, Math.ceil(screw + room));
    double most = Math.max(width, Math.floor(longest()));
    double taken = Math.min(wanted, most);
    String why =
        moves.isPresent()
            ? "the top moves: %s longer than the screw is needed".formatted(upTo(room))
            : unknown(timber)
                ? "8 mm longer than the screw, for a solid top whose species is not named"
                : "4 mm longer than the screw, for a top that hardly moves";
    String reason = taken < wanted ? why + ", more than the rail can spare" : why;
    return answers.or(LENGTH, Optional.empty(), taken, Length.ofMm(taken).toString(), reason);
  }

  /** To the next tenth above. */
  private static Length upTo(double mm) {
    return Length.ofMm(Math.ceil(mm * 10) / 10);
  }

  private boolean plain() {
    return top.layers().size() == 1 && bottom().grain() == Grain.ALONG;
  }

  private boolean unknown(Optional<Timber> timber) {
    return plain() && timber.filter(t -> t.wood() instanceof StrengthClass).isPresent();
  }

  /** The room that the check of the top's movement will ask for, if it can be known. */
  private OptionalDouble moves(TopHeld held, Air air, Optional<Timber> timber) {
    double reach = 0;
    for (EndFrame frame : frames) {
      reach = Math.max(reach, ScrewRow.of(top, frame).reach(held));
    }
    if (!sound || !plain() || !(reach > 0) || timber.isEmpty()) {
      return OptionalDouble.empty();
    }
    return timber.get().wood() instanceof Species species
        ? OptionalDouble.of(
            SeasonalRoom.needed(
                Pad.blank(), species.shrinkage(), reach, air.atAssembly(), air.range()))
        : OptionalDouble.empty();
  }

  /** The longest slot that the rails can spare, mm; a hole that fits its screw always may be. */
  private double longest() {
    double pitch = Double.POSITIVE_INFINITY;
    for (EndFrame frame : frames) {
      pitch = Math.min(pitch, ScrewRow.of(top, frame).pitch());
    }
    return Math.max(screw, OF_PITCH * pitch);
  }

  /** Refuses holes that take more of a rail than it can spare. */
  private void spare(ScrewHole hole) {
    double thinnest =
        frames.stream().mapToDouble(f -> f.topRail().thickness().mm()).min().orElse(0);
    String across =
        sketch.holeDiameter.isPresent()
            ? DIAMETER
            : sketch.slotWidth.isPresent() ? WIDTH : FIXING + "screwDiameter";
    if (hole.width() > OF_THICKNESS * thinnest) {
      answers.fault(
          across,
          Length.ofMm(hole.width()).toString(),
          "at most %s, half of the top rail's thickness, so that a quarter is left on either side"
              .formatted(Length.ofMm(OF_THICKNESS * thinnest)));
    } else if (hole.length() > longest() && given()) {
      answers.fault(
          sketch.holeDiameter.isPresent()
              ? DIAMETER
              : sketch.slotLength.isPresent() ? LENGTH : WIDTH,
          Length.ofMm(hole.length()).toString(),
          "at most %s, half of the distance between %s screws in the rail, so that wood is left"
                  .formatted(Length.ofMm(Math.floor(longest() * 10) / 10), fixing.perRail())
              + " between their holes");
    }
  }
}
