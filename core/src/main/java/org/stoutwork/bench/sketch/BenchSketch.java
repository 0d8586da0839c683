package org.stoutwork.bench.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.stoutwork.bench.BasisChoice;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.Duty;
import org.stoutwork.bench.Footing;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.quantity.Length;
import org.stoutwork.wood.catalogue.WoodCatalogue;
import org.stoutwork.wood.grade.GrowthDefects;

/**
 * What a maker says of a bench: as much as matters.
 *
 * <p>Anything left out is filled in by {@link #complete}. Not thread-safe: one maker, one sketch.
 */
public final class BenchSketch {

  Optional<String> name = Optional.empty();
  Optional<Length> height = Optional.empty();
  Optional<String> wood = Optional.empty();
  Optional<String> gradedAs = Optional.empty();
  Optional<GrowthDefects> growth = Optional.empty();
  Optional<Double> grainRun = Optional.empty();
  Optional<Duty> duty = Optional.empty();
  Optional<Integer> pupils = Optional.empty();
  Optional<Footing> footing = Optional.empty();
  Optional<AirSketch> air = Optional.empty();
  Optional<BasisChoice> basis = Optional.empty();
  Optional<GlueKind> glue = Optional.empty();
  Optional<TopSketch> top = Optional.empty();
  Optional<EndFrameSketch> everyEndFrame = Optional.empty();
  final List<EndFrameSketch> endFrames = new ArrayList<>();
  final List<StretcherSketch> stretchers = new ArrayList<>();
  final List<ViseSketch> vises = new ArrayList<>();
  final List<WeightSketch> weights = new ArrayList<>();
  final List<ActionSketch> actions = new ArrayList<>();
  Optional<PeopleSketch> people = Optional.empty();

  /** Begins with a name and nothing else. */
  public static BenchSketch named(String name) {
    return new BenchSketch().name(name);
  }

  /** Sets the name of the bench. */
  public BenchSketch name(String value) {
    name = Optional.of(value);
    return this;
  }

  /** Sets the height of the upper face of the top. */
  public BenchSketch height(Length value) {
    height = Optional.of(value);
    return this;
  }

  /** Sets the wood of every part that names no other. */
  public BenchSketch wood(String value) {
    wood = Optional.of(value);
    return this;
  }

  /** Sets the strength class of the species used. */
  public BenchSketch gradedAs(String value) {
    gradedAs = Optional.of(value);
    return this;
  }

  /** Sets how clean the wood is. */
  public BenchSketch growth(GrowthDefects value) {
    growth = Optional.of(value);
    return this;
  }

  /** Sets the length in which the grain moves by 1. */
  public BenchSketch grainRun(double value) {
    grainRun = Optional.of(value);
    return this;
  }

  /** Sets what the bench is for. */
  public BenchSketch duty(Duty value) {
    duty = Optional.of(value);
    return this;
  }

  /** Sets how many pupils work at it at one time. */
  public BenchSketch pupils(int value) {
    pupils = Optional.of(value);
    return this;
  }

  /** Sets what it stands on and with. */
  public BenchSketch footing(Footing value) {
    footing = Optional.of(value);
    return this;
  }

  /** Describes the room; may be called again to add to it. */
  public BenchSketch air(Consumer<AirSketch> words) {
    AirSketch part = air.orElseGet(AirSketch::new);
    words.accept(part);
    air = Optional.of(part);
    return this;
  }

  /** Sets the safety format. */
  public BenchSketch basis(BasisChoice value) {
    basis = Optional.of(value);
    return this;
  }

  /** Describes the top; may be called again to add to it. */
  public BenchSketch top(Consumer<TopSketch> words) {
    TopSketch part = top.orElseGet(TopSketch::new);
    words.accept(part);
    top = Optional.of(part);
    return this;
  }

  /** Describes what is alike in all end frames; may be called again to add to it. */
  public BenchSketch everyEndFrame(Consumer<EndFrameSketch> words) {
    EndFrameSketch part = everyEndFrame.orElseGet(EndFrameSketch::new);
    words.accept(part);
    everyEndFrame = Optional.of(part);
    return this;
  }

  /** Adds an end frame, from left to right. */
  public BenchSketch endFrame(Consumer<EndFrameSketch> words) {
    EndFrameSketch next = new EndFrameSketch();
    words.accept(next);
    endFrames.add(next);
    return this;
  }

  /** Adds a stretcher. */
  public BenchSketch stretcher(Consumer<StretcherSketch> words) {
    StretcherSketch next = new StretcherSketch();
    words.accept(next);
    stretchers.add(next);
    return this;
  }

  /** Adds a vise. */
  public BenchSketch vise(Consumer<ViseSketch> words) {
    ViseSketch next = new ViseSketch();
    words.accept(next);
    vises.add(next);
    return this;
  }

  /** Adds something heavy that stays on the bench. */
  public BenchSketch weight(Consumer<WeightSketch> words) {
    WeightSketch next = new WeightSketch();
    words.accept(next);
    weights.add(next);
    return this;
  }

  /** Adds an action in the place of that of the duty. */
  public BenchSketch action(Consumer<ActionSketch> words) {
    ActionSketch next = new ActionSketch();
    words.accept(next);
    actions.add(next);
    return this;
  }

  /** Describes the people behind the sheet; may be called again to add to it. */
  public BenchSketch people(Consumer<PeopleSketch> words) {
    PeopleSketch part = people.orElseGet(PeopleSketch::new);
    words.accept(part);
    people = Optional.of(part);
    return this;
  }

  /**
   * Fills in every default and checks what can be built.
   *
   * @param catalogue of the woods that may be named
   * @throws UnsoundBench with every fault that was found
   */
  public Bench complete(WoodCatalogue catalogue) throws UnsoundBench {
    return new Completion(this, catalogue).complete();
  }

  /** Sets the glue with which it is put together. */
  public BenchSketch glue(GlueKind value) {
    glue = Optional.of(value);
    return this;
  }
}
