package org.copperbook.desk.grid;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.copperbook.desk.document.CellEdit;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.document.PartTree;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.form.Note;
import org.copperbook.jobs.PartKey;

/**
 * What a grid shows and does, without a widget: rows of a list of a part, cells as texts, blocks in and out. A grid
 * that grows shows one empty row more than the list has; typing there makes it a row.
 */
public final class GridModel {

    private final JobDocument document;
    private final PartKey key;
    private final String list;
    private final List<GridColumn> columns;
    private final List<JsonPointer> places;
    private Predicate<JsonNode> where = row -> true;
    private Supplier<ObjectNode> newRow;
    private boolean open = true;
    private JsonNode indexed;
    private List<Integer> shown = List.of();

    public GridModel(JobDocument document, PartKey key, String list, List<GridColumn> columns) {
        this.document = document;
        this.key = key;
        this.list = list;
        this.columns = List.copyOf(columns);
        this.places = columns.stream()
                .map(c -> c.isEditable() ? JsonPointer.compile(c.pointer()) : JsonPointer.empty()).toList();
    }

    /** Shows only some rows of the list. */
    public void where(Predicate<JsonNode> rows) {
        where = rows;
        indexed = null;
    }

    /** Lets the grid grow by rows that begin like this. */
    public void newRow(Supplier<ObjectNode> row) {
        newRow = row;
    }

    public List<GridColumn> columns() {
        return columns;
    }

    /** Whether rows can be added and removed. */
    public boolean grows() {
        return newRow != null;
    }

    /** Says whether the grid can be typed into now; one that cannot offers no empty row. */
    public void open(boolean now) {
        open = now;
    }

    /** Rows shown, with the empty one at the end of a grid that grows and is open. */
    public int rows() {
        return indices().size() + (grows() && open ? 1 : 0);
    }

    /** Rows that the record has. */
    public int filled() {
        return indices().size();
    }

    /** The record's row behind a row shown; a missing node for the empty one. */
    public JsonNode row(int row) {
        List<Integer> indices = indices();
        return row < indices.size() ? indexed.path(indices.get(row)) : MissingNode.getInstance();
    }

    /** JSON pointer of a row. */
    public String rowPointer(int row) {
        List<Integer> indices = indices();
        return list + "/" + (row < indices.size() ? indices.get(row) : document.rows(key, list).size());
    }

    /** JSON pointer of a cell. */
    public String pointer(int row, int column) {
        return rowPointer(row) + columns.get(column).pointer();
    }

    /** The row shown to which a JSON pointer leads, or -1. */
    public int rowOf(String pointer) {
        if (!pointer.startsWith(list + "/")) {
            return -1;
        }
        String rest = pointer.substring(list.length() + 1);
        int slash = rest.indexOf('/');
        try {
            int index = Integer.parseInt(slash < 0 ? rest : rest.substring(0, slash));
            return indices().indexOf(index);
        } catch (NumberFormatException e) {
            return -1;
        }
    }

    /**
     * The row shown that is nearest to where a JSON pointer leads, for a place whose row is gone; -1 when the place is in
     * another list or no row is left.
     */
    public int nearestRowOf(String pointer) {
        if (!pointer.startsWith(list + "/")) {
            return -1;
        }
        try {
            int index = Integer.parseInt(pointer.substring(list.length() + 1).split("/", 2)[0]);
            int before = (int) indices().stream().filter(i -> i < index).count();
            return Math.min(before, rows() - 1);
        } catch (NumberFormatException e) {
            return -1;
        }
    }

    /** The column beside another that can be typed into, to the right (1) or to the left (-1); -1 when there is none. */
    public int typedBeside(int column, int way) {
        int c = column + way;
        while (c >= 0 && c < columns.size() && !columns.get(c).isEditable()) {
            c += way;
        }
        return c < columns.size() ? Math.max(-1, c) : -1;
    }

