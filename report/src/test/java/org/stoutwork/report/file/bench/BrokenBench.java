package org.stoutwork.report.file.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * A bench file that is broken in one way or several, with all that is said of it.
 *
 * @param title what is broken
 * @param text the file
 * @param refusal who refuses it
 * @param message everything that the reader says
 */
record BrokenBench(String title, String text, Refusal refusal, String message) {

  /** Who refuses a file. */
  enum Refusal {
    BOTH,
    READER_ONLY,
    /** Already the text is no YAML of numbers and words. */
    ANY_PARSER
  }

  @Override
  public String toString() {
    return title;
  }

  /** A sound file with all end frames alike; unequal numbers everywhere. */
  static final String SOUND =
      """
      bench: garage bench
      units: mm
      wood: beech, European
      height: 850
      top:
        length: 1700
        width: 620
        thickness: 64
      endFrames:
        at: [260, 1440]
        legs: {along: 90, across: 75, frontInset: 20, backInset: 30}
        topRail:
          depth: 110
          thickness: 45
          joint:
            kind: mortise and tenon
            tenonThickness: 16
            tenonLength: 48
        bottomRail: {depth: 85, thickness: 40, bottomEdgeAt: 120}
      stretchers:
        - {line: both, depth: 120, thickness: 38, bottomEdgeAt: 140}
      vises:
        - {edge: front, at: 300, mass: 14 kg}
      actions:
        - {kind: point on the top, force: 1.1 kN}
      people:
        prepared: somebody
      """;

  /** A sound file with end frames that differ, in inches, with woods of its own. */
  static final String LISTED =
      """
      bench: three-legged runner
      units: in
      wood: shop elm
      growth: clear
      height: 33 1/2
      top:
        length: 96
        width: 26 1/4
        layers:
          - {wood: plywood-birch-18, thickness: 18 mm, grain: across}
          - {wood: ash, white, thickness: 1 1/8}
        hold: {screwed: {diameter: 6 mm, spacing: 8, rows: 3}}
      everyEndFrame:
        legs: {along: 4, across: 3}
        bottomRail: none
      endFrames:
        - {name: left, at: 12}
        - {name: middle, at: 50, topRail: {depth: 5, joint: "mortise and tenon, drawbored"}}
        - {name: right, at: 85, legs: {along: 3 1/2}}
      stretchers:
        - {line: front, depth: 4 1/2, joint: half-lap}
        - {line: back, depth: 4 1/2, bottomEdgeAt: 8}
      weights:
        - {name: lathe, lies: machine, mass: 120 lb, shaftRates: [1200 rpm]}
        - {lies: on the shelf, mass: 30 lb, stays: {hoursPerDay: 24, daysPerYear: 300, years: 15}}
      air: {lowHumidity: 40 %, highHumidity: 63 %, temperature: 64 °F, serviceClass: 1}
      woods:
        - {name: shop elm, group: hardwood, source: own bending tests, specificGravity: 0.53,
           modulus: 9.3 GPa, bending: 78 MPa}
        - {name: ash-white, source: delivery note, bending: 91 MPa}
      """
          .replace("ash, white,", "\"ash, white\",");

  static List<BrokenBench> all() {
    List<BrokenBench> all = new ArrayList<>(BrokenWords.all());
    all.addAll(BrokenParts.all());
    return all;
  }

  /** The sound file with a piece replaced. */
  static BrokenBench with(
      String title, String right, String wrong, Refusal refusal, String... lines) {
    String text = SOUND.replace(right, wrong);
    if (text.equals(SOUND)) {
      throw new IllegalArgumentException("the sound file does not hold " + right);
    }
    return new BrokenBench(title, text, refusal, String.join("\n", lines));
  }
}
