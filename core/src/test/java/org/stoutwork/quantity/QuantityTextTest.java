package org.stoutwork.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "70 mm | 70",
        "70mm | 70",
        "7.25 cm | 72.5",
        "2 3/4 in | 69.85",
        "2-3/4\" | 69.85",
        "3/8 in | 9.525",
        "1 ft | 304.8",
        "5 ft 6 in | 1676.4",
        "5' 6 1/2\" | 1689.1",
        "2ft-3in | 685.8",
        "3 feet 0.5 inches | 927.1",
        "1.2e3 mm | 1200",
        "-4 mm | -4",
        "−4 mm | -4",
        ".5 in | 12.7"
      })
  void lengths_are_read_as_people_write_them(String text, double mm) {
    assertEquals(mm, Length.parse(text).mm(), 1e-12 * Math.abs(mm));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,5 mm | commas are not read; write the decimal point as in 2.5",
        "010 mm | a number does not begin with 0 unless a decimal point follows",
        "70 | it has no unit; write one, such as mm",
        "70 kg | kg does not measure this; a unit such as mm does",
        "70 mum | \"mum\" is no unit known here",
        "wide | it is not a number with a unit",
        "NaN mm | it is not a number with a unit",
        "1e999 mm | the number is too large to be real",
        "1/0 in | a fraction cannot have 0 below the line",
        "0x10 mm | \"x10 mm\" is no unit known here",
        "1_000 mm | \"_000 mm\" is no unit known here",
        "5 ft 6 | \"ft 6\" is no unit known here",
        "5 ft 6 ft | \"ft 6 ft\" is no unit known here",
        "1:30 mm | \":30 mm\" is no unit known here"
      })
  void what_is_no_length_is_refused_with_the_reason(String text, String reason) {
    assertEquals(reason, assertThrows(QuantityFault.class, () -> Length.parse(text)).getMessage());
  }

  @Test
  void a_bare_number_takes_the_declared_unit() {
    assertEquals(50.8, QuantityText.read("2", Unit.MM, Optional.of(Unit.IN)), 1e-12);
  }

  @Test
  void other_kinds_are_read_in_their_own_units() {
    assertEquals(889.64432305, Force.parse("200 lbf").newtons(), 1e-8);
    assertEquals(1.2, LineLoad.parse("1.2 kN/m").nPerMm(), 1e-12);
    assertEquals(11000, Stress.parse("11 GPa").mpa(), 1e-9);
    assertEquals(12000, Moment.parse("12 N*m").nmm(), 1e-9);
    assertEquals(15e6, RotationalStiffness.parse("15 kNm/rad").nmmPerRad(), 1e-6);
    assertEquals(Math.PI / 30, Angle.parse("6 deg").rad(), 1e-15);
    assertEquals(5, Stress.parse("5 N/mm^2").mpa(), 1e-12);
  }

  @Property
  void there_and_back_through_inches_changes_nothing(
      @ForAll @DoubleRange(min = 0.01, max = 1e5) double mm) {
    assertEquals(mm, Length.of(Length.ofMm(mm).in(Unit.IN), Unit.IN).mm(), 1e-12 * mm);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1340.4|3|1340",
        "0.012345|3|0.0123",
        "-2.5|3|−2.5",
        "0|3|0",
        "12.0|3|12",
        "4.1e10|3|4.1·10¹⁰"
      })
  void numbers_are_written_to_significant_digits(double value, int digits, String text) {
    assertEquals(text, Writing.number(value, digits));
  }

  @Test
  void a_number_beside_its_limit_stays_on_its_side() {
    assertEquals("1.50", Writing.onItsSide(1.5, 1.5));
    assertEquals("1.4996", Writing.onItsSide(1.4996, 1.5));
    assertEquals("1.497", Writing.onItsSide(1.497, 1.5));
    assertEquals("1.4999", Writing.onItsSide(1.4999999999999998, 1.5));
    assertEquals("2.37", Writing.onItsSide(2.3749, 1.5));
  }
}
