package org.stoutwork.report.file.tree;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;

/** Builds one tree from the tokens of one text. Used once. */
final class TreeBuilder {

  /** Ends the building; the reason has been noted. */
  private static final class Stop extends Exception {
    private static final long serialVersionUID = 1L;

    Stop() {
      super("stopped", null, false, false);
    }
  }

  private final SourceText source;
  private final Limits limits;
  private final FlowText flow;
  private final TokenSpots spots;
  private final NodeRefusals refusals;
  private final Faults faults;
  private YAMLParser parser;

  TreeBuilder(SourceText source, Limits limits, Faults faults) {
    this.source = source;
    this.limits = limits;
    this.faults = faults;
    this.flow = FlowText.of(source.text());
    this.spots = new TokenSpots(source.file(), flow);
    this.refusals = new NodeRefusals(faults);
  }

  Optional<Node> build() {
    try (YAMLParser open = open()) {
      parser = open;
      JsonToken first = next();
      if (first == null) {
        faults.add(
            Fault.ofFile(
                source.file(), "is empty", "a map of keys such as `key: value` is needed"));
        return Optional.empty();
      }
      Node root = node(first, KeyPath.ROOT, 1);
      if (next() != null) {
        faults.add(
            Fault.of(
                spot(),
                KeyPath.ROOT,
                "holds a second document here",
                "one document is needed: remove the line `---` and what follows",
                ""));
      }
      return Optional.of(root);
    } catch (Stop e) {
      return Optional.empty();
    } catch (IOException e) {
      faults.add(SyntaxWords.fault(e, source, spots));
      return Optional.empty();
    }
  }

  private YAMLParser open() throws IOException {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    return YAMLFactory.builder()
        .loaderOptions(options)
        .streamReadConstraints(
            StreamReadConstraints.builder().maxNestingDepth(limits.depth() + 2).build())
        .build()
        .createParser(new StringReader(flow.prepared()));
  }

  /** The next token. The library throws unchecked exceptions for some malformed escapes. */
  private JsonToken next() throws IOException, Stop {
    try {
      return parser.nextToken();
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      faults.add(SyntaxWords.unknown(source, spot()));
      throw new Stop();
    }
  }

  private Node node(JsonToken token, KeyPath path, int depth) throws IOException, Stop {
    Spot spot = spot();
    char first = firstCharacter();
    boolean refused = refusals.noteValue(first, spot, path);
    if (depth > limits.depth() && token.isStructStart()) {
      faults.add(tooDeep(spot, path));
      throw new Stop();
    }
    return switch (token) {
      case START_OBJECT -> map(spot, path, depth);
      case START_ARRAY -> list(spot, path, depth);
      default -> scalar(token, first, spot, path, refused);
    };
  }

  private MapNode map(Spot spot, KeyPath path, int depth) throws IOException, Stop {
    List<MapNode.Entry> entries = new ArrayList<>();
    Map<String, Spot> seen = new HashMap<>();
    while (next() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      Spot keySpot = spot();
      KeyPath keyPath = path.key(key);
      boolean refused = refusals.noteKey(key, firstCharacter(), keySpot, keyPath);
      Node value = node(next(), keyPath, depth + 1);
      Spot before = seen.putIfAbsent(key, keySpot);
      if (before != null) {
        faults.add(
            Fault.of(
                keySpot,
                keyPath,
                "is given twice, first at " + before.inWords(),
                "give it once",
                ""));
      } else if (!refused) {
        entries.add(new MapNode.Entry(key, keySpot, value));
      }
    }
    return new MapNode(spot, path, entries);
  }

  private ListNode list(Spot spot, KeyPath path, int depth) throws IOException, Stop {
    List<Node> items = new ArrayList<>();
    JsonToken token = next();
    while (token != JsonToken.END_ARRAY) {
      items.add(node(token, path.index(items.size()), depth + 1));
      token = next();
    }
    return new ListNode(spot, path, items);
  }

  private ScalarNode scalar(JsonToken token, char first, Spot spot, KeyPath path, boolean refused)
      throws IOException {
    String text = parser.getText();
    ScalarNode.Style style = refused ? ScalarNode.Style.REFUSED : style(token, first, text);
    if (!refused && refusals.noteText(text, spot, path)) {
      style = ScalarNode.Style.REFUSED;
    }
    return new ScalarNode(spot, path, style, text);
  }

  private static ScalarNode.Style style(JsonToken token, char first, String text) {
    return switch (token) {
      case VALUE_NULL -> ScalarNode.Style.EMPTY;
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> ScalarNode.Style.NUMBER;
      case VALUE_TRUE, VALUE_FALSE -> ScalarNode.Style.TRUTH;
      default -> {
        if ("\"'|>".indexOf(first) >= 0) {
          yield ScalarNode.Style.QUOTED;
        }
        yield text.isEmpty() ? ScalarNode.Style.EMPTY : ScalarNode.Style.WORD;
      }
    };
  }

  private Spot spot() {
    JsonLocation at = parser.currentTokenLocation();
    return spots.at(at.getLineNr(), at.getColumnNr());
  }

  private char firstCharacter() {
    return spots.characterAt(parser.currentTokenLocation().getCharOffset());
  }

  private Fault tooDeep(Spot spot, KeyPath path) {
    String text = path.text();
    String shown = text.length() > 60 ? text.substring(0, 60) + "…" : text;
    return new Fault(
        spot,
        shown,
        "is nested too deeply",
        "at most " + limits.depth() + " levels of maps and lists are read",
        "",
        "");
  }
}
