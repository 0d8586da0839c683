package org.stoutwork.report.sheet.math;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DigitsTest {

  @Test
  void whole_numbers_of_five_digits_and_more_are_parted() {
    assertEquals("412\u202f300 N·mm", Digits.grouped("412300 N·mm"));
    assertEquals("−12\u202f345\u202f678", Digits.grouped("−12345678"));
  }

  @Test
  void years_and_decimals_are_left_alone() {
    assertEquals("2010 0.123456 1340.56789", Digits.grouped("2010 0.123456 1340.56789"));
  }
}