    /** The column to which a JSON pointer leads, or 0 when it names the row only. */
    public int columnOf(String pointer) {
        int row = rowOf(pointer);
        for (int c = 0; row >= 0 && c < columns.size(); c++) {
            String cell = pointer(row, c);
            if (pointer.equals(cell) || pointer.startsWith(cell + "/")) {
                return c;
            }
        }
        return 0;
    }

    /**
     * Whether what a JSON pointer leads to is shown in a row: the row itself or one of its columns. What belongs to a
     * field of the row without a column here is shown by the other grid over the same list.
     */
    public boolean concerns(String pointer, int row) {
        String at = rowPointer(row);
        if (pointer.equals(at)) {
            return true;
        }
        return pointer.startsWith(at + "/") && columns.stream().filter(GridColumn::isEditable).map(c -> at + c.pointer())
                .anyMatch(cell -> pointer.equals(cell) || pointer.startsWith(cell + "/")
                        || cell.startsWith(pointer + "/"));
    }

    /** The text of a cell: as typed when it was not understood. */
    public String text(int row, int column) {
        GridColumn c = columns.get(column);
        if (row >= filled()) {
            return "";
        }
        if (!c.isEditable()) {
            String text = c.computed().apply(row(row));
            return text == null ? "" : text;
        }
        Optional<String> typed = hasTyped() ? document.typed(key, pointer(row, column)) : Optional.empty();
        return typed.orElseGet(() -> c.entry().show(row(row).at(places.get(column))));
    }

    /** Whether any text of the part was not understood; most often none was, and no cell needs to be asked. */
    private boolean hasTyped() {
        return !document.draft(key).asTyped().isEmpty();
    }

    /** The list of indices behind the rows shown; another object when the list has changed. */
    Object shownRows() {
        return indices();
    }

    /** What is to be said beside a cell. */
    public Note note(int row, int column) {
        GridColumn c = columns.get(column);
        if (!c.isEditable() || !hasTyped() || row >= filled()) {
            return new Note.None();
        }
        Optional<String> typed = document.typed(key, pointer(row, column));
        if (typed.isEmpty()) {
            return new Note.None();
        }
        Typed read = c.entry().read(typed.get());
        if (read instanceof Typed.Wrong w) {
            return new Note.Problem(w.why());
        }
        if (read instanceof Typed.Ambiguous a) {
            return new Note.Question(a.question(), a.answers());
        }
        Optional<String> problem = read instanceof Typed.Understood u ? wouldNotFit(row, column, u) : Optional.empty();
        return problem.<Note>map(Note.Problem::new).orElseGet(Note.None::new);
    }

    /** Puts a text into a cell as one undo step; typing into the empty row makes it a row. */
    public void type(int row, int column, String text) {
        GridColumn c = columns.get(column);
        if (!c.isEditable() || text.equals(text(row, column))) {
            return;
        }
        put(row, column, List.of(List.of(text)));
    }

    /** Puts the answer to a question into a cell. */
    public void answer(int row, int column, Typed.Understood answer) {
        String pointer = pointer(row, column);
        JsonNode value = columns.get(column).entry().over(document.value(key, pointer), answer.node());
        document.putBlock(key, pointer, t -> t, List.of(new CellEdit(pointer, value, null, answer.echo())));
    }

    /**
     * Puts a block with its first cell at a place, as one undo step. Rows are added where the grid grows; what does not
     * fit stays in its cell as typed.
     *
     * @return cells that did not fit
     */
    public int paste(int row, int column, PastedBlock block) {
        return put(row, column, block.rows());
    }

    /** Copies the cells of the first row of a range down to its last. */
    public void fillDown(int from, int to, int fromColumn, int toColumn) {
        List<List<String>> rows = new ArrayList<>();
        for (int r = from + 1; r <= Math.min(to, filled() - 1); r++) {
            List<String> cells = new ArrayList<>();
            for (int c = fromColumn; c <= toColumn; c++) {
                cells.add(text(from, c));
            }
            rows.add(cells);
        }
        if (!rows.isEmpty()) {
            put(from + 1, fromColumn, rows);
        }
    }

