package org.stoutwork.report.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole messages, word by word: they are all that a person has to work with. */
class MalformedTextTest {

  @ParameterizedTest(name = "{0}")
  @MethodSource("malformedTexts")
  void a_malformed_text_is_explained_in_plain_words(String what, String text, String message) {
    UnreadableFile thrown =
        assertThrows(
            UnreadableFile.class,
            () -> TreeReader.read(new SourceText("bench.yaml", text), Limits.STANDARD),
            what);
    assertEquals(message, thrown.getMessage());
  }

  static List<Arguments> malformedTexts() {
    return List.of(
        arguments(
            "an empty file",
            "",
            "bench.yaml  the file is empty; a map of keys such as `key: value` is needed."),
        arguments(
            "a comment alone",
            "# nothing\n",
            "bench.yaml  the file is empty; a map of keys such as `key: value` is needed."),
        arguments(
            "two colons",
            "top: length: 1500 mm\n",
"""
bench.yaml:1:12  a colon cannot stand here; write one `key: value` a line, the keys of one map equally far in, and text that holds a colon in quotes; the line above may lack its colon.
    1 | top: length: 1500 mm
      |            ^"""),
        arguments(
            "a line too far out",
"""
top:
    length: 1500 mm
  width: 600 mm
""",
"""
bench.yaml:3:3  this line does not belong to what stands above it; entries of one map or list must begin in the same column.
    3 |   width: 600 mm
      |   ^"""),
        arguments(
            "an open list",
"""
legs: [70, 70
feet: 3
""",
"""
bench.yaml:2:5  a comma or a closing bracket is missing before here; separate items with commas and close the list with ].
    2 | feet: 3
      |     ^"""),
        arguments(
            "open quotes",
            "name: \"by the window\n",
"""
bench.yaml:1:7  the quotes opened here are never closed; close them with the same sign.
    1 | name: "by the window
      |       ^"""),
        arguments(
            "an at sign",
            "name: @home\n",
"""
bench.yaml:1:7  a value cannot begin with this character; put the value in quotes.
    1 | name: @home
      |       ^"""),
        arguments(
            "a missing colon",
"""
top
legs: 4
""",
"""
bench.yaml:2:5  a colon cannot stand here; write one `key: value` a line, the keys of one map equally far in, and text that holds a colon in quotes; the line above may lack its colon.
    2 | legs: 4
      |     ^"""),
        arguments(
            "a missing comma in a map",
            "legs: {width: 70 depth: 60}\n",
"""
bench.yaml:1:23  a comma or a closing brace is missing before here; separate entries with commas and close the map with }.
    1 | legs: {width: 70 depth: 60}
      |                       ^"""),
        arguments(
            "a missing comma in JSON",
"""
{"width": 70
"depth": 60}""",
"""
bench.yaml:2:8  a comma or a closing brace is missing before here; separate entries with commas and close the map with }.
    2 | "depth": 60}
      |        ^"""),
        arguments(
            "an escape without meaning",
            "name: \"C:\\quick\"\n",
"""
bench.yaml:1:11  the sign behind the backslash has no meaning in double quotes; write \\\\ for a backslash, or use single quotes.
    1 | name: "C:\\quick"
      |           ^"""),
        arguments(
            "an incomplete escape",
            "name: \"\\x1\"\n",
"""
bench.yaml:1:10  the escape here is incomplete; write all its hexadecimal digits, as in \\u00e9.
    1 | name: "\\x1"
      |          ^"""),
        arguments(
            "a tab",
"""
top:
\tlength: 1500 mm
""",
"""
bench.yaml:2:1  there is a tab here; blanks are needed: replace the tab by blanks.
    2 | →length: 1500 mm
      | ^"""),
        arguments(
            "a stray brace",
            "legs: }\n",
"""
bench.yaml:1:7  a value is missing here, or this sign stands in its place; write a value, in quotes if it holds signs.
    1 | legs: }
      |       ^"""),
        arguments(
            "a key among list items",
"""
- top
legs: 4
""",
"""
bench.yaml:2:1  this line does not belong to what stands above it; entries of one map or list must begin in the same column.
    2 | legs: 4
      | ^"""),
        arguments(
            "a list item among keys",
"""
legs: 4
- top
""",
"""
bench.yaml:2:1  a list item stands among the keys of a map here; indent the list below its key, or remove the dash.
    2 | - top
      | ^"""),
        arguments(
            "anchor, alias and merge key",
"""
a: &x {w: 1}
b: *x
c:
  <<: 3
""",
"""
bench.yaml:1:4  a carries an anchor (&); write values out; anchors are not read.
bench.yaml:2:4  b is an alias (*); write the value out; aliases are not read.
bench.yaml:4:3  c."<<" is a merge key; write the keys out; merge keys are not read."""),
        arguments(
            "a tag",
            "width: !!int 70\n",
            "bench.yaml:1:8  width carries a tag (!); plain values are needed; tags are not read."),
        arguments(
            "an unknown tag",
            "width: !mm!x 70\n",
"""
bench.yaml:1:8  there is a tag (!) here; plain values are needed; tags are not read.
    1 | width: !mm!x 70
      |        ^"""),
        arguments(
            "a list as key",
"""
? [a, b]
: 1
""",
"""
bench.yaml:1:4  a map or a list stands in the place of a key here; a plain word as key is needed.
    1 | ? [a, b]
      |    ^"""),
        arguments(
            "two documents",
"""
a: 1
---
b: 2
""",
            "bench.yaml:3:1  the file holds a second document here; one document is needed: remove the line `---` and what follows."),
        arguments(
            "a key twice",
"""
width: 70
depth: 60
width: 80
""",
            "bench.yaml:3:1  width is given twice, first at line 1, column 1; give it once."),
        arguments(
            "a control character by escape",
            "name: \"ding\\u0007\"\n",
            "bench.yaml:1:7  name is \"ding\\u0007\"; text without control characters and half characters is needed."),
        arguments(
            "half a character",
            "name: \"\\ud83d\"\n",
            "bench.yaml:1:7  name is \"\\ud83d\"; text without control characters and half characters is needed."),
        arguments(
            "a control character",
            "width: 70\u0001\n",
"""
bench.yaml:1:10  the character U+0001 is no part of a text; remove it.
    1 | width: 70·
      |          ^"""),
        arguments(
            "the wrong bracket",
            "legs: [70, 60}\n",
"""
bench.yaml:1:14  a comma or a closing bracket is missing before here; separate items with commas and close the list with ].
    1 | legs: [70, 60}
      |              ^"""),
        arguments(
            "a list behind a key",
            "legs: - 70\n",
"""
bench.yaml:1:7  a list cannot begin here; write each item on a line of its own below the key.
    1 | legs: - 70
      |       ^"""),
        arguments(
            "text behind quotes",
            "name: \"low\" bench\n",
"""
bench.yaml:1:13  there is something behind the end of a value here; put the whole value between one pair of quotes.
    1 | name: "low" bench
      |             ^"""),
        arguments(
            "a document end",
"""
a: 1
...
b: 2
""",
"""
bench.yaml:3:1  the content is cut in two before here; remove lines above that begin with % or with `...`.
    3 | b: 2
      | ^"""),
        arguments(
            "words behind a bar",
"""
note: |low
 text
""",
"""
bench.yaml:1:8  this sign cannot follow | or > here; begin the lines of the text below, indented.
    1 | note: |low
      |        ^"""),
        arguments(
            "nesting without end",
            "[".repeat(5000),
            "bench.yaml:1:33  [0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0][0]… is nested too deeply; at most 32 levels of maps and lists are read."),
        arguments(
            "an escape of no character",
            "name: \"\\UFFFFFFFF\"\n",
"""
bench.yaml:1:5  the text cannot be understood from here on; correct YAML is needed.
    1 | name: "\\UFFFFFFFF"
      |     ^"""),
        arguments(
            "a directive",
"""
%FOO
a: 1
""",
"""
bench.yaml:2:1  the content is cut in two before here; remove lines above that begin with % or with `...`.
    2 | a: 1
      | ^"""),
        arguments(
            "no key before a colon",
            ": 1\n",
"""
bench.yaml:1:1  this line does not belong to what stands above it; entries of one map or list must begin in the same column.
    1 | : 1
      | ^"""),
        arguments(
            "a slash escape before a mistake",
            "{\"s\": \"N\\/mm\", \"a\": 1, \"a\": 2}",
            "bench.yaml:1:24  a is given twice, first at line 1, column 16; give it once."),
        arguments(
            "a long line",
            "name: " + "long ".repeat(60) + ": x\n",
"""
bench.yaml:1:307  a colon cannot stand here; write one `key: value` a line, the keys of one map equally far in, and text that holds a colon in quotes; the line above may lack its colon.
    1 | …long long long long long long long long long long : x
      |                                                    ^"""));
  }
}
