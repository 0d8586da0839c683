package org.stoutwork.check.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stoutwork.bench.Air;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.EndCap;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.Lipping;
import org.stoutwork.bench.TopLayer;
import org.stoutwork.check.Finding;
import org.stoutwork.check.Inquiry;
import org.stoutwork.joint.glue.Laminations;
import org.stoutwork.quantity.Unit;
import org.stoutwork.quantity.Writing;
import org.stoutwork.result.CheckResult;
import org.stoutwork.result.Topic;
import org.stoutwork.source.Source;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.moisture.SeasonalRoom;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;
import org.stoutwork.working.RecordingPad;

/**
 * Boards across the ends of a solid top, which moves while they do not: whether the slots of a
 * sliding end cap leave room, and whether a glued cap or lipping splits the top as it dries.
 */
public final class EdgeMovement {

  /** Share of the stress that creep and slip leave; judgement. */
  private static final double REMAINS = 0.5;

  private final Inquiry inquiry;
  private final Bench bench;
  private final TopLayer layer;

  private EdgeMovement(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.bench = inquiry.bench();
    this.layer = bench.top().layers().get(0);
  }

  /** A check for the end cap and one for a lipping over the ends, where there are any. */
  public static List<CheckResult> all(Inquiry inquiry) {
    EdgeMovement edges = new EdgeMovement(inquiry);
    List<CheckResult> out = new ArrayList<>();
    edges.bench.top().endCap().ifPresent(cap -> out.add(edges.cap(cap)));
    edges
        .bench
        .top()
        .lipping()
        .filter(l -> l.edges().coversEnds() && l.hold() instanceof Lipping.Hold.Glued)
        .ifPresent(
            l -> out.add(edges.locked("lipping-ends", "Glued lipping on the ends of the top")));
    return out;
  }

  private Optional<Species> solid() {
    boolean one = bench.top().layers().size() == 1 && layer.grain() == Grain.ALONG;
    return one && bench.timbers().get(layer.wood()).wood() instanceof Species species
        ? Optional.of(species)
        : Optional.empty();
  }

  private CheckResult left(String key, String title) {
    return new CheckResult.NotChecked(
        key, title, "top", Topic.MOVEMENT, UnknownMovement.reason(inquiry.bench()));
  }

  private CheckResult cap(EndCap cap) {
    return cap.glued() ? locked("end-cap", "End cap glued over its whole length") : sliding(cap);
  }

  private CheckResult sliding(EndCap cap) {
    Optional<Species> species = solid();
    if (species.isEmpty()) {
      return left("end-cap", "Slots of the end cap");
    }
    Air air = bench.air();
    double half = bench.top().width().mm() / 2;
    RecordingPad pad = Pad.recording();
    double needed =
        SeasonalRoom.needed(pad, species.get().shrinkage(), half, air.atAssembly(), air.range());
    double slot =
        pad.given(
            "R_d",
            "length of the slots beyond the pegs",
            cap.slot().mm(),
            Unit.MM,
            Source.yours("end cap"));
    return Finding.of("end-cap", "Slots of the end cap", Topic.MOVEMENT)
        .on("top", "the slots nearest to the edges, the cap glued in the middle")
        .under(seasons(), "a year's seasons")
        .needs()
        .judge(needed, Math.max(slot, 1e-3), Unit.MM, pad);
  }

  private String seasons() {
    return "moisture from %s %% to %s %%, %s %% at assembly"
        .formatted(
            Writing.fixed(bench.air().range().low(), 1),
            Writing.fixed(bench.air().range().high(), 1),
            Writing.fixed(bench.air().atAssembly(), 1));
  }

  /** A top that dries while its width is held is pulled across the grain. */
  private CheckResult locked(String key, String title) {
    Optional<Species> species = solid();
    if (species.isEmpty()) {
      return left(key, title);
    }
    OptionalDouble across =
        inquiry
            .strengths()
            .value(layer.wood(), DurationClass.PERMANENT, DesignQuantity.MODULUS_ACROSS);
    OptionalDouble tension =
        inquiry
            .strengths()
            .value(layer.wood(), DurationClass.PERMANENT, DesignQuantity.TENSION_PERPENDICULAR);
    if (across.isEmpty() || tension.isEmpty()) {
      return new CheckResult.NotChecked(
          key,
          title,
          "top",
          Topic.MOVEMENT,
          "the basis gives no strength or stiffness of this wood across the grain; leave the ends"
              + " free to move");
    }
    double points = Math.max(0, bench.air().atAssembly() - bench.air().range().low());
    RecordingPad pad = Pad.recording();
    inquiry
        .strengths()
        .explain(layer.wood(), DurationClass.PERMANENT, DesignQuantity.TENSION_PERPENDICULAR, pad);
    double stress =
        Laminations.locked(
            pad,
            across.getAsDouble(),
            species.get().shrinkage().tangentialCoefficient().value(),
            points,
            REMAINS);
    return Finding.of(key, title, Topic.MOVEMENT)
        .on("top", "across the grain at its ends, where it is kept from shrinking")
        .under(seasons(), "the driest season")
        .note("Glue an end cap in its middle only and peg it in slots; leave the ends unlipped.")
        .judge(stress, tension.getAsDouble(), Unit.MPA, pad);
  }
}
