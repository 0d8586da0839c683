package org.stoutwork.report.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.stoutwork.quantity.Writing;
import org.stoutwork.wood.ClassProperty;
import org.stoutwork.wood.ClearProperty;
import org.stoutwork.wood.Property;
import org.stoutwork.wood.SheetGood;
import org.stoutwork.wood.SheetProperty;
import org.stoutwork.wood.Species;
import org.stoutwork.wood.StrengthClass;
import org.stoutwork.wood.Wood;

/** Short lists of woods, one line each, within 80 columns. */
final class WoodLists {

  private static final int WIDEST_NAME = 23;
  private static final int DIGITS = 3;

  private WoodLists() {}

  static List<String> lines(List<Wood> woods) {
    List<String> lines = new ArrayList<>();
    species(lines, woods.stream().filter(Species.class::isInstance).map(Species.class::cast));
    classes(
        lines,
        woods.stream().filter(StrengthClass.class::isInstance).map(StrengthClass.class::cast));
    sheets(lines, woods.stream().filter(SheetGood.class::isInstance).map(SheetGood.class::cast));
    lines.add("`stoutwork wood KEY` shows everything that is known of one, with its source.");
    return lines;
  }

  private static void species(List<String> lines, Stream<Species> all) {
    TextTable table = new TextTable("key", "name", "gravity", "bending", "modulus").leftColumns(2);
    all.forEach(
        one ->
            table.row(
                List.of(
                    one.key(),
                    name(one),
                    clear(one, ClearProperty.SPECIFIC_GRAVITY),
                    clear(one, ClearProperty.BENDING),
                    clear(one, ClearProperty.MODULUS))));
    end(lines, "Species: means of clear, air-dry wood (green in brackets); MPa", table);
  }

  private static String clear(Species one, ClearProperty what) {
    return one.clear()
        .dry(what)
        .map(WoodLists::number)
        .or(() -> one.clear().green(what).map(green -> "(" + number(green) + ")"))
        .orElse("");
  }

  private static void classes(List<String> lines, Stream<StrengthClass> all) {
    TextTable table = new TextTable("key", "kind", "density", "bending", "modulus").leftColumns(2);
    all.forEach(
        one ->
            table.row(
                List.of(
                    one.key(),
                    one.group().words(),
                    number(one.value(ClassProperty.DENSITY_MEAN)),
                    number(one.value(ClassProperty.BENDING)),
                    number(one.value(ClassProperty.MODULUS_MEAN)))));
    end(
        lines,
        "Strength classes: mean density kg/m³, characteristic bending, mean modulus; MPa",
        table);
  }

  private static void sheets(List<String> lines, Stream<SheetGood> all) {
    TextTable table =
        new TextTable("key", "product", "density", "bending", "modulus").leftColumns(2);
    all.forEach(
        one ->
            table.row(
                List.of(
                    one.key(),
                    one.product().words(),
                    number(one.value(SheetProperty.DENSITY_MEAN)),
                    number(one.value(SheetProperty.BENDING_ALONG)),
                    number(one.value(SheetProperty.MODULUS_ALONG)))));
    end(lines, "Sheets: mean density kg/m³, bending along, modulus along; MPa", table);
  }

  private static String name(Species wood) {
    String name = wood.name();
    return name.length() <= WIDEST_NAME ? name : name.substring(0, WIDEST_NAME - 1) + "…";
  }

  private static String number(Optional<Property> property) {
    return property.map(WoodLists::number).orElse("");
  }

  private static String number(Property property) {
    return Writing.number(property.value(), DIGITS).replace('\u00a0', ' ');
  }

  private static void end(List<String> lines, String title, TextTable table) {
    List<String> rows = table.lines();
    if (rows.size() > 1) {
      lines.add(title);
      lines.addAll(rows);
      lines.add("");
    }
  }
}
