package org.stoutwork.report.file.tree;

/**
 * Counts slips of the finger between two words: a letter left out, put in, exchanged, or swapped
 * with its neighbour (the Damerau-Levenshtein distance in its optimal string alignment form).
 */
final class Slips {

  private Slips() {}

  static int between(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int exchange = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + exchange);
        if (isSwap(a, i, b, j)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      int[] spare = beforeLast;
      beforeLast = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }

  private static boolean isSwap(String a, int i, String b, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
