package org.copperbook.store;

import java.util.List;

/**
 * A page of the board.
 *
 * @param total jobs that were asked for
 * @param rows  the jobs of this page
 */
public record BoardSlice(int total, List<BoardRow> rows) {

    public BoardSlice {
        rows = List.copyOf(rows);
    }
}
