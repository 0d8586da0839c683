package org.stoutwork.report.file.frame;

import java.util.List;
import org.stoutwork.report.file.frame.BrokenFrame.Refusal;

/** Mistakes in headings, panels, ties and the rest. */
final class BrokenPanels {

  private BrokenPanels() {}

  static List<BrokenFrame> all() {
    return List.of(
        new BrokenFrame(
            "a load on no member is refused",
            "\"member\": \"left\"",
            "\"member\": \"lefty\"",
            Refusal.READER_ONLY,
            "rack.json:28:39  loads[2].member is \"lefty\"; the name of a member is needed. Did you mean \"left\"?"),
        new BrokenFrame(
            "an unknown analysis names the nearest",
            "\"second-order\"]",
            "\"secondOrder\"]",
            Refusal.BOTH,
            "rack.json:34:26  analyses[1] is \"secondOrder\"; static, second-order, buckling or frequencies is needed. Did you mean \"second-order\"?"),
        new BrokenFrame(
            "other units are refused",
            "\"units\": \"N, mm, MPa\"",
            "\"units\": \"kN, m\"",
            Refusal.BOTH,
            "rack.json:3:12  units is \"kN, m\"; N, mm, MPa is needed."),
        new BrokenFrame(
            "a title that is no text is refused",
            "\"title\": \"drying rack\"",
            "\"title\": 12",
            Refusal.BOTH,
            "rack.json:2:12  title is 12; text is needed, in quotes if it looks like a number or like yes and no."),
        new BrokenFrame(
            "a map in place of a list is refused",
            "\"loads\": [",
            "\"loads\": {\"a\": 1}, \"lodas\": [",
            Refusal.BOTH,
"""
rack.json:25:12  loads is a map of keys; a list is needed.
rack.json:25:22  lodas is no key known here; known are loads, schemaVersion, units, title, nodes, materials, sections, members, supports, masses, panels, analyses, ties. Did you mean "loads"?"""),
        new BrokenFrame(
            "a panel on no known line is refused",
            "\"line\": \"edge=right\"",
            "\"line\": \"edge=rihgt\"",
            Refusal.BOTH,
            "rack.json:21:84  panels.shelf.supports[1].line is \"edge=rihgt\"; a line on the panel such as `x=245`, `y=30`, `edge=left`, `edge=right`, `edge=front` or `edge=back` is needed. Did you mean \"edge=right\"?"),
        new BrokenFrame(
            "a line off the panel is refused",
            "\"line\": \"x=45\"",
            "\"line\": \"x=950\"",
            Refusal.READER_ONLY,
            "rack.json:21:29  panels.shelf.supports[0].line is \"x=950\"; a line on the panel such as `x=245`, `y=30`, `edge=left`, `edge=right`, `edge=front` or `edge=back` is needed (x runs from 0 to 910 mm)."),
        new BrokenFrame(
            "a skew panel is refused",
            "\"across\": [0, 1, 0]",
            "\"across\": [0.5, 1, 0]",
            Refusal.READER_ONLY,
            "rack.json:18:68  panels.shelf.across is not at right angles to `along` (the cosine is 0.4472); a direction at right angles is needed."),
        new BrokenFrame(
            "an impossible poisson ratio is refused",
            "\"nu12\": 0.35",
            "\"nu12\": 4.5",
            Refusal.READER_ONLY,
            "rack.json:18:14  panels.shelf cannot be used as it stands; nu12 is 4.5, but its size must stay below √(E1/E2) = 4.282; check which direction is 1."),
        new BrokenFrame(
            "a mesh of one number is refused",
            "\"mesh\": [24, 10]",
            "\"mesh\": [24]",
            Refusal.BOTH,
            "rack.json:20:74  panels.shelf.mesh has 1 item; auto or a list of 2 whole numbers from 2 to 200 is needed."),
        new BrokenFrame(
            "a patch over the edge is refused",
            "\"at\": [300, 90]",
            "\"at\": [885, 90]",
            Refusal.READER_ONLY,
            "rack.json:31:53  loads[5].at puts the patch beyond an edge; a point from [0, 0] to [910, 300] is needed, patch included."),
        new BrokenFrame(
            "a tie that joins nothing is refused",
            ", \"uz\": \"compression-only\", \"ux\": 800}]",
            "}]",
            Refusal.BOTH,
            "rack.json:24:12  ties[0] joins nothing; one of ux, uy, uz, rx, ry, rz is needed."),
        new BrokenFrame(
            "a tie of no panel is refused",
            "{\"panel\": \"shelf\", \"at\": [455, 150]",
            "{\"panel\": \"shelv\", \"at\": [455, 150]",
            Refusal.READER_ONLY,
            "rack.json:24:22  ties[0].panel is \"shelv\"; the name of a panel is needed. Did you mean \"shelf\"?"),
        new BrokenFrame(
            "a negative mass is refused",
            "{\"B\": 4.5}",
            "{\"B\": -4.5}",
            Refusal.BOTH,
            "rack.json:33:19  masses.B is -4.5; a number of at least 0 is needed."),
        new BrokenFrame(
            "two mistakes are told in file order",
            "\"masses\": {\"B\": 4.5}",
            "\"mases\": {\"B\": 4.5}, \"G\": 3",
            Refusal.BOTH,
"""
rack.json:33:3  mases is no key known here; known are masses, schemaVersion, units, title, nodes, materials, sections, members, supports, panels, loads, analyses, ties. Did you mean "masses"?
rack.json:33:24  G is no key known here; known are schemaVersion, units, title, nodes, materials, sections, members, supports, masses, panels, loads, analyses, ties. "G" belongs one level down, in materials.ash."""),
        new BrokenFrame(
            "an octal looking number is refused",
            "\"E\": 12300",
            "\"E\": 012300",
            Refusal.READER_AND_PARSER,
            "rack.json:5:30  materials.ash.E is 012300; a number above 0 is needed (some readers take a leading 0 for a number to base eight). Did you mean 12300?"),
        new BrokenFrame(
            "a key one level too high is sent down",
            "\"masses\": {\"B\": 4.5},",
            "\"roll_deg\": 3,",
            Refusal.BOTH,
            "rack.json:33:3  roll_deg is no key known here; known are schemaVersion, units, title, nodes, materials, sections, members, supports, masses, panels, loads, analyses, ties. \"roll_deg\" belongs one level down, in members.left."),
        new BrokenFrame(
            "a key one level too low is sent up",
            "\"roll_deg\": 15,",
            "\"masses\": {\"B\": 2},",
            Refusal.BOTH,
            "rack.json:9:76  members.beam.masses is no key known here; known are from, to, section, material, roll_deg, start, end, start_offset, end_offset. \"masses\" belongs one level up, beside \"members\"."),
        new BrokenFrame(
            "a frame without members is refused where there is no panel",
            "",
            "{\"nodes\": {\"A\": [0, 0, 0]}}",
            Refusal.BOTH,
"""
rack.json:1:1  materials is missing; a map of names is needed.
rack.json:1:1  sections is missing; a map of names is needed.
rack.json:1:1  members is missing; a map of names is needed."""),
        new BrokenFrame(
            "a zero support spring is refused",
            "\"rz\": 5e6",
            "\"rz\": 0",
            Refusal.BOTH,
            "rack.json:14:73  supports.A.rz is 0; a number above 0 is needed."),
        new BrokenFrame(
            "a thin that is a word is refused",
            "\"thin\": false",
            "\"thin\": \"no\"",
            Refusal.BOTH,
            "rack.json:20:92  panels.shelf.thin is \"no\"; yes or no (or true, false) without quotes is needed. Did you mean no?"));
  }
}
