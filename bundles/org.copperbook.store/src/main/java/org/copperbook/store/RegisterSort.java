package org.copperbook.store;

import java.util.Objects;

/**
 * Order of the register.
 *
 * @param column    the column
 * @param ascending true for smallest first; rows without a value come last either way
 */
public record RegisterSort(RegisterColumn column, boolean ascending) {

    /** Newest number first, as a register is read. */
    public static final RegisterSort NEWEST_FIRST = new RegisterSort(RegisterColumn.NUMBER, false);

    public RegisterSort {
        Objects.requireNonNull(column, "column");
    }
}
