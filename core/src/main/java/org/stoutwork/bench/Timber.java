package org.stoutwork.bench;

import java.util.Optional;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.grade.Growth;

/**
 * A wood as it is used in the bench.
 *
 * @param wood from the catalogue
 * @param growth how clean it is; counts for a species without a class
 * @param gradedAs the strength class that a species was graded as, if it was
 */
public record Timber(Wood wood, Growth growth, Optional<StrengthClass> gradedAs) {
  /** Whether any value of the wood is the maker's own. */
  public boolean hasOwnValues() {
    return wood instanceof Species species && species.hasOwnValues();
  }
}
