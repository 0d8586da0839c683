package org.stoutwork.report.file.field;

/** What is said about wrong scalars, word by word. */
final class FieldMessages {

  /** Key, what is written, the sentence. */
  static final String SCALARS =
      """
      slip | .nan | is .nan; a number from 0 to 1 is needed (it must be finite).
      slip | -.inf | is -.inf; a number from 0 to 1 is needed (it must be finite).
      slip | Infinity | is "Infinity"; a number from 0 to 1 is needed (it must be finite).
      slip | 1e999 | is 1e999; a number from 0 to 1 is needed (it is too large to be calculated with).
      slip | 1e-999 | is 1e-999; a number from 0 to 1 is needed (it is too small to be calculated with).
      slip | 01 | is 01; a number from 0 to 1 is needed (some readers take a leading 0 for a number to base eight). Did you mean 1?
      slip | 0x1 | is 0x1; a number from 0 to 1 is needed (numbers to other bases than ten are not read).
      slip | 0b1 | is 0b1; a number from 0 to 1 is needed (numbers to other bases than ten are not read).
      slip | 0o7 | is "0o7"; a number from 0 to 1 is needed (numbers to other bases than ten are not read).
      slip | 1_0 | is 1_0; a number from 0 to 1 is needed (underscores in numbers are not read). Did you mean 10?
      slip | 0,5 | is "0,5"; a number from 0 to 1 is needed (commas are not read; write a decimal point). Did you mean 0.5?
      slip | 1,500 | is "1,500"; a number from 0 to 1 is needed (commas are not read; write a decimal point).
      slip | 1,5,0 | is "1,5,0"; a number from 0 to 1 is needed (commas are not read; write a decimal point).
      slip | 0:30 | is "0:30"; a number from 0 to 1 is needed (some readers take a colon for a number to base sixty).
      slip | 0.5 mm | is "0.5 mm"; a number from 0 to 1 is needed (no unit is written here).
      slip | half | is "half"; a number from 0 to 1 is needed.
      slip | "0.5" | is "0.5"; a number from 0 to 1 without quotes is needed. Did you mean 0.5?
      slip | 1.5 | is 1.5; a number from 0 to 1 is needed.
      slip | -0.1 | is -0.1; a number from 0 to 1 is needed.
      slip | yes | is yes; a number from 0 to 1 is needed.
      slip | null | is empty; a number from 0 to 1 is needed.
      count | 2.0 | is 2.0; a whole number from 1 to 8 is needed. Did you mean 2?
      count | 2.5 | is 2.5; a whole number from 1 to 8 is needed.
      count | 99999999999999999999 | is 99999999999999999999; a whole number from 1 to 8 is needed.
      count | four | is "four"; a whole number from 1 to 8 is needed.
      count | 1e0 | is 1e0; a whole number from 1 to 8 is needed. Did you mean 1?
      duty | everyDay | is "everyDay"; light or every-day is needed. Did you mean "every-day"?
      duty | Light | is "Light"; light or every-day is needed. Did you mean "light"?
      duty | heavy | is "heavy"; light or every-day is needed.
      duty | 12 | is 12; light or every-day is needed.
      duty | [] | is a list; light or every-day is needed.
      wedged | on | is on; yes or no (or true, false) is needed. Did you mean yes?
      wedged | Yes | is Yes; yes or no (or true, false) is needed. Did you mean yes?
      wedged | 1 | is 1; yes or no (or true, false) is needed. Did you mean yes?
      wedged | "yes" | is "yes"; yes or no (or true, false) without quotes is needed. Did you mean yes?
      wedged | maybe | is "maybe"; yes or no (or true, false) is needed.
      moisture | 12 | is 12; a moisture content from 4 % to 30 % is needed (write the percent sign). Did you mean "12 %"?
      moisture | 0.12 | is 0.12; a moisture content from 4 % to 30 % is needed (write the percent sign).
      moisture | 45 % | is "45 %"; a moisture content from 4 % to 30 % is needed.
      moisture | 12,5 % | is "12,5 %"; a moisture content from 4 % to 30 % is needed (commas are not read; write a decimal point). Did you mean "12.5 %"?
      moisture | dry | is "dry"; a moisture content from 4 % to 30 % is needed (write the percent sign).
      load | 90 | is 90; a mass such as `90 kg` or `200 lb` above 0 kg is needed (it has no unit; write one, such as kg). Did you mean "90 kg"?
      load | 90 mm | is "90 mm"; a mass such as `90 kg` or `200 lb` above 0 kg is needed (mm does not measure this; a unit such as kg does).
      load | 0 kg | is "0 kg"; a mass such as `90 kg` or `200 lb` above 0 kg is needed.
      load | -5 kg | is "-5 kg"; a mass such as `90 kg` or `200 lb` above 0 kg is needed.
      """;

  /** What is written for a length, the sentence. */
  static final String LENGTHS =
      """
      9 mum | is "9 mum"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed ("mum" is no unit known here). Did you mean "9 mm"?
      70 | is 70; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (it has no unit; write one, such as mm). Did you mean "70 mm"?
      "70" | is "70"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (it has no unit; write one, such as mm). Did you mean "70 mm"?
      "70,5 mm" | is "70,5 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (commas are not read; write the decimal point as in 2.5). Did you mean "70.5 mm"?
      "1,500 mm" | is "1,500 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (commas are not read; write the decimal point as in 2.5).
      070 mm | is "070 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (a number does not begin with 0 unless a decimal point follows).
      2 3/0 in | is "2 3/0 in"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (a fraction cannot have 0 below the line).
      70 kg | is "70 kg"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (kg does not measure this; a unit such as mm does).
      seventy | is "seventy"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (it is not a number with a unit).
      1e999 mm | is "1e999 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (the number is too large to be real).
      nan mm | is "nan mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (it is not a number with a unit).
      5 mm | is "5 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed.
      9 in | is "9 in"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed.
      0x46 mm | is "0x46 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed ("x46 mm" is no unit known here).
      7_0 mm | is "7_0 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed ("_0 mm" is no unit known here).
      2 3/4 inn | is "2 3/4 inn"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed ("inn" is no unit known here). Did you mean "2 3/4 in"?
      1:30 mm | is "1:30 mm"; a length such as `120 mm` or `4 3/4 in` from 20 mm to 203.2 mm is needed (":30 mm" is no unit known here).
      """;

  private FieldMessages() {}
}
