package org.copperbook.batch;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns as wide as their widest cell; very long cells are shortened. */
final class TextTable {

    private static final int WIDEST = 48;

    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... heads) {
        rows.add(List.of(heads));
    }

    void row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object c : cells) {
            row.add(c == null ? "" : shortened(OneLine.of(c.toString())));
        }
        rows.add(row);
    }

    private static String shortened(String cell) {
        return cell.length() <= WIDEST ? cell : cell.substring(0, WIDEST - 4).stripTrailing() + " ...";
    }

    void print(PrintStream out) {
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                String cell = row.get(i);
                line.append(cell).append(" ".repeat(width[i] - cell.length() + 2));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
