package org.copperbook.sheets.registers;

import java.util.List;

/**
 * What a table turned out to hold.
 *
 * @param rows    the rows understood, in order
 * @param refused why others are not; a row can have several reasons
 * @param remarks remarks on the table as a whole, one sentence each
 */
public record RegisterReading<T>(List<Understood<T>> rows, List<RefusedCell> refused, List<String> remarks) {

    public RegisterReading {
        rows = List.copyOf(rows);
        refused = List.copyOf(refused);
        remarks = List.copyOf(remarks);
    }

    /**
     * A row understood.
     *
     * @param row   row in the file, from 1
     * @param value what was made of it
     */
    public record Understood<T>(int row, T value) {
    }

    /** What was made of the rows. */
    public List<T> values() {
        return rows.stream().map(Understood::value).toList();
    }

    /** How many rows are refused. */
    public int refusedRows() {
        return (int) refused.stream().mapToInt(RefusedCell::row).distinct().count();
    }
}
