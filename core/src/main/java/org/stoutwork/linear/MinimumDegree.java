package org.stoutwork.linear;

import java.util.BitSet;

/**
 * An elimination order that keeps fill small: the group with the fewest unknowns still attached to
 * it goes first, its neighbours become neighbours of each other.
 *
 * <p>Works on groups (the unknowns of one node) rather than on single unknowns; ties go to the
 * lower index, so the order is reproducible. Minimum-degree rule: Tinney and Walker (1967).
 */
public final class MinimumDegree {
  private MinimumDegree() {}

  /**
   * Order of the unknowns of {@code matrix}: position to unknown.
   *
   * @param group the group each unknown belongs to, numbered from 0
   */
  public static int[] order(SparseSymmetric matrix, int[] group) {
    int groups = 0;
    for (int g : group) {
      groups = Math.max(groups, g + 1);
    }
    int[] weight = new int[groups];
    for (int g : group) {
      weight[g]++;
    }
    int[] groupOrder = eliminate(neighbours(matrix, group, groups), weight);
    return expand(groupOrder, group);
  }

  private static BitSet[] neighbours(SparseSymmetric matrix, int[] group, int groups) {
    BitSet[] neighbours = new BitSet[groups];
    for (int g = 0; g < groups; g++) {
      neighbours[g] = new BitSet(groups);
    }
    for (int j = 0; j < matrix.size(); j++) {
      for (int p = matrix.columnStart(j); p < matrix.columnStart(j + 1); p++) {
        int a = group[matrix.row(p)];
        int b = group[j];
        if (a != b) {
          neighbours[a].set(b);
          neighbours[b].set(a);
        }
      }
    }
    return neighbours;
  }

  private static int[] eliminate(BitSet[] neighbours, int[] weight) {
    int groups = weight.length;
    int[] degree = new int[groups];
    for (int g = 0; g < groups; g++) {
      degree[g] = degree(neighbours[g], weight);
    }
    boolean[] gone = new boolean[groups];
    int[] order = new int[groups];
    for (int step = 0; step < groups; step++) {
      int best = -1;
      for (int g = 0; g < groups; g++) {
        if (!gone[g] && (best < 0 || degree[g] < degree[best])) {
          best = g;
        }
      }
      order[step] = best;
      gone[best] = true;
      BitSet clique = neighbours[best];
      for (int g = clique.nextSetBit(0); g >= 0; g = clique.nextSetBit(g + 1)) {
        neighbours[g].or(clique);
        neighbours[g].clear(g);
        neighbours[g].clear(best);
        degree[g] = degree(neighbours[g], weight);
      }
    }
    return order;
  }

  private static int degree(BitSet neighbours, int[] weight) {
    int sum = 0;
    for (int g = neighbours.nextSetBit(0); g >= 0; g = neighbours.nextSetBit(g + 1)) {
      sum += weight[g];
    }
    return sum;
  }

  private static int[] expand(int[] groupOrder, int[] group) {
    int[] place = new int[groupOrder.length];
    for (int k = 0; k < groupOrder.length; k++) {
      place[groupOrder[k]] = k;
    }
    int[] next = new int[groupOrder.length + 1];
    for (int g : group) {
      next[place[g] + 1]++;
    }
    for (int k = 0; k < groupOrder.length; k++) {
      next[k + 1] += next[k];
    }
    int[] order = new int[group.length];
    for (int unknown = 0; unknown < group.length; unknown++) {
      order[next[place[group[unknown]]]++] = unknown;
    }
    return order;
  }
}
