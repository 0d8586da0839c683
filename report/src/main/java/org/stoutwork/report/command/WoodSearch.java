package org.stoutwork.report.command;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.stoutwork.report.file.wood.Pick;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.catalogue.Lookup;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/** Finds woods by what was typed: a name, some words of a name, or a part of a word. */
final class WoodSearch {

  private static final int SHORTEST_PART = 2;
  private static final int NEAREST = 5;

  private final WoodCatalogue catalogue;

  WoodSearch(WoodCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * All woods that the text may mean.
   *
   * @throws Ending with the nearest names when there is none
   */
  List<Wood> matches(String asked) throws Ending {
    Lookup lookup = catalogue.find(asked);
    if (lookup.wood().isPresent()) {
      return List.of(lookup.wood().get());
    }
    if (lookup instanceof Lookup.Ambiguous several) {
      return several.candidates();
    }
    List<Wood> holding = holding(asked);
    if (holding.isEmpty()) {
      throw unknown(asked, ((Lookup.Unknown) lookup).nearest());
    }
    return holding;
  }

  /**
   * The one wood that stands for the text beside others: the one it means, or of several that bear
   * the name the one in widest use.
   *
   * @throws Ending with the names it could mean when it is no whole name
   */
  Pick one(String asked) throws Ending {
    List<Wood> matches = matches(asked);
    if (matches.size() > 1 && !(catalogue.find(asked) instanceof Lookup.Ambiguous)) {
      throw new Ending(
          ExitCode.BAD_INPUT,
          "\"%s\" could be any of these; say which:\n%s".formatted(asked, lines(matches)));
    }
    return new Pick(asked, matches.get(0), matches.subList(1, matches.size()));
  }

  private List<Wood> holding(String asked) {
    String part = plain(asked);
    return part.length() < SHORTEST_PART
        ? List.of()
        : catalogue.all().stream().filter(wood -> holds(wood, part)).toList();
  }

  private static boolean holds(Wood wood, String part) {
    return plain(wood.key()).contains(part)
        || wood.names().stream().anyMatch(name -> plain(name).contains(part));
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  private static Ending unknown(String asked, List<Wood> nearest) {
    String sentence = "no wood is known as \"%s\"".formatted(asked);
    return new Ending(
        ExitCode.BAD_INPUT,
        nearest.isEmpty()
            ? sentence + "; `stoutwork wood` lists all"
            : sentence + "; the nearest names are:\n" + lines(nearest));
  }

  private static String lines(List<Wood> woods) {
    TextTable table = new TextTable("key", "name").leftColumns(2);
    woods.stream()
        .limit(woods.size() > 2 * NEAREST ? 2 * NEAREST : woods.size())
        .forEach(wood -> table.row(List.of(wood.key(), wood.name())));
    String lines = table.lines().stream().skip(1).collect(Collectors.joining("\n"));
    int more = woods.size() - 2 * NEAREST;
    return more > 0 ? lines + "\n  and " + more + " more" : lines;
  }
}
