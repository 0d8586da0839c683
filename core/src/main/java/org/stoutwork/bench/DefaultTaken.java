package org.stoutwork.bench;

/**
 * A value that the maker did not give.
 *
 * @param key where it would stand in a description
 * @param value that was taken, in words
 * @param reason the rule that gave it
 */
public record DefaultTaken(String key, String value, String reason) {}
