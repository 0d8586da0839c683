/**
 * Loads the tables of woods and finds a wood by the name a person gives it.
 *
 * <p>Start at {@link org.stoutwork.wood.catalogue.WoodCatalogue}; a search answers with a {@link
 * org.stoutwork.wood.catalogue.Lookup}: found, several candidates, or unknown with the nearest
 * names. What the tables leave out (elastic ratios, shrinkage) is filled here from the mean of the
 * genus or of the group, and the source of the value says so. Nothing is calculated here for a
 * moisture, a duration or a joint. Uses {@code quantity}, {@code source}, {@code table} and {@code
 * wood}.
 */
package org.stoutwork.wood.catalogue;
