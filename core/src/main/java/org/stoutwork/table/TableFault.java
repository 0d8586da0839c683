package org.stoutwork.table;

/** A table that cannot be read: the message names the table, the line and what is wrong. */
public final class TableFault extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  TableFault(String table, int line, String what) {
    super("table %s, line %s: %s".formatted(table, line, what));
  }
}
