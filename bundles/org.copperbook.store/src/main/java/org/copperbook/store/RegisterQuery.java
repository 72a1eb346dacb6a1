package org.copperbook.store;

/**
 * A page of the register.
 *
 * @param text   words that must all appear in a row, in any column and any letter case; empty for every job
 * @param offset rows to skip, 0 or more
 * @param limit  rows wanted, 0 or more
 * @param sort   order, newest number first when null
 */
public record RegisterQuery(String text, int offset, int limit, RegisterSort sort) {

    public RegisterQuery {
        if (offset < 0 || limit < 0) {
            throw new IllegalArgumentException("offset and limit must not be negative: " + offset + ", " + limit);
        }
        text = text == null ? "" : text;
        sort = sort == null ? RegisterSort.NEWEST_FIRST : sort;
    }

    /** The first rows of every job, newest first. */
    public static RegisterQuery first(int limit) {
        return new RegisterQuery("", 0, limit, RegisterSort.NEWEST_FIRST);
    }
}
