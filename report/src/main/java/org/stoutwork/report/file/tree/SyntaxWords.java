package org.stoutwork.report.file.tree;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.util.List;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says in plain words why a text could not be taken apart. */
final class SyntaxWords {

  private record Rule(String problem, boolean atContext, String given, String allowed) {}

  private static final List<Rule> RULES =
      List.of(
          new Rule(
              "\\t(TAB)",
              false,
              "there is a tab here",
              "blanks are needed: replace the tab by blanks"),
          new Rule(
              "that cannot start any token",
              false,
              "a value cannot begin with this character",
              "put the value in quotes"),
          new Rule(
              "mapping values are not allowed here",
              false,
              "a colon cannot stand here",
              "write one `key: value` a line, the keys of one map equally far in, and text that"
                  + " holds a colon in quotes; the line above may lack its colon"),
          new Rule(
              "could not find expected ':'",
              true,
              "the key here is not followed by a colon",
              "write `key: value` with a blank behind the colon"),
          new Rule(
              "expected ',' or '}'",
              false,
              "a comma or a closing brace is missing before here",
              "separate entries with commas and close the map with }"),
          new Rule(
              "expected ',' or ']'",
              false,
              "a comma or a closing bracket is missing before here",
              "separate items with commas and close the list with ]"),
          new Rule(
              "expected <block end>, but found '-'",
              false,
              "a list item stands among the keys of a map here",
              "indent the list below its key, or remove the dash"),
          new Rule(
              "expected <block end>, but found '<scalar>'",
              false,
              "there is something behind the end of a value here",
              "put the whole value between one pair of quotes"),
          new Rule(
              "expected <block end>",
              false,
              "this line does not belong to what stands above it",
              "entries of one map or list must begin in the same column"),
          new Rule(
              "found unexpected end of stream",
              true,
              "the quotes opened here are never closed",
              "close them with the same sign"),
          new Rule(
              "found unknown escape character",
              false,
              "the sign behind the backslash has no meaning in double quotes",
              "write \\\\ for a backslash, or use single quotes"),
          new Rule(
              "hexadecimal numbers",
              false,
              "the escape here is incomplete",
              "write all its hexadecimal digits, as in \\u00e9"),
          new Rule(
              "expected the node content",
              false,
              "a value is missing here, or this sign stands in its place",
              "write a value, in quotes if it holds signs"),
          new Rule(
              "undefined tag handle",
              false,
              "there is a tag (!) here",
              "plain values are needed; tags are not read"),
          new Rule(
              "sequence entries are not allowed here",
              false,
              "a list cannot begin here",
              "write each item on a line of its own below the key"),
          new Rule(
              "Expected a field name",
              false,
              "a map or a list stands in the place of a key here",
              "a plain word as key is needed"),
          new Rule(
              "expected '<document start>'",
              false,
              "the content is cut in two before here",
              "remove lines above that begin with % or with `...`"),
          new Rule(
              "chomping or indentation indicators",
              false,
              "this sign cannot follow | or > here",
              "begin the lines of the text below, indented"));

  private SyntaxWords() {}

  /**
   * Turns the YAML reader's exception into a fault.
   *
   * @param problem the exception
   * @param source the text, for quoting
   * @param spots turns positions into spots
   * @return the fault
   */
  static Fault fault(IOException problem, SourceText source, TokenSpots spots) {
    if (problem.getCause() instanceof MarkedYAMLException marked) {
      Rule rule = rule(marked.getProblem());
      Mark mark = marked.getProblemMark();
      if (mark == null || (rule.atContext() && marked.getContextMark() != null)) {
        mark = marked.getContextMark();
      }
      return fault(rule, source, spots.at(mark.getLine() + 1, mark.getColumn() + 1));
    }
    Spot spot = Spot.wholeFile(source.file());
    if (problem instanceof JsonProcessingException located && located.getLocation() != null) {
      spot = spots.at(located.getLocation().getLineNr(), located.getLocation().getColumnNr());
    }
    return fault(rule(String.valueOf(problem.getMessage())), source, spot);
  }

  /**
   * A fault for what no rule knows.
   *
   * @param source the text, for quoting
   * @param spot the last spot that was understood
   * @return the fault
   */
  static Fault unknown(SourceText source, Spot spot) {
    return fault(rule(""), source, spot);
  }

  private static Fault fault(Rule rule, SourceText source, Spot spot) {
    return new Fault(spot, "", rule.given(), rule.allowed(), "", source.excerpt(spot));
  }

  private static Rule rule(String problem) {
    return RULES.stream()
        .filter(rule -> problem.contains(rule.problem()))
        .findFirst()
        .orElse(
            new Rule(
                "", false, "the text cannot be understood from here on", "correct YAML is needed"));
  }
}
