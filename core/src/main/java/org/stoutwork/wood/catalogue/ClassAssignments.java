package org.stoutwork.wood.catalogue;

import java.util.List;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.Wood;

/**
 * The strength classes to which graded timber of a species is commonly assigned. A suggestion only:
 * the grade stamp on the timber decides. Immutable.
 */
public final class ClassAssignments {

  /**
   * A strength class to which a visual grade of a species is assigned.
   *
   * @param strengthClass key of the class
   * @param grade country and grade
   * @param source of the assignment
   */
  public record Assignment(String strengthClass, String grade, Source source) {

    /** The assignment in words. */
    public String words() {
      return "%s (%s; %s)".formatted(strengthClass, grade, source.line());
    }
  }

  private final Table table;

  private ClassAssignments() {
    table = Table.beside(Wood.class, "class-assignments.csv");
  }

  /** Reads the table. */
  public static ClassAssignments load() {
    return new ClassAssignments();
  }

  /** The assignments of a species, best known first; empty if none is recorded. */
  public List<Assignment> of(Species species) {
    return table.rows().stream()
        .filter(row -> row.required("key").equals(species.key()))
        .map(ClassAssignments::assignment)
        .toList();
  }

  private static Assignment assignment(Row row) {
    return new Assignment(row.required("class"), row.required("grade"), row.source());
  }
}
