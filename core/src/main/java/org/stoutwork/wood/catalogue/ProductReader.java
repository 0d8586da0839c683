package org.stoutwork.wood.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stoutwork.source.Source;
import org.stoutwork.table.Row;
import org.stoutwork.table.Table;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.Product;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.SheetProperty;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;
import org.stoutwork.wood.WoodGroup;

/** Reads strength classes and sheet goods. */
final class ProductReader {

  private ProductReader() {}

  static List<StrengthClass> classes() {
    List<StrengthClass> classes = new ArrayList<>();
    for (Row row : Table.beside(Wood.class, "strength-classes.csv").rows()) {
      Map<ClassProperty, Property> values = new EnumMap<>(ClassProperty.class);
      Source source = row.source();
      for (ClassProperty what : ClassProperty.values()) {
        double value = row.requiredNumber(what.column()) * what.scale();
        values.put(what, new Property(value, what.unit(), source));
      }
      WoodGroup group = WoodGroup.named(row.required("group"));
      classes.add(new StrengthClass(row.required("key"), group, values));
    }
    return classes;
  }

  static List<SheetGood> sheets() {
    return Table.beside(Wood.class, "sheet-goods.csv").rows().stream()
        .map(ProductReader::sheet)
        .toList();
  }

  private static SheetGood sheet(Row row) {
    Map<SheetProperty, Property> values = new EnumMap<>(SheetProperty.class);
    for (SheetProperty what : SheetProperty.values()) {
      String mark = what.isDensity() ? "mark_density" : "mark";
      row.number(what.column())
          .ifPresent(
              v -> values.put(what, new Property(v * what.scale(), what.unit(), row.source(mark))));
    }
    return new SheetGood(
        row.required("key"),
        shownName(row),
        Product.named(row.required("product")),
        row.text("grade"),
        row.number("over_mm"),
        row.number("up_to_mm"),
        SheetGood.Basis.valueOf(row.required("basis").toUpperCase(Locale.ROOT)),
        values);
  }

  private static String shownName(Row row) {
    String name = row.required("name");
    String over = row.text("over_mm");
    String upTo = row.text("up_to_mm");
    if (upTo.isEmpty() || name.contains(" mm")) {
      return name;
    }
    return over.equals(upTo)
        ? "%s %s mm".formatted(name, upTo)
        : "%s, over %s to %s mm".formatted(name, over, upTo);
  }
}
