package org.stoutwork.report.file.field;

/**
 * A value that the file did not give and the program supplied. A sheet lists every one of them.
 *
 * @param keyPath the key that could have been given, such as {@code legs.material}
 * @param value the value taken, in words
 * @param why why this value, as a clause
 */
public record DefaultTaken(String keyPath, String value, String why) {}