    /** Clears the cells of a range. */
    public void clear(int from, int to, int fromColumn, int toColumn) {
        List<List<String>> rows = new ArrayList<>();
        for (int r = from; r <= Math.min(to, filled() - 1); r++) {
            rows.add(java.util.Collections.nCopies(toColumn - fromColumn + 1, ""));
        }
        if (!rows.isEmpty()) {
            put(from, fromColumn, rows);
        }
    }

    /** The cells of a range as they are shown. */
    public CopiedBlock copy(int from, int to, int fromColumn, int toColumn) {
        List<List<String>> rows = new ArrayList<>();
        for (int r = from; r <= to; r++) {
            List<String> cells = new ArrayList<>();
            for (int c = fromColumn; c <= toColumn; c++) {
                cells.add(text(r, c));
            }
            rows.add(cells);
        }
        return new CopiedBlock(rows);
    }

    /** All rows shown, headings first. */
    public CopiedBlock copyAll() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(columns.stream().map(GridColumn::oneLine).toList());
        rows.addAll(copy(0, filled() - 1, 0, columns.size() - 1).rows());
        return new CopiedBlock(rows);
    }

    /** Adds a row before a row shown. */
    public void addRow(int before) {
        if (grows()) {
            List<Integer> indices = indices();
            int at = before < indices.size() ? indices.get(before) : document.rows(key, list).size();
            document.insertRow(key, list, at, newRow.get());
        }
    }

    /** Removes a row. */
    public void removeRow(int row) {
        List<Integer> indices = indices();
        if (grows() && row < indices.size()) {
            document.removeRow(key, list, indices.get(row));
        }
    }

    private int put(int row, int column, List<List<String>> texts) {
        int size = document.rows(key, list).size();
        int added = grows() ? Math.max(0, row + texts.size() - filled()) : 0;
        List<Integer> indices = new ArrayList<>(indices());
        for (int i = 0; i < added; i++) {
            indices.add(size + i);
        }
        List<CellEdit> edits = new ArrayList<>();
        for (int r = 0; r < texts.size() && row + r < indices.size(); r++) {
            List<String> cells = texts.get(r);
            for (int c = 0; c < cells.size() && column + c < columns.size(); c++) {
                GridColumn col = columns.get(column + c);
                if (col.isEditable()) {
                    edits.add(edit(list + "/" + indices.get(row + r) + col.pointer(), col, cells.get(c)));
                }
            }
        }
        String where = list + "/" + (row < indices.size() ? indices.get(row) : 0)
                + columns.get(column).pointer();
        return document.putBlock(key, where, tree -> {
            ObjectNode t = tree;
            for (int i = 0; i < added; i++) {
                t = PartTree.withRow(t, list, size + i, newRow.get());
            }
            return t;
        }, edits);
    }

    private CellEdit edit(String pointer, GridColumn column, String text) {
        Typed read = column.entry().read(text);
        if (read instanceof Typed.Understood u) {
            return new CellEdit(pointer, column.entry().over(document.value(key, pointer), u.node()), null, text);
        }
        return new CellEdit(pointer, null, read instanceof Typed.Blank ? null : text, text);
    }

    private Optional<String> wouldNotFit(int row, int column, Typed.Understood u) {
        return document.misfit(key, pointer(row, column), u.node());
    }

    /** Indices in the record's list of the rows shown; kept until the record's list is another one. */
    private List<Integer> indices() {
        JsonNode rows = document.rows(key, list);
        if (rows != indexed) {
            List<Integer> found = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                if (where.test(rows.get(i))) {
                    found.add(i);
                }
            }
            shown = List.copyOf(found);
            indexed = rows;
        }
        return shown;
    }
}
