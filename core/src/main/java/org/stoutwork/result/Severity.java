package org.stoutwork.result;

/** How bad the injury could be that a caution warns of, after ANSI Z535.4 and ISO 3864-2. */
public enum Severity {
  WARNING,
  CAUTION,
  NOTICE
}
