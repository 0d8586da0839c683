package org.stoutwork.report.file.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stoutwork.quantity.Length;
import org.stoutwork.quantity.Mass;
import org.stoutwork.report.file.field.FileReading.Outcome;
import org.stoutwork.report.file.tree.Limits;
import org.stoutwork.report.file.tree.SourceText;
import org.stoutwork.report.file.tree.UnreadableFile;

class FieldsTest {

  private static final String LEAST = "name: low\nleg: {width: 70 mm}\n";

  private static Outcome<Rack> read(String text) throws UnreadableFile {
    return FileReading.text(new SourceText("rack.yaml", text), Limits.STANDARD, Rack::read);
  }

  private static String refusal(String text) {
    return assertThrows(UnreadableFile.class, () -> read(text)).getMessage();
  }

  private static List<String> refusals(String text) {
    return refusal(text).lines().toList();
  }

  @Test
  void everything_given_is_read() throws UnreadableFile {
    Rack rack =
        read("""
                name: "2"
                remark: [not, read]
                duty: light
                count: 6
                wedged: yes
                slip: .5
                moisture: 9.5%
                load: 200 lb
                leg: {width: 2 3/4 in, depth: 3-1/8"}
                shelves: [18 mm, 0.75in]
                pegs:
                  a b: 10 mm
                """)
            .value();
    assertEquals("2", rack.name());
    assertEquals(Rack.Duty.LIGHT, rack.duty());
    assertEquals(6, rack.count());
    assertTrue(rack.wedged());
    assertEquals(0.5, rack.slip());
    assertEquals(9.5, rack.moisture());
    assertEquals(Optional.of(Mass.ofKg(90.718474)), rack.load());
    assertEquals(new Rack.Leg(Length.ofMm(69.85), Length.ofMm(79.375)), rack.leg());
    assertEquals(19.05, rack.shelves().get(1).mm(), 1e-12);
    assertEquals(Map.of("a b", Length.ofMm(10)), rack.pegs());
  }

  @Test
  void every_default_is_remembered_in_words_with_its_reason() throws UnreadableFile {
    assertEquals(
        List.of(
            new DefaultTaken("duty", "every-day", "the usual duty"),
            new DefaultTaken("count", "4", "racks have four legs"),
            new DefaultTaken("wedged", "no", "wedges are rare"),
            new DefaultTaken("slip", "0.25", "a fair joint"),
            new DefaultTaken("moisture", "12 %", "a heated room"),
            new DefaultTaken("leg.depth", "70 mm", "legs are square unless stated"),
            new DefaultTaken("shelves", "18.25 mm", "one board")),
        read(LEAST).defaults());
  }

  @Test
  void a_file_may_set_the_unit_of_bare_numbers() throws UnreadableFile {
    String text = "units: in\nname: low\nleg: {width: 2.5, depth: 2 3/4}\n";
    assertEquals(new Rack.Leg(Length.ofMm(63.5), Length.ofMm(69.85)), read(text).value().leg());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = FieldMessages.SCALARS)
  void a_wrong_scalar_is_explained(String key, String given, String sentence) {
    String text = LEAST + key + ": " + given + "\n";
    String column = ":3:" + (key.length() + 3) + "  ";
    assertEquals("rack.yaml" + column + key + " " + sentence, refusal(text));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = FieldMessages.LENGTHS)
  void a_wrong_length_is_explained(String given, String sentence) {
    assertEquals(
        "rack.yaml:2:14  leg.width " + sentence,
        refusal("name: low\nleg: {width: " + given + "}\n"));
  }

  @Test
  void all_mistakes_are_told_in_file_order() {
    String known = "known are name, duty, count, wedged, slip, moisture, load, leg, shelves, pegs.";
    assertEquals(
        List.of(
            "rack.yaml:1:1  name is missing; text is needed.",
            "rack.yaml:1:8  count is 9; a whole number from 1 to 8 is needed.",
            "rack.yaml:2:1  wieght is no key known here; " + known,
            "rack.yaml:4:3  leg.width is missing; a length such as `120 mm` or `4 3/4 in` from 20"
                + " mm to 203.2 mm is needed.",
            "rack.yaml:4:3  leg.with is no key known here; known are width, depth. Did you mean"
                + " \"width\"?",
            "rack.yaml:5:3  leg.wedged is no key known here; known are width, depth. \"wedged\""
                + " belongs one level up, beside \"leg\".",
            "rack.yaml:6:1  Depth is no key known here; "
                + known
                + " \"depth\" belongs one level down, in leg.",
            "rack.yaml:7:18  shelves[1] is \"2 mm\"; a length such as `120 mm` or `4 3/4 in` of at"
                + " least 6 mm is needed."),
        refusals(
            """
            count: 9
            wieght: 2
            leg:
              with: 70 mm
              wedged: no
            Depth: 3 mm
            shelves: [18 mm, 2 mm]
            """));
  }

  @Test
  void what_a_constructor_refuses_is_a_mistake_of_the_map() {
    assertEquals(
        "rack.yaml:2:6  leg cannot be used as it stands; depth 90.0 mm is over three widths; turn"
            + " the leg.",
        refusal("name: low\nleg: {width: 25 mm, depth: 90 mm}\n"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "2026 | is 2026; text is needed, in quotes if it looks like a number or like yes and no.",
        "yes | is yes; text is needed, in quotes if it looks like a number or like yes and no.",
        "\"\" | is \"\"; text is needed (at least one sign)."
      })
  void a_name_that_is_no_text_is_explained(String given, String sentence) {
    assertEquals(
        "rack.yaml:1:7  name " + sentence, refusal("name: " + given + "\nleg: {width: 70 mm}\n"));
  }

  @Test
  void a_value_of_another_kind_is_named() {
    assertEquals(
        List.of(
            "rack.yaml:1:7  name is a list; text is needed.",
            "rack.yaml:2:6  leg is \"thick\"; a map of keys is needed.",
            "rack.yaml:3:7  pegs is a list; a map of names is needed.",
            "rack.yaml:4:10  shelves is empty; a list is needed.",
            "rack.yaml:5:8  count is a map of keys; a whole number from 1 to 8 is needed."),
        refusals("name: [a]\nleg: thick\npegs: [1]\nshelves: ~\ncount: {a: 1}\n"));
  }

  @Test
  void a_condition_on_a_list_is_checked() {
    assertEquals(
        "rack.yaml:3:10  shelves is a list; a list of at most 3 lengths is needed.",
        refusal(LEAST + "shelves: [9 mm, 9 mm, 9 mm, 9 mm]\n"));
  }

  @Test
  void a_refused_alias_is_told_once_and_everything_else_as_well() {
    assertEquals(
        List.of(
            "rack.yaml:1:7  name is an alias (*); write the value out; aliases are not read.",
            "rack.yaml:2:6  leg is an alias (*); write the value out; aliases are not read.",
            "rack.yaml:3:8  count is 0; a whole number from 1 to 8 is needed."),
        refusals("name: *a\nleg: *b\ncount: 0\n"));
  }

  @Test
  void a_file_that_is_no_map_is_named() {
    assertEquals("rack.yaml:1:1  the file is a list; a map of keys is needed.", refusal("- a\n"));
  }

  @Test
  void a_mapping_that_forgets_to_say_why_is_a_fault_of_the_program() {
    assertThrows(
        IllegalStateException.class,
        () ->
            FileReading.text(
                new SourceText("rack.yaml", "a: 1"),
                Limits.STANDARD,
                fields -> {
                  fields.leaveRest();
                  return Got.nothing();
                }));
  }
}
