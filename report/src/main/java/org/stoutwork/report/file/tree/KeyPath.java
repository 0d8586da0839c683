package org.stoutwork.report.file.tree;

import java.util.regex.Pattern;

/**
 * Where a node stands in the tree, as a person writes it: {@code endFrames[1].legs.width}. Paths
 * share their beginnings and are spelt out only when somebody asks, so a large file costs little.
 */
public final class KeyPath {

  /** The path of the outermost node. */
  public static final KeyPath ROOT = new KeyPath(null, "");

  private static final Pattern PLAIN_KEY = Pattern.compile("[\\p{L}\\p{N}_-]{1,60}");

  private final KeyPath parent;
  private final String step;

  private KeyPath(KeyPath parent, String step) {
    this.parent = parent;
    this.step = step;
  }

  /**
   * The path of an entry of a map.
   *
   * @param key the entry's key; quoted in the path when it holds a dot, a blank or the like
   * @return the longer path
   */
  public KeyPath key(String key) {
    String shown = PLAIN_KEY.matcher(key).matches() ? key : Quote.of(key);
    return new KeyPath(this, isRoot() ? shown : "." + shown);
  }

  /**
   * The path of an item of a list.
   *
   * @param index counted from 0
   * @return the longer path
   */
  public KeyPath index(int index) {
    return new KeyPath(this, "[" + index + "]");
  }

  /** Whether this is the path of the outermost node. */
  public boolean isRoot() {
    return parent == null;
  }

  /** The path spelt out; empty for the outermost node. */
  public String text() {
    return isRoot() ? "" : parent.text() + step;
  }

  /**
   * The key through which this path leaves an ancestor.
   *
   * @param ancestor a path that this one goes on from
   * @return the key as it stands in paths; this whole path when the ancestor is none
   */
  public String keyBelow(KeyPath ancestor) {
    KeyPath path = this;
    while (path.parent != null && !path.parent.equals(ancestor)) {
      path = path.parent;
    }
    return path.parent == null ? text() : path.step.replaceFirst("^\\.", "");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof KeyPath path && text().equals(path.text());
  }

  @Override
  public int hashCode() {
    return text().hashCode();
  }

  /** The path spelt out, or {@code the file} for the outermost node. */
  @Override
  public String toString() {
    return isRoot() ? "the file" : text();
  }
}
