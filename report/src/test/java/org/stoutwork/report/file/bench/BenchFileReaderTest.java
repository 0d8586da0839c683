package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stoutwork.bench.Bench;
import org.stoutwork.bench.DefaultTaken;
import org.stoutwork.bench.Grain;
import org.stoutwork.bench.LayerHold;
import org.stoutwork.bench.Stretcher;
import org.stoutwork.bench.StretcherLine;
import org.stoutwork.bench.Weight;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.HalfLap;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;
import org.stoutwork.source.Mark;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.grade.GrowthDefects;

class BenchFileReaderTest {

  private static BenchFile read(String text) throws UnreadableFile {
    return BenchFileReader.read(new SourceText("bench.yaml", text), ExampleFilesTest.WOODS);
  }

  private static Bench example(String name) throws UnreadableFile {
    Path file = ExampleFilesTest.FOLDER.resolve(name);
    return BenchFileReader.read(file, ExampleFilesTest.WOODS).bench();
  }

  @Test
  void every_value_of_a_file_arrives_where_it_belongs() throws UnreadableFile {
    Bench bench = example("long-spar-bench.yaml");
    assertEquals("long spar bench", bench.name());
    assertEquals(3200, bench.top().length().mm());
    assertEquals(320, bench.top().width().mm());
    assertEquals(70, bench.top().thicknessMm());
    assertEquals(450, bench.endFrames().get(0).at().mm());
    assertEquals(2750, bench.endFrames().get(1).at().mm());
    assertEquals(90, bench.endFrames().get(1).leg().along().mm());
    assertEquals(60, bench.endFrames().get(1).leg().across().mm());
    assertEquals(640, bench.endFrames().get(0).foot().orElseThrow().length().mm());
    assertTrue(bench.endFrames().get(0).bottomRail().isEmpty());
    assertEquals(3, bench.stretchers().size());
    Stretcher spine = bench.stretchers().get(2);
    assertEquals(StretcherLine.MIDDLE, spine.line());
    assertInstanceOf(LayerHold.Glued.class, spine.hold());
    assertEquals(695, spine.centreAt().mm());
    assertEquals(25e6, spine.joint().stated().orElseThrow().low(), 1e-6);
    assertEquals(250, bench.actions().get(0).force().newtons());
    assertEquals(11, bench.air().range().low());
  }

  @Test
  void both_lines_make_two_stretchers_named_after_their_line() throws UnreadableFile {
    List<Stretcher> stretchers = example("class-bench.yaml").stretchers();
    assertEquals(
        List.of(
            "front upper long rail",
            "back upper long rail",
            "front lower long rail",
            "back lower long rail"),
        stretchers.stream().map(Stretcher::name).toList());
    assertEquals(652, stretchers.get(1).centreAt().mm());
    assertInstanceOf(BoltedTenon.class, stretchers.get(3).joint().joint());
  }

  @Test
  void rates_of_a_machine_are_read_from_its_plate() throws UnreadableFile {
    Weight.Machine planer = (Weight.Machine) example("planer-bench.yaml").weights().get(0);
    assertEquals(90, planer.mass().kg());
    assertEquals(8000 / 60.0, planer.ratesHz().get(0), 1e-12);
    assertEquals(50, planer.ratesHz().get(1), 1e-12);
  }

  @Test
  void bare_numbers_are_in_the_unit_of_the_file() throws UnreadableFile {
    Bench bench = read(BrokenBench.LISTED).bench();
    assertEquals(33.5 * 25.4, bench.height().mm(), 1e-9);
    assertEquals(26.25 * 25.4, bench.top().width().mm(), 1e-9);
    assertEquals(18, bench.top().layers().get(0).thickness().mm());
    assertEquals(Grain.ACROSS, bench.top().layers().get(0).grain());
    assertEquals("ash-white", bench.top().layers().get(1).wood());
    LayerHold.Screwed hold = (LayerHold.Screwed) bench.top().hold();
    assertEquals(8 * 25.4, hold.spacing().mm(), 1e-9);
    assertEquals(3, hold.rows());
  }

  @Test
  void millimetres_are_a_default_that_is_listed() throws UnreadableFile {
    Bench bare = read("wood: C24\nheight: 812\n").bench();
    assertEquals(812, bare.height().mm());
    DefaultTaken first = bare.defaults().get(0);
    assertEquals("units", first.key());
    assertEquals("mm", first.value());
    Bench said = read("wood: C24\nunits: mm\nheight: 812\n").bench();
    assertFalse(said.defaults().stream().anyMatch(d -> d.key().equals("units")));
  }

