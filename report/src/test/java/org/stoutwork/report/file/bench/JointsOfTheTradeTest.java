package org.stoutwork.report.file.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stoutwork.bench.BenchJoint;
import org.stoutwork.bench.sketch.JointKind;
import org.stoutwork.joint.BoltedTenon;
import org.stoutwork.joint.Fit;
import org.stoutwork.joint.LooseWedgeTenon;
import org.stoutwork.joint.MortiseAndTenon;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

/** Every joint of the trade in a few keys, the rest by proportion. */
class JointsOfTheTradeTest {

  private static final String JOINT =
      "    joint:\n      kind: mortise and tenon\n      tenonThickness: 16\n      tenonLength: 48\n";

  /** The rail is 110 × 45, the leg 75 deep behind the shoulder and 90 thick. */
  private static BenchJoint joint(String words) {
    String file = BrokenBench.SOUND.replace(JOINT, "    joint: " + words + "\n");
    assertTrue(!file.equals(BrokenBench.SOUND));
    try {
      BenchFile read =
          BenchFileReader.read(new SourceText("bench.yaml", file), ExampleFilesTest.WOODS);
      return read.bench().endFrames().get(0).topRail().joint();
    } catch (UnreadableFile e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          mortise and tenon                             | glued mortise and tenon
          mortise and tenon, dry                        | dry mortise and tenon
          through tenon                                 | glued through mortise and tenon
          through tenon, wedged                         | dry wedged through mortise and tenon
          mortise and tenon, wedged and glued           | glued wedged through mortise and tenon
          {hold: wedged, wedges: 1}                     | dry wedged through mortise and tenon
          mortise and tenon, fox-wedged                 | dry fox-wedged mortise and tenon
          mortise and tenon, fox-wedged and glued       | glued fox-wedged mortise and tenon
          haunched tenon                                | glued haunched mortise and tenon
          haunched tenon, drawbored                     | dry drawbored haunched mortise and tenon
          stub tenon                                    | dry mortise and tenon
          twin tenon                                    | glued twin mortise and tenon
          {kind: twin tenon, through: yes, hold: wedged}| dry wedged through twin mortise and tenon
          mortise and tenon, pegged                     | dry pegged mortise and tenon
          mortise and tenon, pegged and glued           | glued pegged mortise and tenon
          mortise and tenon, drawbored                  | dry drawbored mortise and tenon
          mortise and tenon, drawbored and glued        | glued drawbored mortise and tenon
          bridle                                        | glued open bridle
          corner bridle, pegged                         | dry corner bridle
          {kind: bridle, tenons: 2}                     | glued double open bridle
          loose-wedge tenon                             | loose-wedge tenon
          half-lap                                      | glued half-lap
          dowelled butt                                 | butt joint with 2 dowels
          housing                                       | glued housing
          half-lap, screwed                             | screwed half-lap
          half-lap, screwed and glued                   | glued and screwed half-lap
          {kind: half-lap, screws: 3}                   | screwed half-lap
          {kind: housing, hold: screwed, screws: 1}     | screwed housing
          screwed butt                                  | screwed butt joint
          {kind: screwed butt, screw: coach screw}      | screwed butt joint
          stub tenon and bed bolt                       | stub tenon with a bed bolt
          {kind: stub tenon and bed bolt, bolts: 2}     | stub tenon with two bed bolts
          """)
  void every_joint_is_said_in_a_few_words(String words, String title) {
    assertEquals(title, joint(words).joint().title());
  }

  /** Nobody is refused for saying nothing but the joint. */
  @ParameterizedTest(name = "{0}")
  @EnumSource(JointKind.class)
  void every_kind_joins_stretchers_of_a_bench_of_defaults(JointKind kind) throws UnreadableFile {
    String words = kind.words();
    String file =
        "wood: beech, European\nstretchers:\n  - {line: front, joint: "
            + words
            + "}\n  - {line: back, joint: "
            + words
            + "}\n";
    SourceText text = new SourceText("bench.yaml", file);
    BenchFile read = BenchFileReader.read(text, ExampleFilesTest.WOODS);
    assertEquals(2, read.bench().stretchers().size());
  }

  @Test
  void a_haunched_tenon_fills_the_depth_of_its_rail() {
    MortiseAndTenon tenon = (MortiseAndTenon) joint("haunched tenon").joint();
    MortiseAndTenon.Haunch haunch = tenon.haunch().orElseThrow();
    assertEquals(110, tenon.height() + haunch.height() + tenon.shoulderBelow(), 1e-9);
    assertEquals(28, haunch.height(), 1e-9);
    assertEquals(12, haunch.length(), 1e-9);
  }

  @Test
  void a_stub_is_a_quarter_of_the_leg_and_a_fox_wedge_stays_inside() {
    MortiseAndTenon stub = (MortiseAndTenon) joint("stub tenon").joint();
    assertEquals(19, stub.length(), 1e-9);
    MortiseAndTenon fox = (MortiseAndTenon) joint("mortise and tenon, fox-wedged").joint();
    Fit.Wedged wedged = assertInstanceOf(Fit.Wedged.class, fox.fit());
    assertTrue(fox.length() < 75 && wedged.kerf() < fox.length());
  }

  @Test
  void wedges_and_bolts_are_as_they_are_said() {
    LooseWedgeTenon tusk =
        (LooseWedgeTenon)
            joint("{kind: loose-wedge tenon, relish: 43, wedgeThickness: 17, wedgeAngle: 7 deg}")
                .joint();
    assertEquals(43, tusk.relish(), 1e-9);
    assertEquals(17, tusk.wedgeThickness(), 1e-9);
    assertEquals(7, tusk.angle(), 1e-9);
    BoltedTenon bolted =
        (BoltedTenon)
            joint(
                    "{kind: stub tenon and bed bolt, boltDiameter: 12, boltClass: 8.8,"
                        + " boltHole: oversize, nut: captive nut, washerDiameter: 41}")
                .joint();
    assertEquals(800, bolted.bolt().ultimate(), 1e-9);
    assertEquals(15, bolted.bolt().washer().hole(), 1e-9);
    assertEquals(41, bolted.bolt().washer().outer(), 1e-9);
    assertTrue(!bolted.nut().round());
  }

  @Test
  void a_misspelt_hold_is_met_with_the_nearest_one() {
    AssertionError error =
        assertThrows(AssertionError.class, () -> joint("mortise and tenon, fox-weged"));
    assertTrue(error.getMessage().contains("Did you mean \"fox-wedged\"?"), error.getMessage());
  }
}
