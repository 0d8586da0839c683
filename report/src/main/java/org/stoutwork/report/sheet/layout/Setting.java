package org.stoutwork.report.sheet.layout;

import java.util.Set;
import org.stoutwork.report.drawing.RichText;
import org.stoutwork.report.drawing.TextMeasure;
import org.stoutwork.report.sheet.page.Role;

/**
 * What a block needs to know to be set: the width it has, how wide type is, where it hangs in the
 * structure, and the numbers.
 *
 * @param width of the column, mm
 * @param height of a whole page's column, mm
 * @param measure of the type
 * @param parent id of the element that holds the block
 * @param tags the structure
 * @param numbering sections, figures, references
 * @param asked names of references met so far
 */
record Setting(
    double width,
    double height,
    TextMeasure measure,
    int parent,
    TagTree tags,
    Numbering numbering,
    Set<String> asked) {

  Setting narrowed(double newWidth) {
    return new Setting(newWidth, height, measure, parent, tags, numbering, asked);
  }

  Setting within(int element) {
    return new Setting(width, height, measure, element, tags, numbering, asked);
  }

  int tag(Role role) {
    return tags.add(parent, role, "");
  }

  int tag(Role role, String alternative) {
    return tags.add(parent, role, alternative);
  }

  /** Text with its references replaced by numbers. */
  RichText resolved(RichText text) {
    return text.resolved(
        name -> {
          asked.add(name);
          return numbering.resolve(name);
        });
  }
}
