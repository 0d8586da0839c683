package org.stoutwork;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a room says of itself in its package-info: one sentence that begins with "Uses" names all
 * rooms it uses, and the rest says what is known, what is not, and where to start.
 *
 * @param uses the sentence of that name
 * @param rest all other sentences
 */
record RoomWords(String uses, String rest) {

  private static final Path SOURCES = Path.of("src", "main", "java", "org", "stoutwork");
  private static final Pattern USES = Pattern.compile("\\bUses (?:.*?)\\.(?=\\s|$)");
  private static final Pattern NAME = Pattern.compile("\\{@code ([a-z.]+)\\}");
  private static final Pattern START = Pattern.compile("(?i)\\b(start|front door).*?\\{@link ");
  private static final Pattern REFUSAL =
      Pattern.compile("(?i)\\b(no|not|none|never|nothing|neither|nor|only)\\b");

  /** Reads the words of a room; its package-info must be there and name what it uses once. */
  static RoomWords of(String room) {
    Path file = SOURCES.resolve(room.replace('.', '/')).resolve("package-info.java");
    String text = read(file).replaceAll("(?m)^ \\*/?", " ").replaceAll("\\s+", " ");
    text = text.substring(0, text.indexOf(" package org.stoutwork"));
    Matcher uses = USES.matcher(text);
    if (!uses.find()) {
      throw new AssertionError(file + " has no sentence that begins with \"Uses\"");
    }
    String sentence = uses.group();
    String rest = text.replace(sentence, "");
    if (USES.matcher(rest).find()) {
      throw new AssertionError(file + " says twice what it uses");
    }
    return new RoomWords(sentence, rest);
  }

  Set<String> used() {
    Set<String> out = new TreeSet<>();
    Matcher name = NAME.matcher(uses);
    while (name.find()) {
      out.add(name.group(1));
    }
    return out;
  }

  boolean saysWhereToStart() {
    return START.matcher(rest).find();
  }

  boolean saysWhatItRefuses() {
    return REFUSAL.matcher(rest).find();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(file + " cannot be read", e);
    }
  }
}