  @Test
  void end_frames_differ_where_the_list_says_so() throws UnreadableFile {
    Bench bench = read(BrokenBench.LISTED).bench();
    assertEquals(3, bench.endFrames().size());
    assertEquals(4 * 25.4, bench.endFrames().get(0).leg().along().mm(), 1e-9);
    assertEquals(3.5 * 25.4, bench.endFrames().get(2).leg().along().mm(), 1e-9);
    assertEquals(3 * 25.4, bench.endFrames().get(2).leg().across().mm(), 1e-9);
    MortiseAndTenon joint = (MortiseAndTenon) bench.endFrames().get(1).topRail().joint().joint();
    assertTrue(((Fit.Pegged) joint.fit()).drawbored());
    assertInstanceOf(HalfLap.class, bench.stretchers().get(0).joint().joint());
  }

  @Test
  void defaults_are_listed_by_the_keys_of_the_file() throws UnreadableFile {
    List<String> alike =
        read(BrokenBench.SOUND).bench().defaults().stream().map(DefaultTaken::key).toList();
    assertTrue(alike.contains("endFrames.topRail.joint.tenonHeight"), alike.toString());
    assertTrue(alike.contains("stretchers[0].joint.kind"), alike.toString());
    assertFalse(alike.contains("stretchers[1].joint.kind"), alike.toString());
    List<String> listed = keys(BrokenBench.LISTED);
    assertTrue(listed.contains("everyEndFrame.legs.frontInset"), listed.toString());
  }

  @Test
  void a_default_stands_where_its_neighbours_stand() throws UnreadableFile {
    String start = "bench: x\nwood: ash, European\nheight: 870\n";
    List<String> each =
        keys(
            start
                + """
                everyEndFrame: {legs: {along: 88}}
                endFrames:
                  - at: 250
                    topRail: {depth: 104, joint: haunched tenon}
                    bottomRail: {thickness: 42, joint: {kind: mortise and tenon, tenonLength: 41}}
                  - {at: 1410, topRail: {depth: 104}}
                """);
    assertTrue(each.contains("everyEndFrame.legs.across"), each.toString());
    assertTrue(each.contains("endFrames[0].topRail.thickness"), each.toString());
    assertTrue(each.contains("endFrames[1].topRail.thickness"), each.toString());
    assertTrue(each.contains("endFrames[0].topRail.joint.haunchHeight"), each.toString());
    assertTrue(each.contains("endFrames[1].topRail.joint.kind"), each.toString());
    assertFalse(each.contains("endFrames[0].topRail.joint.kind"), each.toString());
    assertTrue(each.contains("endFrames[0].bottomRail.joint.tenons"), each.toString());
    // Nothing is said anywhere of the other lower rail, and not all frames take these.
    assertTrue(each.contains("endFrames[1].bottomRail.thickness"), each.toString());
    assertTrue(each.contains("stretchers[0].depth"), each.toString());
    assertFalse(each.contains("stretchers[1].depth"), each.toString());
    List<String> every = keys(start + "everyEndFrame: {topRail: {depth: 104}}\n");
    assertTrue(every.contains("everyEndFrame.topRail.thickness"), every.toString());
    assertTrue(every.contains("everyEndFrame.bottomRail.depth"), every.toString());
    assertTrue(every.contains("endFrames[i].at"), every.toString());
    List<String> none = keys(start);
    assertTrue(none.contains("endFrames.topRail.thickness"), none.toString());
    assertTrue(none.contains("endFrames.at"), none.toString());
  }

  private static List<String> keys(String text) throws UnreadableFile {
    return read(text).bench().defaults().stream().map(DefaultTaken::key).toList();
  }

  @Test
  void own_woods_carry_their_source_and_mark() throws UnreadableFile {
    BenchFile file = read(BrokenBench.LISTED);
    Species elm = (Species) file.bench().timbers().get("shop-elm").wood();
    Property modulus = elm.clear().dry(ClearProperty.MODULUS).orElseThrow();
    assertEquals(9300, modulus.value(), 1e-9);
    assertEquals(Mark.YOURS, modulus.mark());
    assertEquals("own bending tests", modulus.source().document());
    Species ash = (Species) file.bench().timbers().get("ash-white").wood();
    assertEquals(91, ash.clear().dry(ClearProperty.BENDING).orElseThrow().value());
    assertEquals(Mark.PUBLISHED, ash.clear().dry(ClearProperty.MODULUS).orElseThrow().mark());
    assertEquals(elm, file.woods().byKey("shop-elm").orElseThrow());
  }

  @Test
  void words_are_read_without_regard_to_case_hyphens_and_blanks() throws UnreadableFile {
    Bench bench =
        read("wood: C24\nduty: Heavy-Planing\ngrowth: A few small-knots\nair: {climate: Boat shed}\n")
            .bench();
    assertEquals("heavy planing", bench.duty().words());
    assertEquals("boat-shed", bench.air().climate().key());
    assertEquals(GrowthDefects.FEW_SMALL_KNOTS, bench.timbers().get("C24").growth().defects());
  }

  @Test
  void json_says_the_same_as_yaml() throws Exception {
    Object tree = new YAMLMapper().readTree(BrokenBench.SOUND);
    String json = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(tree);
    assertTrue(json.startsWith("{"));
    assertEquals(read(BrokenBench.SOUND).bench(), read(json).bench());
  }
}
