package org.stoutwork.report.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.stoutwork.report.sheet.page.Role;
import org.stoutwork.report.sheet.page.Tag;

/** Collects the elements of the structure in reading order. */
final class TagTree {

  private final List<Tag> tags = new ArrayList<>();

  TagTree() {
    tags.add(new Tag(Tag.ROOT, Tag.NONE, Role.DOCUMENT, "", 1));
  }

  int add(int parent, Role role, String alternative) {
    return add(new Tag(tags.size() + 1, parent, role, alternative, 1));
  }

  int addSpanning(int parent, int columns) {
    return add(new Tag(tags.size() + 1, parent, Role.CELL, "", columns));
  }

  private int add(Tag tag) {
    int id = tag.id();
    tags.add(tag);
    return id;
  }

  List<Tag> tags() {
    return List.copyOf(tags);
  }
}
