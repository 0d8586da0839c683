package org.stoutwork.check;

import java.util.List;
import org.stoutwork.wood.design.DesignQuantity;
import org.stoutwork.wood.design.Found;
import org.stoutwork.wood.time.DurationClass;
import org.stoutwork.working.Pad;

/** Says which values a basis lacks, so that a check is left out by name and never in silence. */
public final class MissingValues {

  private MissingValues() {}

  /** The first of the values that is missing, as a sentence; empty if all are there. */
  public static String of(Inquiry inquiry, String wood, List<DesignQuantity> needed) {
    for (DesignQuantity what : needed) {
      Found found = inquiry.strengths().explain(wood, DurationClass.SHORT, what, Pad.blank());
      if (found instanceof Found.Missing missing) {
        return missing.sentence();
      }
    }
    return "";
  }
}
