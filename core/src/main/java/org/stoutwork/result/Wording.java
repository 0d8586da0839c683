package org.stoutwork.result;

/**
 * How demand and capacity of a check are put into words.
 *
 * @param least whether the demand is the least that is asked for, and the capacity what is there;
 *     otherwise the demand uses a part of the capacity
 * @param of what bare numbers are shares or multiples of, such as {@code of the strength}; empty
 *     where they have a unit
 */
public record Wording(boolean least, String of) {

  /** A part of the capacity is used. */
  public static final Wording USES = new Wording(false, "");

  /** A least measure is asked for. */
  public static final Wording NEEDS = new Wording(true, "");

  /** The demand is a sum of shares, and the capacity the share that may be used. */
  public static final Wording SHARE = new Wording(false, "of the strength");

  /** The verb of the demand: {@code needs} or {@code uses}. */
  public String verb() {
    return least ? "needs" : "uses";
  }

  /**
   * What stands after the verb: {@code 375 N of 211 N}, or {@code 36 mm, has 32 mm}.
   *
   * @param demand as it is written, with its unit
   * @param capacity as it is written, with its unit
   */
  public String after(String demand, String capacity) {
    return demand + (least ? ", has " : " of ") + capacity + (of.isEmpty() ? "" : " " + of);
  }
}
