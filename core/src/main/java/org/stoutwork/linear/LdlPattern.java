package org.stoutwork.linear;

import java.util.Arrays;

/**
 * Everything about a factorisation that depends on where a matrix has entries and not on what they
 * are: the order of elimination, the groups of neighbouring columns with (nearly) one row list, and
 * which group changes which. Made once for a topology; immutable and safe to share.
 *
 * <p>Elimination tree and postorder: T. A. Davis, <em>Direct Methods for Sparse Linear Systems</em>
 * (SIAM, 2006), chapter 4. Column groups: C. Ashcraft and R. Grimes, ACM TOMS 15 (1989).
 */
public final class LdlPattern {
  /** Up to this many unknowns, groups are merged though a third of the entries becomes zeros. */
  private static final int SMALL = 200;

  private static final double ZEROS_WHEN_SMALL = 0.34;
  private static final double ZEROS = 0.12;

  final int size;
  final int[] order;

  /** First position of each group; one more entry closes the last. */
  final int[] first;

  /** Row positions of each group: its own columns, then those below. */
  final int[][] rows;

  /** Group that holds the first row below, or -1. */
  final int[] parentGroup;

  final int[] groupOf;

  /** For each group the earlier groups that change it: group, first row, row after the last. */
  final int[][] changes;

  final int longest;
  private final int structuralEntries;
  private final SparseSymmetric like;
  private final int[] entryColumn;
  private final int[] entryRow;

  /**
   * Analyses the places of {@code matrix}.
   *
   * @param wanted order of elimination, position to unknown, as {@link MinimumDegree} makes it;
   *     branches of the elimination tree are moved next to each other, which changes no fill
   */
  public static LdlPattern of(SparseSymmetric matrix, int[] wanted) {
    return of(matrix, wanted, wanted.length <= SMALL ? ZEROS_WHEN_SMALL : ZEROS);
  }

  /** The same without joining columns at the price of zeros, for {@link LdlLanes}. */
  static LdlPattern exact(SparseSymmetric matrix, int[] wanted) {
    return of(matrix, wanted, 0);
  }

  private static LdlPattern of(SparseSymmetric matrix, int[] wanted, double zeros) {
    ColumnTree first = new ColumnTree(matrix, wanted);
    int[] post = first.postorder();
    int[] order = new int[wanted.length];
    for (int k = 0; k < order.length; k++) {
      order[k] = wanted[post[k]];
    }
    return new LdlPattern(matrix, order, new ColumnTree(matrix, order), zeros);
  }

  private LdlPattern(SparseSymmetric matrix, int[] order, ColumnTree tree, double zeros) {
    this.size = order.length;
    this.order = order;
    this.like = matrix;
    this.structuralEntries = Arrays.stream(tree.count()).sum();
    this.first = groups(tree, zeros);
    int groups = first.length - 1;
    this.groupOf = new int[size];
    for (int g = 0; g < groups; g++) {
      Arrays.fill(groupOf, first[g], first[g + 1], g);
    }
    this.rows = rows(matrix, tree.place());
    this.parentGroup = new int[groups];
    int most = 0;
    for (int g = 0; g < groups; g++) {
      int width = first[g + 1] - first[g];
      parentGroup[g] = rows[g].length > width ? groupOf[rows[g][width]] : -1;
      most = Math.max(most, rows[g].length);
    }
    this.longest = most;
    this.changes = changes();
    this.entryColumn = new int[matrix.entries()];
    this.entryRow = new int[matrix.entries()];
    locate(matrix, tree.place());
  }

  /** Joins columns into groups as long as this adds few zeros. */
  private int[] groups(ColumnTree tree, double allowed) {
    int[] start = new int[size + 1];
    int[] width = new int[size + 1];
    long[] exact = new long[size + 1];
    int n = 0;
    int[] parent = tree.parent();
    int[] count = tree.count();
    for (int k = 0; k < size; k++) {
      start[n] = k;
      width[n] = 1;
      exact[n] = count[k] + 1L;
      n++;
      while (n > 1 && parent[start[n - 1] - 1] == start[n - 1]) {
        int joined = width[n - 2] + width[n - 1];
        long stored = joined * (joined + 1L) / 2 + (long) joined * count[k];
        long wanted = exact[n - 2] + exact[n - 1];
        if (stored - wanted > allowed * stored) {
          break;
        }
        width[n - 2] = joined;
        exact[n - 2] = wanted;
        n--;
      }
    }
    int[] first = Arrays.copyOf(start, n + 1);
    first[n] = size;
    return first;
  }

