package org.stoutwork.report.sheet.page;

import java.util.List;
import org.stoutwork.report.sheet.About;
import org.stoutwork.report.sheet.Paper;

/**
 * A sheet set on pages.
 *
 * @param about what the file says about itself
 * @param paper of every page
 * @param pages in order
 * @param tags of the structure, the root first, parents before children, in reading order
 * @param outline in order
 */
public record PagedSheet(
    About about, Paper paper, List<Page> pages, List<Tag> tags, List<Bookmark> outline) {

  /** Keeps its own copies. */
  public PagedSheet {
    pages = List.copyOf(pages);
    tags = List.copyOf(tags);
    outline = List.copyOf(outline);
  }
}
