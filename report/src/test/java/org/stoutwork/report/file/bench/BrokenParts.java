package org.stoutwork.report.file.bench;

import java.util.List;
import org.stoutwork.report.file.bench.BrokenBench.Refusal;

/** Files that can be read, of benches that cannot be built. */
final class BrokenParts {

  private BrokenParts() {}

  static List<BrokenBench> all() {
    return List.of(
        BrokenBench.with(
            "a tenon thicker than its rail",
            "tenonThickness: 16",
            "tenonThickness: 46",
            Refusal.READER_ONLY,
            "bench.yaml:17:7  endFrames.topRail.joint.tenonThickness is 46 mm; at"
                + " most 45 mm, the thickness of the rail."),
        BrokenBench.with(
            "a tenon longer than its leg",
            "tenonLength: 48",
            "tenonLength: 75",
            Refusal.READER_ONLY,
            "bench.yaml:18:7  endFrames.topRail.joint.tenonLength is 75 mm; at most"
                + " 74 mm, or the mortise comes out at the back: make the tenon shorter"
                + " or through."),
        BrokenBench.with(
            "a default that does not fit",
            "      tenonLength: 48\n",
            "      tenonLength: 12\n      hold: pegged\n",
            Refusal.READER_ONLY,
            "bench.yaml:15:5  endFrames.topRail.joint.pegFromShoulder is 15 mm by"
                + " default; at most 7 mm, or the peg passes beyond the tenon."),
        BrokenBench.with(
            "two bolts that do not fit",
            "bottomEdgeAt: 140}",
            "bottomEdgeAt: 140, joint: {bolts: 2, boltDiameter: 12, boltSpacing: 110}}",
            Refusal.READER_ONLY,
            "bench.yaml:21:100  stretchers[0].joint.boltSpacing is 110 mm; at most"
                + " 96 mm, the depth of the rail less a diameter beyond each bolt."),
        BrokenBench.with(
            "a leg outside the top",
            "[260, 1440]",
            "[40, 1440]",
            Refusal.READER_ONLY,
            "bench.yaml:10:8  endFrames.at[0] is 40 mm, which puts a leg outside"
                + " the top; 45 mm to 1655 mm is allowed for legs of 90 mm."),
        BrokenBench.with(
            "overlapping end frames",
            "[260, 1440]",
            "[260, 330]",
            Refusal.READER_ONLY,
            "bench.yaml:10:13  endFrames.at[1] is 330 mm, which overlaps or nearly"
                + " touches the frame before it; end frames are named from left to right"
                + " with at least 50 mm between their legs."),
        BrokenBench.with(
            "a single end frame",
            "[260, 1440]",
            "[260]",
            Refusal.READER_ONLY,
            "bench.yaml:9:1  endFrames is only one; a bench needs two or more."),
        BrokenBench.with(
            "two heights for one rail",
            "bottomEdgeAt: 120}",
            "bottomEdgeAt: 120, topEdgeAt: 205}",
            Refusal.READER_ONLY,
            "bench.yaml:19:3  endFrames.bottomRail is given more than one height;"
                + " keep one of topEdgeAt, bottomEdgeAt and centreAt."),
        BrokenBench.with(
            "a height for the top rail",
            "    depth: 110",
            "    depth: 110\n    centreAt: 700",
            Refusal.READER_ONLY,
            "bench.yaml:14:5  endFrames.topRail.centreAt is 700 mm; the top rail"
                + " lies directly under the top; leave the height out."),
        BrokenBench.with(
            "a stretcher through the top",
            "bottomEdgeAt: 140",
            "bottomEdgeAt: 700",
            Refusal.READER_ONLY,
            "bench.yaml:21:45  stretchers[0].bottomEdgeAt is such that the piece"
                + " lies from 700 mm to 820 mm above the floor; there is room from 0 mm"
                + " to 786 mm."),
        BrokenBench.with(
            "two stretchers in one place",
            "stretchers:\n",
            "stretchers:\n  - {line: front, depth: 100, centreAt: 230}\n",
            Refusal.READER_ONLY,
            "bench.yaml:22:5  stretchers[1] is in the place of the lower front"
                + " stretcher; two stretchers on the front line must be clear of one"
                + " another, so move one by 80 mm."),
        BrokenBench.with(
            "a height that nobody can work at",
            "height: 850",
            "height: 8500",
            Refusal.READER_ONLY,
            "bench.yaml:4:1  height is 8500 mm; 300 mm to 1400 mm is allowed."),
        BrokenBench.with(
            "legs wider than the top",
            "width: 620",
            "width: 220",
            Refusal.READER_ONLY,
            "bench.yaml:11:3  endFrames.legs is two legs of 75 mm with insets 20 mm"
                + " and 30 mm; a top 220 mm wide leaves 20 mm between them; at least"
                + " 50 mm is needed for a rail."),
        BrokenBench.with(
            "a vise beyond the end of the top",
            "at: 300",
            "at: 1800",
            Refusal.READER_ONLY,
            "bench.yaml:23:19  vises[0].at is 1800 mm; 0 mm to 1700 mm is allowed."),
        BrokenBench.with(
            "a load that no bench carries",
            "1.1 kN",
            "60 kN",
            Refusal.READER_ONLY,
            "bench.yaml:25:30  actions[0].force is 60000 N; more than 0 N and at"
                + " most 50 kN is allowed."),
        BrokenBench.with(
            "partial factors without a class",
            "people:",
            "basis: partial factors\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:26:1  basis is partial factors, but no strength class is"
                + " named for beech-european (a class D); say what the wood was graded"
                + " as, such as gradedAs: D40, or choose the basis \"clear-wood"
                + " allowable\"."),
        BrokenBench.with(
            "a class that is none",
            "people:",
            "gradedAs: beech\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:26:1  gradedAs is \"beech\"; a strength class is one of C14,"
                + " C16, C18, C20, C22, C24, C27, C30, C35, C40, C45, C50, D18, D24, D27,"
                + " D30, D35, D40, D45, D50, D55, D60, D65, D70, D75, D80."),
        BrokenBench.with(
            "moisture upside down",
            "people:",
            "air: {driest: 12 %, wettest: 9 %}\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:26:7  air.driest is 12 % and air.wettest is 9 %; both must"
                + " lie from 3 % to 30 %, the driest below the wettest."),
        BrokenBench.with(
            "stiffnesses that fall",
            "tenonLength: 48",
            "tenonLength: 48\n      stiffness: {low: 30 kN·m/rad, mean: 20 kN·m/rad, high: 40 kN·m/rad}",
            Refusal.READER_ONLY,
            "bench.yaml:19:7  endFrames.topRail.joint.stiffness is 30 kN·m/rad,"
                + " 20 kN·m/rad, 40 kN·m/rad; low, mean and high must be above 0 and"
                + " rise."),
        BrokenBench.with(
            "end frames said twice",
            "vises:",
            "everyEndFrame: {}\nvises:",
            Refusal.READER_ONLY,
            "bench.yaml:22:16  everyEndFrame is given beside endFrames that are one"
                + " map; that map already says what is alike; keep one of the two."));
  }
}
