package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/** Collects the elements of the structure in reading order. */
final class TagTree {

  private final List<Tag> tags = new ArrayList<>();

  TagTree() {
    tags.add(new Tag(Tag.ROOT, Tag.NONE, Role.DOCUMENT, ""));
  }

  int add(int parent, Role role, String alternative) {
    int id = tags.size() + 1;
    tags.add(new Tag(id, parent, role, alternative));
    return id;
  }

  List<Tag> tags() {
    return List.copyOf(tags);
  }
}
