package org.copperbook.sheets.registers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.IntPredicate;
import org.apache.poi.ss.util.CellReference;
import org.copperbook.sheets.cards.CardFile;
import org.copperbook.sheets.cards.HeaderGuess;
import org.copperbook.sheets.cards.TableCell;
import org.copperbook.sheets.cards.TableFormat;
import org.copperbook.sheets.cards.TableRow;
import org.copperbook.sheets.cards.UnreadableTableException;

/**
 * A workbook or text file opened for a register: how it is read and which column is which were guessed and can be changed.
 * Nothing is taken in here; whoever reads it decides what becomes of the rows.
 *
 * @param file    the file with a way of reading it
 * @param shape   the register
 * @param mapping which column is which
 */
public record RegisterImport(CardFile file, RegisterShape shape, RegisterMapping mapping) {

    private static final int LOOK = 25;
    private static final int SHOWN = 60;

    /** Makes of a row what the register keeps, or refuses it. */
    @FunctionalInterface
    public interface Maker<T> {
        T make(RegisterRow row) throws RowRefusedException;
    }

    /**
     * Opens a file and guesses how it is to be read.
     *
     * @throws UnreadableTableException when it is none that can be read, or larger than is allowed
     */
    public static RegisterImport open(Path file, RegisterShape shape) throws UnreadableTableException {
        CardFile opened = CardFile.open(file);
        return guessed(opened, opened.format(), shape);
    }

    /** The same file read another way (sheet, character set, separator); titles and columns are guessed anew. */
    public RegisterImport as(TableFormat other) throws UnreadableTableException {
        return guessed(file.as(other), other, shape);
    }

    /** The same file with the titles in another row, 0 for none; columns are guessed anew. */
    public RegisterImport withHeaderRow(int row) throws UnreadableTableException {
        CardFile next = file.as(file.format().withHeaderRow(row));
        return new RegisterImport(next, shape, RegisterMapping.guess(next.headers(), shape));
    }

    /** The same file with columns meant otherwise. */
    public RegisterImport with(RegisterMapping other) {
        return new RegisterImport(file, shape, other);
    }

    private static RegisterImport guessed(CardFile opened, TableFormat format, RegisterShape shape)
            throws UnreadableTableException {
        int header = headerRow(opened.sample(), shape);
        List<TableRow> data = opened.sample().stream().filter(r -> r.number() > header).toList();
        CardFile file = opened.as(format.withHeaderRow(header).withDecimal(HeaderGuess.decimal(data)));
        return new RegisterImport(file, shape, RegisterMapping.guess(file.headers(), shape));
    }

    /** The first of those rows in which most titles are understood; the first row when none is. */
    private static int headerRow(List<TableRow> sample, RegisterShape shape) {
        int best = sample.isEmpty() ? 0 : sample.get(0).number();
        long most = 0;
        for (TableRow row : sample.subList(0, Math.min(LOOK, sample.size()))) {
            List<String> titles = row.cells().stream().map(TableCell::text).toList();
            long known = RegisterMapping.guess(titles, shape).keys().stream().filter(k -> !k.isEmpty()).count();
            if (known > most) {
                most = known;
                best = row.number();
            }
        }
        return best;
    }

    /**
     * Reads every row. A row with anything in it that is not understood is refused with every reason; so is one that a row
     * before it stands for already.
     *
     * @param maker makes of an understood row what the register keeps
     * @param goOn  asked with the number of rows read so far; false stops
     * @throws CancellationException    when it was stopped
     * @throws UnreadableTableException when the file cannot be read to its end
     * @throws IllegalStateException    when the mapping has problems
     */
    public <T> RegisterReading<T> read(Maker<T> maker, IntPredicate goOn) throws UnreadableTableException {
        List<String> problems = mapping.problems(shape);
        if (!problems.isEmpty()) {
            throw new IllegalStateException(String.join(" ", problems));
        }
        CellValue cells = new CellValue(file.format().decimal());
        List<RegisterReading.Understood<T>> rows = new ArrayList<>();
        List<RefusedCell> refused = new ArrayList<>();
        Map<List<String>, Integer> seen = new HashMap<>();
        int[] count = {0};
        List<String> remarks = file.rows(row -> {
            if (!goOn.test(count[0]++)) {
                throw new CancellationException(RegisterWords.say("stopped"));
            }
            int before = refused.size();
            RegisterRow understood = understood(row, cells, refused);
            if (refused.size() == before) {
                twice(understood, seen, refused);
            }
            if (refused.size() == before) {
                try {
                    rows.add(new RegisterReading.Understood<>(row.number(), maker.make(understood)));
                } catch (RowRefusedException e) {
                    refused.add(refused(row, mapping.keys().indexOf(e.key()), e.getMessage()));
                }
            }
            return true;
        });
        return new RegisterReading<>(rows, refused, remarks);
    }

    private RegisterRow understood(TableRow row, CellValue cells, List<RefusedCell> refused) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < mapping.keys().size(); i++) {
            RegisterField field = shape.field(mapping.keys().get(i)).orElse(null);
            TableCell cell = row.cell(i);
            if (field == null) {
                continue;
            }
            if (cell.text().isBlank() && cell.kind() != TableCell.Kind.BROKEN) {
                if (field.required()) {
                    refused.add(refused(row, i, RegisterWords.say("cell.needed", field.label())));
                }
                continue;
            }
            try {
                values.put(field.key(), cells.read(field, cell));
            } catch (CellValue.NotUnderstood e) {
                refused.add(refused(row, i, e.getMessage()));
            }
        }
        return new RegisterRow(row.number(), values);
    }

    /** Refuses a row for which another stands already; letter case does not make a difference. */
    private void twice(RegisterRow row, Map<List<String>, Integer> seen, List<RefusedCell> refused) {
        if (shape.unique().isEmpty()) {
            return;
        }
        List<String> key = shape.unique().stream().map(k -> String.valueOf(row.values().getOrDefault(k, "")).strip()
                .toLowerCase(Locale.ROOT)).toList();
        Integer first = seen.putIfAbsent(key, row.number());
        if (first != null) {
            refused.add(new RefusedCell(row.number(), "", "", "", RegisterWords.say("row.twice", Integer.toString(first))));
        }
    }

    private RefusedCell refused(TableRow row, int column, String reason) {
        if (column < 0) {
            return new RefusedCell(row.number(), "", "", "", reason);
        }
        String text = row.cell(column).kind() == TableCell.Kind.BROKEN ? "" : row.cell(column).text().strip();
        return new RefusedCell(row.number(), CellReference.convertNumToColString(column) + row.number(),
                mapping.titles().get(column), text.length() > SHOWN ? text.substring(0, SHOWN) + "\u2026" : text, reason);
    }
}
