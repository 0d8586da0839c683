package org.stoutwork.result;

/**
 * Something that a reader must know before the bench is built or used.
 *
 * @param code stable name, such as {@code C-30}
 * @param severity of what could happen
 * @param message hazard, consequence, what to do
 */
public record Caution(String code, Severity severity, String message) {}
