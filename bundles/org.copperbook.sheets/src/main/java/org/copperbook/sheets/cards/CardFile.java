package org.copperbook.sheets.cards;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file of cards opened with a way of reading it: the first rows are known, the rest streams.
 *
 * @param file   the file
 * @param table  the table in it
 * @param format how it is read
 * @param sample its first rows
 */
public record CardFile(Path file, CardTable table, TableFormat format, List<TableRow> sample) {

    private static final int SAMPLE = 60;

    public CardFile {
        sample = List.copyOf(sample);
    }

    /** Opens a file and finds out how it is to be read. */
    public static CardFile open(Path file) throws UnreadableTableException {
        CardTable table = CardTable.open(file);
        return detected(file, table, table.detected());
    }

    /** The same file read another way; header row and decimal mark as given. */
    public CardFile as(TableFormat other) throws UnreadableTableException {
        return new CardFile(file, table, other, sample(table, other));
    }

    /** The same file read another way, header row and decimal mark found anew. */
    public CardFile detectedAs(TableFormat other) throws UnreadableTableException {
        return detected(file, table, other);
    }

    private static CardFile detected(Path file, CardTable table, TableFormat format) throws UnreadableTableException {
        List<TableRow> sample = sample(table, format);
        int header = HeaderGuess.headerRow(sample);
        List<TableRow> data = sample.stream().filter(r -> r.number() > header).toList();
        return new CardFile(file, table, format.withHeaderRow(header).withDecimal(HeaderGuess.decimal(data)), sample);
    }

    private static List<TableRow> sample(CardTable table, TableFormat format) throws UnreadableTableException {
        List<TableRow> rows = new ArrayList<>();
        table.read(format, row -> {
            rows.add(row);
            return rows.size() < SAMPLE;
        });
        return rows;
    }

    /** Titles of the columns; numbers where the table has no titles. */
    public List<String> headers() {
        List<String> headers = new ArrayList<>();
        TableRow titles = sample.stream().filter(r -> r.number() == format.headerRow()).findFirst().orElse(null);
        int width = sample.stream().filter(r -> r.number() >= format.headerRow()).mapToInt(CardFile::width).max()
                .orElse(0);
        for (int i = 0; i < width; i++) {
            String title = titles == null ? "" : titles.cell(i).text().strip();
            headers.add(title.isEmpty() ? CardWords.say("column.untitled", i + 1) : title);
        }
        return headers;
    }

    private static int width(TableRow row) {
        int width = row.cells().size();
        while (width > 0 && row.cell(width - 1).text().isBlank()) {
            width--;
        }
        return width;
    }

    /** The first row below the titles in which a column says something; empty when none of the sample does. */
    public String example(int column) {
        return sample.stream().filter(r -> r.number() > format.headerRow()).map(r -> r.cell(column).text())
                .filter(t -> !t.isBlank()).findFirst().orElse("");
    }

    /** Streams the rows below the titles; returns remarks on the table. */
    public List<String> rows(CardTable.Rows to) throws UnreadableTableException {
        return table.read(format, row -> row.number() <= format.headerRow() || to.take(row));
    }
}
