package org.stoutwork.bench;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stoutwork.joint.setting.GlueKind;
import org.stoutwork.quantity.Length;
import org.stoutwork.wood.time.DurationClass;

/**
 * A bench, complete and checked for what cannot be built. Made by a sketch.
 *
 * @param name of the bench
 * @param height of the upper face of the top above the floor
 * @param top the top
 * @param endFrames from left to right, two or more
 * @param stretchers along the bench
 * @param vises fixed to the top
 * @param weights that stay on the bench
 * @param duty what it is for
 * @param pupils that work at it at one time; 0 if it is no class bench
 * @param footing what it stands on and with
 * @param air in which it stands
 * @param glue with which it is put together
 * @param basis of the strength checks
 * @param actions that the maker states
 * @param timbers the woods by key
 * @param people behind the sheet
 * @param defaults that were taken, in the order of the description
 */
public record Bench(
    String name,
    Length height,
    Top top,
    List<EndFrame> endFrames,
    List<Stretcher> stretchers,
    List<Vise> vises,
    List<Weight> weights,
    Duty duty,
    int pupils,
    Footing footing,
    Air air,
    GlueKind glue,
    BasisChoice basis,
    List<StatedAction> actions,
    Map<String, Timber> timbers,
    People people,
    List<DefaultTaken> defaults) {

  /** Keeps its own copies. */
  public Bench {
    endFrames = List.copyOf(endFrames);
    stretchers = List.copyOf(stretchers);
    vises = List.copyOf(vises);
    weights = List.copyOf(weights);
    actions = List.copyOf(actions);
    timbers = Collections.unmodifiableMap(new LinkedHashMap<>(timbers));
    defaults = List.copyOf(defaults);
  }

  /** How long what is stored on the bench lies there: the longest of all that is not fixed. */
  public DurationClass storedFor() {
    return weights.stream()
        .filter(weight -> !weight.fixed())
        .map(Weight::lasts)
        .min(Comparator.naturalOrder())
        .orElse(DurationClass.LONG);
  }

  /** Whether something stored lies there for more than ten years in all. */
  public boolean storesForGood() {
    return storedFor() == DurationClass.PERMANENT;
  }

  /**
   * The same bench with its defaults listed otherwise: a file calls some keys by other names and
   * has defaults of its own, such as the unit of bare numbers.
   */
  public Bench withDefaults(List<DefaultTaken> listed) {
    return new Bench(
        name,
        height,
        top,
        endFrames,
        stretchers,
        vises,
        weights,
        duty,
        pupils,
        footing,
        air,
        glue,
        basis,
        actions,
        timbers,
        people,
        listed);
  }
}
