package org.stoutwork.report.file.tree;

/** Notes what YAML allows and this reader does not: anchors, aliases, tags, merge keys. */
final class NodeRefusals {

  private final Faults faults;
  private Spot last;

  NodeRefusals(Faults faults) {
    this.faults = faults;
  }

  /**
   * Looks at the beginning of a value.
   *
   * @param first its first character in the file
   * @param spot where it begins
   * @param path where it stands
   * @return whether the value as such cannot be used
   */
  boolean noteValue(char first, Spot spot, KeyPath path) {
    switch (first) {
      case '&' ->
          note(spot, path, "carries an anchor (&)", "write values out; anchors are not read");
      case '!' ->
          note(spot, path, "carries a tag (!)", "plain values are needed; tags are not read");
      case '*' -> {
        note(spot, path, "is an alias (*)", "write the value out; aliases are not read");
        return true;
      }
      default -> {
        return false;
      }
    }
    return false;
  }

  /** The same for a key; a merge key cannot be used at all. */
  boolean noteKey(String key, char first, Spot spot, KeyPath path) {
    if (key.equals("<<")) {
      note(spot, path, "is a merge key", "write the keys out; merge keys are not read");
      return true;
    }
    boolean broken = noteText(key, spot, path);
    return noteValue(first, spot, path) || broken;
  }

  /** Notes half characters and control characters that came in through escapes. */
  boolean noteText(String text, Spot spot, KeyPath path) {
    boolean broken = text.codePoints().anyMatch(NodeRefusals::isBroken);
    if (broken) {
      note(
          spot,
          path,
          "is " + Quote.of(text),
          "text without control characters and half characters is needed");
    }
    return broken;
  }

  private static boolean isBroken(int c) {
    int type = Character.getType(c);
    boolean control = type == Character.CONTROL && c != '\n' && c != '\t' && c != '\r';
    return control || type == Character.SURROGATE;
  }

  /** A map that begins with a refused key begins at the same spot: told once. */
  private void note(Spot spot, KeyPath path, String given, String allowed) {
    if (!spot.equals(last)) {
      faults.add(Fault.of(spot, path, given, allowed, ""));
      last = spot;
    }
  }
}
