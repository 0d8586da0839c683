package org.stoutwork.wood.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stoutwork.wood.Wood;

/** The answer to a search for a wood by name. */
public sealed interface Lookup {

  /** The wood, if exactly one answers to the name. */
  Optional<Wood> wood();

  /** The answer as a sentence for people. */
  String sentence();

  /**
   * Exactly one wood answers to the name.
   *
   * @param found the wood
   */
  record Found(Wood found) implements Lookup {
    @Override
    public Optional<Wood> wood() {
      return Optional.of(found);
    }

    @Override
    public String sentence() {
      return "%s (%s)".formatted(found.name(), found.key());
    }
  }

  /**
   * Several woods answer to the name; the person must say which is meant.
   *
   * @param asked the name
   * @param candidates at least two
   */
  record Ambiguous(String asked, List<Wood> candidates) implements Lookup {

    /** Keeps its own copy. */
    public Ambiguous {
      candidates = List.copyOf(candidates);
    }

    @Override
    public Optional<Wood> wood() {
      return Optional.empty();
    }

    @Override
    public String sentence() {
      return "which %s? say one of: %s".formatted(asked, keys(candidates));
    }
  }

  /**
   * No wood answers to the name.
   *
   * @param asked the name
   * @param nearest woods with names spelled nearly so, nearest first
   */
  record Unknown(String asked, List<Wood> nearest) implements Lookup {

    /** Keeps its own copy. */
    public Unknown {
      nearest = List.copyOf(nearest);
    }

    @Override
    public Optional<Wood> wood() {
      return Optional.empty();
    }

    @Override
    public String sentence() {
      return "no wood is known as \"%s\"; nearest: %s".formatted(asked, keys(nearest));
    }
  }

  private static String keys(List<Wood> woods) {
    return woods.stream()
        .map(wood -> "%s (%s)".formatted(wood.key(), wood.name()))
        .collect(Collectors.joining(", "));
  }
}
