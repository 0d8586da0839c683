package org.stoutwork.wood.time;

/** Duration of a load in allowable stress design (NDS Table 2.3.2), longest first. */
public enum UsDuration {
  PERMANENT("permanent"),
  TEN_YEARS("ten years"),
  TWO_MONTHS("two months"),
  SEVEN_DAYS("seven days"),
  TEN_MINUTES("ten minutes"),
  /** Not for connections. */
  IMPACT("impact");

  private final String key;

  UsDuration(String key) {
    this.key = key;
  }

  /** The duration as it is printed, and as the table calls it. */
  public String words() {
    return key;
  }
}