  private int[][] rows(SparseSymmetric matrix, int[] place) {
    int groups = first.length - 1;
    int[][] below = belowByColumn(matrix, place);
    int[][] found = new int[groups][];
    int[] mark = new int[size];
    Arrays.fill(mark, -1);
    int[][] children = new int[groups][0];
    for (int g = 0; g < groups; g++) {
      int[] list = new int[size - first[g]];
      int n = 0;
      for (int k = first[g]; k < first[g + 1]; k++) {
        list[n++] = k;
        mark[k] = g;
      }
      for (int k = first[g]; k < first[g + 1]; k++) {
        n = join(list, n, below[k], mark, g);
      }
      for (int child : children[g]) {
        n = join(list, n, found[child], mark, g);
      }
      found[g] = Arrays.copyOf(list, n);
      Arrays.sort(found[g]);
      int width = first[g + 1] - first[g];
      if (n > width) {
        int parent = groupOf[found[g][width]];
        children[parent] = Arrays.copyOf(children[parent], children[parent].length + 1);
        children[parent][children[parent].length - 1] = g;
      }
    }
    return found;
  }

  private int join(int[] list, int n, int[] more, int[] mark, int g) {
    int count = n;
    for (int r : more) {
      if (r >= first[g + 1] && mark[r] != g) {
        mark[r] = g;
        list[count++] = r;
      }
    }
    return count;
  }

  private static int[][] belowByColumn(SparseSymmetric matrix, int[] place) {
    int n = matrix.size();
    int[] count = new int[n];
    for (int j = 0; j < n; j++) {
      for (int p = matrix.columnStart(j); p < matrix.columnStart(j + 1); p++) {
        count[Math.min(place[matrix.row(p)], place[j])]++;
      }
    }
    int[][] below = new int[n][];
    for (int k = 0; k < n; k++) {
      below[k] = new int[count[k]];
      count[k] = 0;
    }
    for (int j = 0; j < n; j++) {
      for (int p = matrix.columnStart(j); p < matrix.columnStart(j + 1); p++) {
        int a = place[matrix.row(p)];
        int b = place[j];
        int k = Math.min(a, b);
        below[k][count[k]++] = Math.max(a, b);
      }
    }
    return below;
  }

  private int[][] changes() {
    int groups = first.length - 1;
    int[][] lists = new int[groups][0];
    for (int g = 0; g < groups; g++) {
      int[] r = rows[g];
      int at = first[g + 1] - first[g];
      while (at < r.length) {
        int target = groupOf[r[at]];
        int end = at;
        while (end < r.length && r[end] < first[target + 1]) {
          end++;
        }
        int[] longer = Arrays.copyOf(lists[target], lists[target].length + 3);
        longer[longer.length - 3] = g;
        longer[longer.length - 2] = at;
        longer[longer.length - 1] = end;
        lists[target] = longer;
        at = end;
      }
    }
    return lists;
  }

  private void locate(SparseSymmetric matrix, int[] place) {
    for (int j = 0; j < size; j++) {
      for (int p = matrix.columnStart(j); p < matrix.columnStart(j + 1); p++) {
        int a = place[matrix.row(p)];
        int b = place[j];
        int column = Math.min(a, b);
        entryColumn[p] = column;
        entryRow[p] = Arrays.binarySearch(rows[groupOf[column]], Math.max(a, b));
      }
    }
  }

  /** Column position in which the matrix entry {@code p} is kept. */
  int columnOf(int p) {
    return entryColumn[p];
  }

  /** Place of the matrix entry {@code p} within its column's strip. */
  int rowOf(int p) {
    return entryRow[p];
  }

  /** Whether a matrix has its entries exactly where this pattern expects them. */
  public boolean fits(SparseSymmetric matrix) {
    return matrix.hasPlacesOf(like);
  }

  /** Number of unknowns. */
  public int size() {
    return size;
  }

  /** Entries of L below its unit diagonal that are not zero for general numbers. */
  public int entries() {
    return structuralEntries;
  }

  /** Numbers kept for L and D, with the zeros that grouping adds. */
  public long storedNumbers() {
    long sum = 0;
    for (int g = 0; g + 1 < first.length; g++) {
      sum += (long) (first[g + 1] - first[g]) * rows[g].length;
    }
    return sum;
  }

  /** The order of elimination, position to unknown. */
  public int[] order() {
    return order.clone();
  }
}
