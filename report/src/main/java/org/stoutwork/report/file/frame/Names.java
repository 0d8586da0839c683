package org.stoutwork.report.file.frame;

import java.util.Set;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;

/**
 * The names given in one file, for references to them.
 *
 * @param nodes names of nodes
 * @param materials names of materials
 * @param sections names of sections
 * @param members names of members
 * @param panels names of panels
 */
record Names(
    Set<String> nodes,
    Set<String> materials,
    Set<String> sections,
    Set<String> members,
    Set<String> panels) {

  static Names in(Fields file) {
    return new Names(
        file.namesIn("nodes"),
        file.namesIn("materials"),
        file.namesIn("sections"),
        file.namesIn("members"),
        file.namesIn("panels"));
  }

  Kind<String> node() {
    return Kinds.reference("the name of a node", nodes);
  }

  Kind<String> material() {
    return Kinds.reference("the name of a material", materials);
  }

  Kind<String> section() {
    return Kinds.reference("the name of a section", sections);
  }

  Kind<String> member() {
    return Kinds.reference("the name of a member", members);
  }

  Kind<String> panel() {
    return Kinds.reference("the name of a panel", panels);
  }
}
