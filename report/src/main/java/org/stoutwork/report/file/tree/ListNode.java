package org.stoutwork.report.file.tree;

import java.util.List;

/**
 * A node that holds items in order.
 *
 * @param spot where it begins
 * @param path where it stands
 * @param items the items in file order
 */
public record ListNode(Spot spot, KeyPath path, List<Node> items) implements Node {

  /** Copies the list. */
  public ListNode {
    items = List.copyOf(items);
  }

  @Override
  public String given() {
    return "is a list";
  }
}
