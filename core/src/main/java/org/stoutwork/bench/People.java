package org.stoutwork.bench;

/**
 * Who stands behind the sheet. Empty where nobody was named; the program fills in no name.
 *
 * @param prepared by whom the description was prepared
 * @param checked by whom it will be checked; somebody else
 * @param project what the bench belongs to
 * @param revision letter or number of the description
 * @param date of issue, as the maker wrote it
 */
public record People(
    String prepared, String checked, String project, String revision, String date) {}
