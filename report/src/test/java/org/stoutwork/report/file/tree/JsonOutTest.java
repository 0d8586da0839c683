package org.stoutwork.report.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonOutTest {

  @Test
  void the_layout_is_fixed() {
    String json =
        JsonOut.object(
            o ->
                o.put("schemaVersion", 1)
                    .put("title", "2\" \\ \n é")
                    .put("adequate", true)
                    .putNull("cause")
                    .numbers("at", 0.1, -3, 1e21)
                    .texts("checks", List.of("legs", "feet"))
                    .object("empty", e -> {})
                    .object("size", s -> s.put("width", 70.5))
                    .numberLists("points", List.of(new double[] {1, 2}, new double[] {3.5}))
                    .objects("parts", List.of("a", "b"), (p, name) -> p.put("name", name))
                    .objects("none", List.of(), (p, name) -> p.put("name", "x")));
    assertEquals(
        """
        {
          "schemaVersion": 1,
          "title": "2\\" \\\\ \\n é",
          "adequate": true,
          "cause": null,
          "at": [0.1, -3, 1e21],
          "checks": ["legs", "feet"],
          "empty": {},
          "size": {
            "width": 70.5
          },
          "points": [[1, 2], [3.5]],
          "parts": [
            {
              "name": "a"
            },
            {
              "name": "b"
            }
          ],
          "none": []
        }
        """,
        json);
  }

  @Test
  void what_is_not_finite_is_refused_with_its_key() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class, () -> JsonOut.object(o -> o.put("sag", Double.NaN)));
    assertEquals(
        "the value of \"sag\" is NaN; JSON holds finite numbers only", thrown.getMessage());
  }

  @Test
  void a_key_is_put_once() {
    assertThrows(
        IllegalArgumentException.class, () -> JsonOut.object(o -> o.put("a", 1).put("a", 2)));
  }

  @ParameterizedTest
  @CsvSource({
    "0.0, 0",
    "-0.0, 0",
    "11000, 11000",
    "2.0E-3, 0.002",
    "1.0E23, 1e23",
    "2.0E-5, 0.00002",
    "9.5E-6, 9.5e-6",
    "-1.25E-7, -1.25e-7",
    "1.0E15, 1e15",
    "123456789012345, 123456789012345",
    "4.9E-324, 4.9e-324",
    "1.7976931348623157E308, 1.7976931348623157e308",
    "2.2250738585072014E-308, 2.2250738585072014e-308",
    "0.1, 0.1"
  })
  void numbers_are_short(double value, String written) {
    assertEquals(written, ShortNumber.of(value));
  }

  @Property
  void every_finite_number_reads_back_as_itself(@ForAll double value) throws Exception {
    String written = ShortNumber.of(value);
    assertEquals(value + 0.0, Double.parseDouble(written));
    assertEquals(value + 0.0, new ObjectMapper().readTree(written).doubleValue());
    assertTrue(written.length() <= 25, written);
  }
}
