package org.stoutwork.linear;

import java.util.Arrays;

/**
 * The elimination tree of a permuted symmetric matrix and the number of entries of each column of
 * its factor. Davis (2006), sections 4.1 and 4.3.
 */
final class ColumnTree {
  private final int[] place;
  private final int[] parent;
  private final int[] count;

  ColumnTree(SparseSymmetric matrix, int[] order) {
    int n = matrix.size();
    if (order.length != n) {
      throw new IllegalArgumentException("an order of " + order.length + " for " + n + " unknowns");
    }
    place = new int[n];
    for (int k = 0; k < n; k++) {
      place[order[k]] = k;
    }
    parent = new int[n];
    count = new int[n];
    int[][] left = leftOfRow(matrix);
    int[] mark = new int[n];
    for (int k = 0; k < n; k++) {
      parent[k] = -1;
      mark[k] = k;
      // The path compression of the tree's making is left out: these trees are short.
      for (int i : left[k]) {
        for (int at = i; mark[at] != k; at = parent[at]) {
          if (parent[at] < 0) {
            parent[at] = k;
          }
          count[at]++;
          mark[at] = k;
        }
      }
    }
  }

  private int[][] leftOfRow(SparseSymmetric matrix) {
    int n = place.length;
    int[] length = new int[n];
    for (int j = 0; j < n; j++) {
      for (int p = matrix.columnStart(j); p < matrix.columnStart(j + 1); p++) {
        length[Math.max(place[matrix.row(p)], place[j])]++;
      }
    }
    int[][] left = new int[n][];
    for (int k = 0; k < n; k++) {
      left[k] = new int[length[k]];
      length[k] = 0;
    }
    for (int j = 0; j < n; j++) {
      for (int p = matrix.columnStart(j); p < matrix.columnStart(j + 1); p++) {
        int a = place[matrix.row(p)];
        int b = place[j];
        int k = Math.max(a, b);
        left[k][length[k]++] = Math.min(a, b);
      }
    }
    return left;
  }

  /** Unknown to position. */
  int[] place() {
    return place;
  }

  int[] parent() {
    return parent;
  }

  /** Entries below the diagonal of each column of L. */
  int[] count() {
    return count;
  }

  /** Positions in an order in which each branch is together, children before parents. */
  int[] postorder() {
    int n = parent.length;
    int[] head = new int[n];
    int[] next = new int[n];
    Arrays.fill(head, -1);
    for (int k = n - 1; k >= 0; k--) {
      if (parent[k] >= 0) {
        next[k] = head[parent[k]];
        head[parent[k]] = k;
      }
    }
    int[] post = new int[n];
    int[] stack = new int[n];
    int done = 0;
    for (int root = 0; root < n; root++) {
      if (parent[root] >= 0) {
        continue;
      }
      int top = 0;
      stack[0] = root;
      while (top >= 0) {
        int at = stack[top];
        int child = head[at];
        if (child < 0) {
          post[done++] = at;
          top--;
        } else {
          head[at] = next[child];
          stack[++top] = child;
        }
      }
    }
    return post;
  }
}
