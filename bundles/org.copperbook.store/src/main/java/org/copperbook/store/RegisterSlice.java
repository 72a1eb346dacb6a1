package org.copperbook.store;

import java.util.List;

/**
 * A page of the register.
 *
 * @param total rows that fit the filter
 * @param rows  the rows of this page
 */
public record RegisterSlice(int total, List<RegisterRow> rows) {

    public RegisterSlice {
        rows = List.copyOf(rows);
    }
}
