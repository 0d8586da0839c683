package org.stoutwork.report.sheet.page;

/**
 * A line of the outline.
 *
 * @param level 1 to 3
 * @param text of the heading
 * @param page number of its page
 * @param top height of its upper edge below the top of the paper, mm
 */
public record Bookmark(int level, String text, int page, double top) {}
