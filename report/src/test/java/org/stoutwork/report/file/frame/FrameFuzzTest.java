package org.stoutwork.report.file.frame;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.stoutwork.report.file.tree.Fault;
import org.stoutwork.report.file.tree.Limits;
import org.stoutwork.report.file.tree.SourceReader;
import org.stoutwork.report.file.tree.UnreadableFile;

/** Whatever a file holds, the outcome is a frame or a list of faults, and nothing else. */
class FrameFuzzTest {

  /**
   * A change of a text.
   *
   * @param at where, as a part of the length
   * @param removed how many bytes go
   * @param added what comes in their place
   */
  private record Change(double at, int removed, String added) {
    byte[] of(byte[] text) {
      int from = (int) (at * text.length);
      int to = Math.min(text.length, from + removed);
      byte[] middle = added.getBytes(StandardCharsets.UTF_8);
      byte[] changed = new byte[from + middle.length + text.length - to];
      System.arraycopy(text, 0, changed, 0, from);
      System.arraycopy(middle, 0, changed, from, middle.length);
      System.arraycopy(text, to, changed, from + middle.length, text.length - to);
      return changed;
    }
  }

  private static void readEitherWay(byte[] content) {
    try {
      FrameFileReader.read(SourceReader.decode("rack.json", content, Limits.STANDARD));
    } catch (UnreadableFile e) {
      assertFalse(e.faults().isEmpty());
      for (Fault fault : e.faults()) {
        assertTrue(fault.sentence().lines().count() == 1, fault.toString());
        assertTrue(fault.spot().line() >= 0 && fault.spot().column() >= 0, fault.toString());
        assertFalse(fault.given().isBlank() || fault.allowed().isBlank());
      }
    }
  }

  @Property(tries = 2000)
  void random_bytes_give_a_frame_or_faults(@ForAll @Size(max = 300) byte[] content) {
    readEitherWay(content);
  }

  @Property(tries = 2000)
  void random_signs_of_yaml_give_a_frame_or_faults(@ForAll("yamlSigns") String text) {
    readEitherWay(text.getBytes(StandardCharsets.UTF_8));
  }

  @Property(tries = 3000)
  void a_right_file_with_changes_gives_a_frame_or_faults(@ForAll("changes") List<Change> changes) {
    byte[] text = BrokenFrame.rightText().getBytes(StandardCharsets.UTF_8);
    for (Change change : changes) {
      text = change.of(text);
    }
    readEitherWay(text);
  }

  @Property(tries = 1000)
  void a_written_file_with_changes_gives_a_frame_or_faults(
      @ForAll("changes") List<Change> changes) {
    byte[] text =
        """
        nodes:
          foot: [0, 0, 0]
          head: [30, 0, 910]
        materials: {oak: {E: 10500, G: 650, density_kg_m3: 700}}
        sections:
          post: {A: 4900, Iy: 2.0e6, Iz: 2.0e6, J: 3.4e6}   # 70 by 70
        members:
          post:
            from: foot
            to: head
            section: post
            material: oak
            start: {ry: "rigid", rz: 4.2e7}
        supports:
          foot: {ux: fixed, uy: fixed, uz: {compression-only: 900}, rz: {prescribed: .01}}
        loads:
          - {type: node, node: head, force: [120, 0, -35]}
          - type: self-weight
            direction: [0, 0, -1]
        """
            .getBytes(StandardCharsets.UTF_8);
    for (Change change : changes) {
      text = change.of(text);
    }
    readEitherWay(text);
  }

  @Provide
  Arbitrary<String> yamlSigns() {
    return Arbitraries.of(
            "a", "nodes", ": ", ":", "\n", "\n  ", "- ", "{", "}", "[", "]", ", ", "\"", "'", "&x ",
            "*x", "!t ", "|", ">", "#", " ", "\t", "%", "@", "`", "? ", "---\n", "...\n", "1",
            "1e999", "null", "~", "<<", "\\", "\\u00", "\u0085", "\u2028", "😀", "\uFEFF", "\r")
        .list()
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  @Provide
  Arbitrary<List<Change>> changes() {
    Arbitrary<String> added =
        Arbitraries.oneOf(
            Arbitraries.of(
                "",
                "{",
                "}",
                "[",
                "]",
                ",",
                ":",
                "\"",
                "'",
                "\n",
                "\t",
                "-",
                "&a ",
                "*a",
                "!!str ",
                "null",
                "1e999",
                "-1",
                "0",
                ".nan",
                "{}",
                "[]",
                "\\",
                "#",
                "é",
                "\u0001",
                "00",
                "<<: 1, ",
                "1e-320",
                "fixed",
                "999999999999999999999"),
            Arbitraries.strings().ofMaxLength(5));
    return Combinators.combine(
            Arbitraries.doubles().between(0, true, 1, false).ofScale(6),
            Arbitraries.integers().between(0, 12),
            added)
        .as(Change::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }
}
