package org.stoutwork.report.file.bench;

import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Unit;
import org.stoutwork.report.file.field.Field;
import org.stoutwork.report.file.field.Fields;
import org.stoutwork.report.file.field.Kind;
import org.stoutwork.report.file.field.Quantities;

/**
 * Reads lengths; bare numbers are in the unit of the file.
 *
 * @param bare the unit of bare numbers
 */
record Lengths(Unit bare) {

  /** A length above 0. */
  Field<Length> size(Fields fields, String key) {
    return fields.scalar(key, size());
  }

  /** As a kind, for the items of a list. */
  Kind<Length> size() {
    return Quantities.length().bareIn(bare).above(Length.ofMm(0)).kind();
  }

  /** A length of at least 0. */
  Field<Length> place(Fields fields, String key) {
    return fields.scalar(key, place());
  }

  /** As a kind, for the items of a list. */
  Kind<Length> place() {
    return Quantities.length().bareIn(bare).atLeast(Length.ofMm(0)).kind();
  }
}
