package org.stoutwork.report.file.frame;

import java.util.List;
import org.stoutwork.report.file.frame.BrokenFrame.Refusal;

/** Mistakes in nodes, members, supports and member loads. */
final class BrokenStructures {

  private BrokenStructures() {}

  static List<BrokenFrame> all() {
    return List.of(
        new BrokenFrame(
            "an unknown key names the nearest",
            "\"materials\": {\"ash\"",
            "\"material\": {\"ash\"",
            Refusal.BOTH,
"""
rack.json:1:1  materials is missing; a map of names is needed.
rack.json:5:3  material is no key known here; known are materials, schemaVersion, units, title, nodes, sections, members, supports, masses, panels, loads, analyses, ties. Did you mean "materials"?"""),
        new BrokenFrame(
            "a dangling node names the nearest",
            "\"from\": \"A\"",
            "\"from\": \"a\"",
            Refusal.READER_ONLY,
            "rack.json:8:22  members.left.from is \"a\"; the name of a node is needed. Did you mean \"A\"?"),
        new BrokenFrame(
            "a dangling section names the nearest",
            "\"to\": \"B\", \"section\": \"post\"",
            "\"to\": \"B\", \"section\": \"psot\"",
            Refusal.READER_ONLY,
            "rack.json:8:49  members.left.section is \"psot\"; the name of a section is needed. Did you mean \"post\"?"),
        new BrokenFrame(
            "a dangling material is refused",
"""
"section": "post", "material": "ash"},
    "beam\"""",
"""
"section": "post", "material": "oak"},
    "beam\"""",
            Refusal.READER_ONLY,
            "rack.json:8:69  members.left.material is \"oak\"; the name of a material is needed."),
        new BrokenFrame(
            "a negative section is refused",
            "\"Iz\": 1.07e6",
            "\"Iz\": -1.07e6",
            Refusal.BOTH,
            "rack.json:6:56  sections.post.Iz is -1.07e6; a number above 0 is needed."),
        new BrokenFrame(
            "a section without area is refused",
            "\"A\": 3600, ",
            "",
            Refusal.BOTH,
            "rack.json:6:24  sections.post.A is missing; a number above 0 is needed."),
        new BrokenFrame(
            "a node with two numbers is refused",
            "\"B\": [0, 0, 740]",
            "\"B\": [0, 740]",
            Refusal.BOTH,
            "rack.json:4:34  nodes.B has 2 items; a list of 3 numbers is needed."),
        new BrokenFrame(
            "a node with a word is refused",
            "\"B\": [0, 0, 740]",
            "\"B\": [0, 0, \"high\"]",
            Refusal.BOTH,
            "rack.json:4:41  nodes.B[2] is \"high\"; a number without quotes is needed."),
        new BrokenFrame(
            "an infinite number is refused",
            "[910, 35, 0]",
            "[1e999, 35, 0]",
            Refusal.READER_AND_PARSER,
            "rack.json:4:74  nodes.D[0] is 1e999; a number is needed (it is too large to be calculated with)."),
        new BrokenFrame(
            "not a number is refused",
            "\"E\": 12300",
            "\"E\": NaN",
            Refusal.READER_AND_PARSER,
            "rack.json:5:30  materials.ash.E is \"NaN\"; a number above 0 is needed (it must be finite)."),
        new BrokenFrame(
            "a number in quotes is refused",
            "\"E\": 12300",
            "\"E\": \"12300\"",
            Refusal.BOTH,
            "rack.json:5:30  materials.ash.E is \"12300\"; a number above 0 without quotes is needed. Did you mean 12300?"),
        new BrokenFrame(
            "a member without length is refused",
            "\"from\": \"C\", \"to\": \"D\"",
            "\"from\": \"C\", \"to\": \"C\"",
            Refusal.READER_ONLY,
            "rack.json:11:14  members.right is 0 mm long; a member needs length: move its nodes apart or shorten its offsets."),
        new BrokenFrame(
            "an unknown end word is refused",
            "\"rz\": \"free\"",
            "\"rz\": \"fre\"",
            Refusal.BOTH,
            "rack.json:10:36  members.beam.start.rz is \"fre\"; rigid, free or a stiffness is needed. Did you mean \"free\"?"),
        new BrokenFrame(
            "a negative end spring is refused",
            "\"ry\": 4.2e7",
            "\"ry\": -4.2e7",
            Refusal.BOTH,
            "rack.json:10:23  members.beam.start.ry is -4.2e7; a number of at least 0 is needed."),
        new BrokenFrame(
            "an unknown direction is refused",
            "\"rz\": 5e6",
            "\"r_z\": 5e6",
            Refusal.BOTH,
            "rack.json:14:67  supports.A.r_z is no key known here; known are rz, ux, uy, uz, rx, ry. Did you mean \"rz\"?"),
        new BrokenFrame(
            "a one way support along x is refused",
            "\"A\": {\"ux\": \"fixed\"",
            "\"A\": {\"ux\": \"compression-only\"",
            Refusal.BOTH,
            "rack.json:14:17  supports.A.ux is \"compression-only\"; fixed, a stiffness above 0 or {prescribed: value} is needed."),
        new BrokenFrame(
            "a support at no node is refused",
            "\"A\": {\"ux\": \"fixed\", \"uy\": \"fixed\", \"uz\": \"compression-only\"",
            "\"AA\": {\"ux\": \"fixed\", \"uy\": \"fixed\", \"uz\": \"compression-only\"",
            Refusal.READER_ONLY,
            "rack.json:14:11  supports.AA names no node; the name of a node is needed as key."),
        new BrokenFrame(
            "a settlement without value is refused",
            "{\"prescribed\": 0.002}",
            "{\"prescribed\": null}",
            Refusal.BOTH,
            "rack.json:15:95  supports.D.ry.prescribed is empty; a number is needed."),
        new BrokenFrame(
            "an unknown load type names the nearest",
            "\"type\": \"member-line\"",
            "\"type\": \"member_line\"",
            Refusal.BOTH,
            "rack.json:28:14  loads[2].type is \"member_line\"; node, member-point, member-line, self-weight, panel-pressure or panel-patch is needed. Did you mean \"member-line\"?"),
        new BrokenFrame(
            "a load that does nothing is refused",
            ", \"force\": [120, -35, 0]}",
            "}",
            Refusal.BOTH,
            "rack.json:26:5  loads[0] holds neither `force` nor `moment`; at least one of them is needed."),
        new BrokenFrame(
            "a load beyond its member is refused",
            "\"at\": 310",
            "\"at\": 3100",
            Refusal.READER_ONLY,
            "rack.json:27:54  loads[1].at is 3100; the flexible length of this member is 880.696 mm; a place on it is needed."),
        new BrokenFrame(
            "a line load that ends before it begins is refused",
            "\"from\": 100",
            "\"from\": 500",
            Refusal.READER_ONLY,
            "rack.json:28:66  loads[2].to is 400; a place behind `from` (500) is needed."));
  }
}
