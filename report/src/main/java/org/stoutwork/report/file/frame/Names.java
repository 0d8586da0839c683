package org.stoutwork.report.file.frame;

import java.util.Set;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Kinds;

/**
 * The names given in one file, for references to them. Where a whole map of names is missing, that
 * is one mistake, and no reference to it is another.
 *
 * @param nodes names of nodes
 * @param materials names of materials
 * @param sections names of sections
 * @param members names of members
 * @param panels names of panels
 * @param frameNeeded whether the maps of the frame must be there
 */
record Names(
    Set<String> nodes,
    Set<String> materials,
    Set<String> sections,
    Set<String> members,
    Set<String> panels,
    boolean frameNeeded) {

  static Names in(Fields file) {
    return new Names(
        file.namesIn("nodes"),
        file.namesIn("materials"),
        file.namesIn("sections"),
        file.namesIn("members"),
        file.namesIn("panels"),
        isFrameNeeded(file));
  }

  /** A file of panels alone needs no frame. */
  static boolean isFrameNeeded(Fields file) {
    return file.has("members") || !file.has("panels");
  }

  Kind<String> node() {
    return kind("the name of a node", nodes);
  }

  Kind<String> material() {
    return kind("the name of a material", materials);
  }

  Kind<String> section() {
    return kind("the name of a section", sections);
  }

  Kind<String> member() {
    return kind("the name of a member", members);
  }

  Kind<String> panel() {
    return Kinds.reference("the name of a panel", panels);
  }

  boolean isNode(String name) {
    return nodes.contains(name) || isMissing(nodes);
  }

  private Kind<String> kind(String what, Set<String> names) {
    return isMissing(names) ? Kinds.text().named(what) : Kinds.reference(what, names);
  }

  private boolean isMissing(Set<String> names) {
    return frameNeeded && names.isEmpty();
  }
}
