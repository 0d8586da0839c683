package org.stoutwork.report.file.bench;

import org.stoutwork.bench.Bench;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/**
 * What a bench file says, completed.
 *
 * @param bench complete and checked; its defaults are listed by the keys of the file
 * @param woods the catalogue with the woods that the file brings along
 */
public record BenchFile(Bench bench, WoodCatalogue woods) {

  /** The number that files may carry as {@code schemaVersion}. */
  public static final int SCHEMA_VERSION = 1;
}
