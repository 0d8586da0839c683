package org.stoutwork.report.file.bench;

import java.util.List;
import org.stoutwork.report.file.bench.BrokenBench.Refusal;

/** Files with words and values that cannot be read. */
final class BrokenWords {

  private BrokenWords() {}

  static List<BrokenBench> all() {
    return List.of(
        BrokenBench.with(
            "an unknown key with the nearest spelling",
            "  thickness: 64",
            "  thicknes: 64",
            Refusal.BOTH,
            "bench.yaml:8:3  top.thicknes is no key known here; known are thickness,"
                + " length, width, wood, grain, layers, hold, fixing, endCap, dogHoles, lipping. Did you mean"
                + " \"thickness\"?"),
        BrokenBench.with(
            "a key in the wrong case",
            "topRail:",
            "toprail:",
            Refusal.BOTH,
            "bench.yaml:12:3  endFrames.toprail is no key known here; known are topRail,"
                + " at, legs, bottomRail, foot. Did you mean \"topRail\"?"),
        BrokenBench.with(
            "a key that belongs elsewhere",
            "height: 850",
            "height: 850\nthickness: 60",
            Refusal.BOTH,
            "bench.yaml:5:1  thickness is no key known here; known are"
                + " schemaVersion, bench, units, height, wood, gradedAs, growth,"
                + " grainRun, duty, pupils, footing, glue, basis, air, people, top,"
                + " everyEndFrame, endFrames, stretchers, vises, weights, actions, woods. \"thickness\" belongs one level down, in top."),
        BrokenBench.with(
            "a list in the place of a length",
            "  length: 1700",
            "  length: [1700]",
            Refusal.BOTH,
            "bench.yaml:6:11  top.length is a list; a length such as `120 mm` or `4"
                + " 3/4 in` above 0 mm is needed."),
        BrokenBench.with(
            "a negative load",
            "1.1 kN",
            "-1.1 kN",
            Refusal.BOTH,
            "bench.yaml:25:37  actions[0].force is \"-1.1 kN\"; a force such as `900"
                + " N` or `200 lbf` above 0 N is needed."),
        BrokenBench.with(
            "a load without unit",
            "1.1 kN",
            "1100",
            Refusal.BOTH,
            "bench.yaml:25:37  actions[0].force is 1100; a force such as `900 N` or"
                + " `200 lbf` above 0 N is needed (it has no unit; write one, such as N)."
                + " Did you mean \"1100 N\"?"),
        BrokenBench.with(
            "a height that is not a number",
            "height: 850",
            "height: .nan",
            Refusal.ANY_PARSER,
            "bench.yaml:4:9  height is .nan; a length such as `120 mm` or `4 3/4"
                + " in` above 0 mm is needed (it is not a number with a unit)."),
        BrokenBench.with(
            "a decimal comma",
            "width: 620",
            "width: 62,5 mm",
            Refusal.BOTH,
            "bench.yaml:7:10  top.width is \"62,5 mm\"; a length such as `120 mm` or"
                + " `4 3/4 in` above 0 mm is needed (commas are not read; write the"
                + " decimal point as in 2.5). Did you mean \"62.5 mm\"?"),
        BrokenBench.with(
            "a stress in the place of a mass",
            "14 kg",
            "14 MPa",
            Refusal.BOTH,
            "bench.yaml:23:34  vises[0].mass is \"14 MPa\"; a mass such as `90 kg` or"
                + " `200 lb` above 0 kg is needed (MPa does not measure this; a unit such"
                + " as kg does)."),
        BrokenBench.with(
            "an unknown wood with the nearest names",
            "beech, European",
            "beach, European",
            Refusal.READER_ONLY,
            "bench.yaml:3:1  wood is \"beach, European\"; no such wood is known; the"
                + " nearest names are beech-european, birch-european, ash-european."),
        BrokenBench.with(
            "a wood that could be several",
            "beech, European",
            "oak",
            Refusal.READER_ONLY,
            "bench.yaml:3:1  wood is \"oak\"; it could be any of oak-northern-red,"
                + " oak-white, oak-european, oak-turkey, oak-black, oak-cherrybark,"
                + " oak-laurel, oak-pin and 11 more; say which."),
        BrokenBench.with(
            "no wood at all",
            "wood: beech, European\n",
            "",
            Refusal.READER_ONLY,
            "bench.yaml:1:1  wood is missing; name the wood, such as \"beech,"
                + " European\", \"ash, white\" or C24."),
        BrokenBench.with(
            "a misspelt word",
            "edge: front",
            "edge: frunt",
            Refusal.BOTH,
            "bench.yaml:23:12  vises[0].edge is \"frunt\"; one of front, back, left"
                + " or right is needed. Did you mean \"front\"?"),
        BrokenBench.with(
            "a word that means nothing here",
            "kind: point on the top",
            "kind: hammering",
            Refusal.BOTH,
            "bench.yaml:25:12  actions[0].kind is \"hammering\"; one of point on the"
                + " top, spread over the top, plane on the top, thrust along, thrust"
                + " across or sitting on the edge is needed."),
        BrokenBench.with(
            "a part of a word",
            "height: 850",
            "height: 850\nfooting: rubber pads",
            Refusal.BOTH,
            "bench.yaml:5:10  footing is \"rubber pads\"; one of unknown or dusty"
                + " floor, bare feet on a clean floor, rubber pads on a clean floor or"
                + " fixed to the floor is needed. Did you mean \"rubber pads on a clean"
                + " floor\"?"),
        BrokenBench.with(
            "a joint that is none",
            "    joint:\n      kind: mortise and tenon\n      tenonThickness: 16\n      tenonLength: 48\n",
            "    joint: dovetail\n",
            Refusal.BOTH,
            "bench.yaml:15:12  endFrames.topRail.joint is \"dovetail\"; a joint such"
                + " as `mortise and tenon, drawbored` or a map of its keys is needed (a"
                + " joint is one of mortise and tenon, through tenon, haunched tenon, stub"
                + " tenon, twin tenon, bridle, corner bridle, stub tenon and bed bolt,"
                + " loose-wedge tenon, half-lap, dowelled butt, housing or screwed butt)."),
        BrokenBench.with(
            "a hold that is none",
            "    joint:\n      kind: mortise and tenon\n      tenonThickness: 16\n      tenonLength: 48\n",
            "    joint: mortise and tenon, nailed\n",
            Refusal.BOTH,
            "bench.yaml:15:12  endFrames.topRail.joint is \"mortise and tenon,"
                + " nailed\"; a joint such as `mortise and tenon, drawbored` or a map of"
                + " its keys is needed (a hold is one of glued, dry, wedged, wedged and"
                + " glued, fox-wedged, fox-wedged and glued, pegged, pegged and glued, drawbored, drawbored and glued, screwed or screwed and glued)."),
        BrokenBench.with(
            "screws in a tenon",
            "    joint:\n      kind: mortise and tenon\n      tenonThickness: 16\n      tenonLength: 48\n",
            "    joint: mortise and tenon, screwed\n",
            Refusal.READER_ONLY,
            "bench.yaml:15:5  endFrames.topRail.joint.hold is screwed; screws hold a half-lap or a"
                + " housing; for a rail screwed through the leg say kind screwed butt."),
        BrokenBench.with(
            "screws that come out behind",
            "      kind: mortise and tenon\n      tenonThickness: 16\n      tenonLength: 48\n",
            "      kind: half-lap\n      screws: 3\n      screwLength: 110\n",
            Refusal.READER_ONLY,
            "bench.yaml:18:7  endFrames.topRail.joint.screwLength is 110 mm; at most 89 mm, or it comes"
                + " out of the post."),
        BrokenBench.with(
            "more screws than a joint has",
            "      kind: mortise and tenon\n      tenonThickness: 16\n      tenonLength: 48\n",
            "      kind: housing\n      screws: 9\n",
            Refusal.BOTH,
            "bench.yaml:17:15  endFrames.topRail.joint.screws is 9; a whole number from 1 to 8 is needed."),
        BrokenBench.with(
            "a screwed hold without its screws",
            "depth: 120",
            "depth: 120, hold: screwed",
            Refusal.BOTH,
            "bench.yaml:21:36  stretchers[0].hold is \"screwed\"; glued, loose or a"
                + " map such as `screwed: {diameter: 6 mm}` is needed."),
        BrokenBench.with(
            "something in the place of none",
            "bottomRail: {depth: 85, thickness: 40, bottomEdgeAt: 120}",
            "bottomRail: nothing",
            Refusal.BOTH,
            "bench.yaml:19:15  endFrames.bottomRail is \"nothing\"; none or a map of"
                + " keys is needed."),
        BrokenBench.with(
            "moisture without its sign",
            "people:",
            "air: {driest: 7}\npeople:",
            Refusal.BOTH,
            "bench.yaml:26:15  air.driest is 7; a moisture content from 3 % to 30 %"
                + " is needed (write the percent sign). Did you mean \"7 %\"?"),
        BrokenBench.with(
            "an unknown room",
            "people:",
            "air: {climate: garage}\npeople:",
            Refusal.BOTH,
            "bench.yaml:26:16  air.climate is \"garage\"; one of heated-house,"
                + " school, heated-workshop, unheated-shed, boat-shed or dry-cooled is"
                + " needed."),
        BrokenBench.with(
            "a rate without unit",
            "people:",
            "weights: [{lies: machine, mass: 30 kg, shaftRates: [2800]}]\npeople:",
            Refusal.BOTH,
            "bench.yaml:26:53  weights[0].shaftRates[0] is 2800; a rate such as"
                + " `3000 rpm` or `50 Hz`, above 0 and below 1000 Hz, is needed."),
        BrokenBench.with(
            "an action without its force",
            ", force: 1.1 kN",
            "",
            Refusal.BOTH,
            "bench.yaml:25:5  actions[0].force is missing; a force such as `900 N`"
                + " or `200 lbf` above 0 N is needed."),
        BrokenBench.with(
            "a hole for top screws that is round and a slot",
            "  thickness: 64",
            "  thickness: 64\n  fixing: {holeDiameter: 12, slotLength: 16}",
            Refusal.READER_ONLY,
            "bench.yaml:9:12  top.fixing.holeDiameter is 12 mm beside a slot; round holes have"
                + " holeDiameter, slots have slotWidth and slotLength; leave one out."),
        BrokenBench.with(
            "a slot shorter than wide",
            "  thickness: 64",
            "  thickness: 64\n  fixing: {slotWidth: 12, slotLength: 9}",
            Refusal.READER_ONLY,
            "bench.yaml:9:27  top.fixing.slotLength is 9 mm; at least its width of 12 mm; a round"
                + " hole is given by holeDiameter."),
        BrokenBench.with(
            "a place where no top can be held",
            "  thickness: 64",
            "  thickness: 64\n  fixing: {heldAt: midle}",
            Refusal.BOTH,
            "bench.yaml:9:20  top.fixing.heldAt is \"midle\"; one of middle, front or nowhere is"
                + " needed. Did you mean \"middle\"?"),
        BrokenBench.with(
            "too many pupils",
            "people:",
            "pupils: 9\npeople:",
            Refusal.BOTH,
            "bench.yaml:26:9  pupils is 9; a whole number from 0 to 8 is needed."),
        BrokenBench.with(
            "no stretchers in a list",
            "  - {line: both, depth: 120, thickness: 38, bottomEdgeAt: 140}\n",
            "  []\n",
            Refusal.BOTH,
            "bench.yaml:21:3  stretchers is a list; a list of at least one entry is" + " needed."),
        BrokenBench.with(
            "an own wood with a slipped unit",
            "people:",
            "woods:\n  - {name: shop elm, group: hardwood, source: own tests, specificGravity: 0.5, modulus: 9.3 MPa}\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:27:89  woods[0].modulus is \"9.3 MPa\"; a stress such as `24"
                + " MPa`, `11 GPa` or `1600 psi` from 1000 MPa to 40000 MPa is needed."),
        BrokenBench.with(
            "an own wood without source",
            "people:",
            "woods:\n  - {name: shop elm, group: hardwood, specificGravity: 0.5}\npeople:",
            Refusal.BOTH,
            "bench.yaml:27:5  woods[0].source is missing; text is needed."),
        BrokenBench.with(
            "a misspelt known wood with an own value",
            "people:",
            "woods:\n  - {name: oak-whit, source: own tests, bending: 90 MPa}\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:27:5  woods[0].group is missing; a wood that is not in the"
                + " tables needs hardwood or softwood. Known woods with names like it are"
                + " oak-white, oak-swamp-white, oak-bur.",
            "bench.yaml:27:5  woods[0].specificGravity is missing; a wood that is"
                + " not in the tables needs at least this value, or a density. Known"
                + " woods with names like it are oak-white, oak-swamp-white, oak-bur."),
        BrokenBench.with(
            "a load that acts more hours than a day has",
            "force: 1.1 kN}",
            "force: 1.1 kN, acts: {hoursPerDay: 25, daysPerYear: 200, years: 9}}",
            Refusal.BOTH,
            "bench.yaml:25:65  actions[0].acts.hoursPerDay is 25; a number from 0.001 to 24 is"
                + " needed."),
        BrokenBench.with(
            "air without signs",
            "people:",
            "air: {lowHumidity: 40, temperature: 18, serviceClass: 4}\npeople:",
            Refusal.BOTH,
            "bench.yaml:26:20  air.lowHumidity is 40; a relative humidity from 0 % to 95 % is needed"
                + " (write the percent sign). Did you mean \"40 %\"?",
            "bench.yaml:26:37  air.temperature is 18; a temperature such as `18 °C` or `65 °F`, from"
                + " 0 °C to 60 °C, is needed.",
            "bench.yaml:26:55  air.serviceClass is 4; a whole number from 1 to 3 is needed."),
        BrokenBench.with(
            "an own shrinkage without its sign",
            "people:",
            "woods:\n  - {name: ash-white, source: own tests, shrinkageRadial: 4.7}\npeople:",
            Refusal.BOTH,
            "bench.yaml:27:59  woods[0].shrinkageRadial is 4.7; a shrinkage from green to ovendry from"
                + " 0.5 % to 20 % is needed (write the percent sign). Did you mean \"4.7 %\"?"),
        BrokenBench.with(
            "an own wood weighed twice",
            "people:",
            "woods:\n  - {name: shop elm, group: hardwood, source: own tests, specificGravity: 0.5, density: 610 kg/m3}\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:27:89  woods[0].density stands beside a specific gravity; the two say the"
                + " same; give one of them."),
        BrokenBench.with(
            "an own value of a strength class",
            "people:",
            "woods:\n  - {name: C24, source: own tests, bending: 30 MPa}\npeople:",
            Refusal.READER_ONLY,
            "bench.yaml:27:12  woods[0].name is a known strength class, softwood;"
                + " the values of C24 go together and are not changed one by one; choose"
                + " a name of your own."),
        BrokenBench.with(
            "a whole bench of sheets",
            "wood: beech, European",
            "wood: plywood-birch-18",
            Refusal.READER_ONLY,
            "bench.yaml:3:1  wood is \"plywood-birch-18\", a sheet; legs, rails, stretchers and feet"
                + " need solid wood; name sheets under top only."),
        BrokenBench.with(
            "rails of sheet",
            "depth: 110\n",
            "depth: 110\n    wood: plywood-birch-18\n",
            Refusal.READER_ONLY,
            "bench.yaml:14:5  endFrames.topRail.wood is \"plywood-birch-18\", a sheet; legs, rails,"
                + " stretchers and feet need solid wood; name sheets under top only."),
        BrokenBench.with(
            "clear wood of which only the class is known",
            "wood: beech, European",
            "wood: D40\nbasis: clear-wood allowable",
            Refusal.READER_ONLY,
            "bench.yaml:4:1  basis is clear-wood allowable, but known by strength class only is D40;"
                + " name the species without gradedAs, or choose the basis \"partial factors\"."));
  }
}
