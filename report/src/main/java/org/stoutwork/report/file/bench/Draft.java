package org.stoutwork.report.file.bench;

import org.stoutwork.bench.sketch.BenchSketch;
import org.stoutwork.wood.catalogue.WoodCatalogue;

/**
 * What was understood of a file, with gaps where mistakes were noted.
 *
 * @param sketch of the bench
 * @param woods the catalogue with the file's own woods
 * @param places where the parts of the sketch stand in the file
 */
record Draft(BenchSketch sketch, WoodCatalogue woods, Places places) {}
