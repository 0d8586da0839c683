package org.stoutwork.report.file.tree;

/** A piece of a file: a map, a list or a scalar. Immutable; knows where it stands. */
public sealed interface Node permits MapNode, ListNode, ScalarNode {

  /** Where the node begins in the file. */
  Spot spot();

  /** Where the node stands in the tree. */
  KeyPath path();

  /** The kind of node for use in a message, for instance {@code is a list}. */
  String given();
}
