/**
 * Root of the report module. Nothing lives here: see the rooms below it, from {@code drawing}
 * (paper space) up to {@code command} (the only room that writes to the console).
 */
package org.stoutwork.report;
