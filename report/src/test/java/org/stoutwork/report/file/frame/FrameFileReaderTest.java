package org.stoutwork.report.file.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stoutwork.analysis.model.Direction;
import org.stoutwork.analysis.model.EndCondition;
import org.stoutwork.analysis.model.Load;
import org.stoutwork.analysis.model.Member;
import org.stoutwork.analysis.model.Restraint;
import org.stoutwork.analysis.model.Vec3;
import org.stoutwork.report.file.field.DefaultTaken;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

class FrameFileReaderTest {

  private static FrameFile read(String text) throws UnreadableFile {
    return FrameFileReader.read(new SourceText("rack.json", text)).value();
  }

  static Stream<BrokenFrame> broken() {
    return Stream.concat(BrokenStructures.all().stream(), BrokenPanels.all().stream());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void a_broken_frame_is_refused_with_its_repair(BrokenFrame broken) {
    UnreadableFile thrown = assertThrows(UnreadableFile.class, () -> read(broken.text()));
    assertEquals(broken.message(), thrown.getMessage());
  }

  @Test
  void members_and_their_ends_are_read_as_written() throws UnreadableFile {
    FrameFile file = read(BrokenFrame.rightText());
    Member beam = file.model().members().get("beam");
    assertEquals("drying rack", file.title());
    assertEquals(Math.toRadians(15), beam.roll());
    assertEquals(new EndCondition.Elastic(4.2e7), beam.start().in(Direction.RY));
    assertEquals(EndCondition.FREE, beam.start().in(Direction.RZ));
    assertEquals(EndCondition.RIGID, beam.start().in(Direction.UX));
    assertEquals(new Vec3(-30, 0, 0), beam.end().offset());
    assertEquals(new Vec3(910, 35, 740), file.model().nodes().get("C"));
    assertEquals(1.83e6, file.model().sections().get("post").j());
    assertEquals(780, file.model().materials().get("ash").g());
    assertEquals(Map.of("B", 4.5), file.model().masses());
  }

  @Test
  void supports_are_read_as_written() throws UnreadableFile {
    Map<String, Map<Direction, Restraint>> supports =
        read(BrokenFrame.rightText()).model().supports();
    assertEquals(
        Map.of(
            Direction.UX,
            Restraint.FIXED,
            Direction.UY,
            Restraint.FIXED,
            Direction.UZ,
            Restraint.COMPRESSION_ONLY,
            Direction.RZ,
            Restraint.elastic(5e6)),
        supports.get("A"));
    assertEquals(Restraint.compressionOnly(900), supports.get("D").get(Direction.UZ));
    assertEquals(Restraint.prescribed(0.002), supports.get("D").get(Direction.RY));
  }

  @Test
  void loads_are_read_as_written() throws UnreadableFile {
    FrameFile file = read(BrokenFrame.rightText());
    assertEquals(
        List.of(
            Load.node("B", 120, -35, 0),
            new Load.OnMemberPoint("beam", 310, new Vec3(0, 0, -220), Vec3.ZERO, Load.Axes.LOCAL),
            new Load.OnMemberLine(
                "left", 100, 400, new Vec3(0.2, 0, 0), new Vec3(0.5, 0, 0), Load.Axes.GLOBAL),
            Load.selfWeight()),
        file.loads().loads());
    assertEquals(
        List.of(
            new PanelLoad.Pressure("shelf", 0.002),
            new PanelLoad.Patch("shelf", new PanelEntry.Point(300, 90), 60, 40, 450)),
        file.panelLoads());
    assertEquals(EnumSet.of(Analysis.STATIC, Analysis.SECOND_ORDER), file.analyses());
  }

  @Test
  void a_line_load_without_ends_covers_the_member() throws UnreadableFile {
    String text = BrokenFrame.rightText().replace("\"from\": 100, \"to\": 400, ", "");
    Load.OnMemberLine line = (Load.OnMemberLine) read(text).loads().loads().get(2);
    assertEquals(0, line.from());
    assertEquals(Double.POSITIVE_INFINITY, line.to());
  }

  @Test
  void panels_are_read_as_written() throws UnreadableFile {
    PanelEntry shelf = read(BrokenFrame.rightText()).panels().get("shelf");
    assertEquals(new PanelEntry.Constants(11000, 600, 700, 680, 60, 0.35, 620), shelf.constants());
    assertEquals(new PanelEntry.Mesh(24, 10), shelf.mesh().orElseThrow());
    assertEquals(
        List.of(
            new PanelSupport(
                new PanelSupport.Line(true, 45), new PanelSupport.Hold.Fixed(), false, false),
            new PanelSupport(
                new PanelSupport.Line(true, 910),
                new PanelSupport.Hold.Elastic(350),
                false,
                false)),
        shelf.supports());
    assertEquals(
        List.of(new PanelEntry.Point(455, 150), new PanelEntry.Point(455, 0)), shelf.report());
  }

  @Test
  void a_panel_that_nothing_holds_is_refused() {
    String text =
        BrokenFrame.rightText()
            .replaceFirst("\"supports\": \\[\\{\"line\".*\\],\n", "")
            .replaceFirst("\"ties\".*\n", "");
    UnreadableFile thrown = assertThrows(UnreadableFile.class, () -> read(text));
    assertEquals(
        "rack.json:17:13  panels leaves the panel `shelf` without supports and ties; something must"
            + " hold each panel.",
        thrown.getMessage());
  }

  @Test
  void yaml_says_the_same_as_json() throws UnreadableFile {
    String yaml =
        """
        title: a post   # in the yard
        nodes:
          foot: [0, 0, 0]
          head: [30, 0, 910]
        materials:
          oak: {E: 10500, G: 650}
        sections:
          post: {A: 4900, Iy: 2.0e6, Iz: 2.0e6, J: 3.4e6}
        members:
          post: {from: foot, to: head, section: post, material: oak}
        supports:
          foot: {ux: fixed, uy: fixed, uz: fixed, rx: fixed, ry: fixed, rz: fixed}
        loads:
          - type: node
            node: head
            force: [120, 0, -35]
        """;
    String json =
        """
        {"title": "a post",
        \t"nodes": {"foot": [0, 0, 0], "head": [30, 0, 910]},
        \t"materials": {"oak": {"E": 10500, "G": 650}},
        \t"sections": {"post": {"A": 4900, "Iy": 2.0e6, "Iz": 2.0e6, "J": 3.4e6}},
        \t"members": {"post": {"from": "foot", "to": "head", "section": "post",
        \t\t"material": "oak"}},
        \t"supports": {"foot": {"ux": "fixed", "uy": "fixed", "uz": "fixed", "rx": "fixed",
        \t\t"ry": "fixed", "rz": "fixed"}},
        \t"loads": [{"type": "node", "node": "head", "force": [120, 0, -35]}]}
        """;
    assertEquals(read(json), read(yaml));
  }

  @Test
  void every_default_taken_is_told() throws UnreadableFile {
    String text =
        BrokenFrame.rightText()
            .replace(", \"density_kg_m3\": 650", "")
            .replace("  \"analyses\": [\"static\", \"second-order\"],\n", "");
    List<DefaultTaken> defaults =
        FrameFileReader.read(new SourceText("rack.json", text)).defaults();
    assertEquals(
        List.of(
            new DefaultTaken(
                "materials.ash.density_kg_m3", "0", "a material without density weighs nothing"),
            new DefaultTaken(
                "analyses", "static", "a file that asks for nothing asks for the statics")),
        defaults);
  }

  @Test
  void what_is_written_is_read_back_as_the_same() throws UnreadableFile {
    FrameFile file = read(BrokenFrame.rightText());
    String written = FrameWriter.json(file);
    assertEquals(file, read(written));
    assertEquals(written, FrameWriter.json(read(written)));
    assertTrue(written.endsWith("}\n"));
  }

  @Test
  void ties_between_nodes_are_written_and_read_back() throws UnreadableFile {
    String tie =
        "{\"name\": \"strap\", \"lower\": \"B\", \"upper\": \"C\", \"at\": [455, 10, 740],"
            + " \"ux\": 2400, \"uz\": {\"compression-only\": 650}, \"ry\": \"rigid\"},";
    FrameFile file =
        read(BrokenFrame.rightText().replace("\"ties\": [", "\"ties\": [" + tie + " "));
    assertEquals("C", file.model().ties().get("strap").upper());
    assertEquals(3, file.model().ties().get("strap").links().size());
    assertEquals(file, read(FrameWriter.json(file)));
  }
}
