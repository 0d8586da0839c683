package org.stoutwork.wood;

import java.util.List;

/** A wood that a part of a bench can be made of. */
public sealed interface Wood permits Species, StrengthClass, SheetGood {

  /** The short name in files and tables, such as {@code oak-white}, {@code C24}. */
  String key();

  /** The name for people. */
  String name();

  /** Every name by which it may be asked for, the one for people first. */
  List<String> names();

  /** Which timber product it is. */
  Product product();

  /** What kind of entry this is, in words: species, strength class or sheet. */
  String kind();
}
