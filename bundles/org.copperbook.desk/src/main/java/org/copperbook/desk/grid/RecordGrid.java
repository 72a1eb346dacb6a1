package org.copperbook.desk.grid;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.ChoiceEntry;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.form.Note;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.ScrollBar;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * A grid over a list of a part, made for the keyboard: arrows and Tab move, typing or F2 edits, Enter commits and moves
 * down, Esc restores, Ctrl+D fills down, Ctrl+C and Ctrl+V exchange blocks with a spreadsheet, Ctrl+Shift+C copies all with its headings, Insert and Ctrl+Delete
 * add and remove rows, Alt+Down offers a choice. The last column says what is judged in the row, or what is wrong.
 */
public final class RecordGrid {

    private static final String KEY = "org.copperbook.grid";
    /** How the ids of verdicts on an instrument begin. */
    private static final String INSTRUMENT = "meter.";
    private static final int LAID_OUT_MILLIS = 60;
    private static final int SAYING_CHARS = 30;
    private static final int MOST_ROWS = 14;

    private final PageSite site;
    private final String name;
    private final String list;
    private final GridModel model;
    private final Composite box;
    private final Table table;
    private final GridWidths widths;
    private final GridSaying saying;
    private final CellEditorText editor;
    private final GridKeys keys;
    private final Composite below;
    private final List<Button> buttons = new ArrayList<>();
    private GridCursor cursor = GridCursor.at(0, 0);
    private final RowVerdicts judged;
    private final Map<Integer, List<String>> filled = new HashMap<>();
    private List<Verdict> verdicts = List.of();
    private boolean editable = true;
    private boolean editing;
    private boolean objected;
    private int typedLast = -1;
    private int typedColumn;
    private Runnable relayout = () -> { };
    private IntConsumer onRow = row -> { };

    public RecordGrid(Composite parent, PageSite site, String list, GridColumns columns, String name) {
        this.site = site;
        this.list = list;
        this.name = name;
        this.model = new GridModel(site.document(), site.key(), list, columns.columns());
        this.judged = new RowVerdicts(model);
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 3).extendedMargins(0, 0, 0, 10).applyTo(box);
        table = look.as(Look.Role.TEXT, new Table(box, SWT.BORDER | SWT.VIRTUAL | SWT.SINGLE | SWT.V_SCROLL
                | SWT.H_SCROLL | SWT.HIDE_SELECTION));
        // GTK complains of headers laid out at no height; this holds until the page is laid out.
        table.setSize(look.chars(SAYING_CHARS), MOST_ROWS * look.rowHeight());
        table.setLinesVisible(true);
        table.setData(Desk.ID, list);
        table.setData(KEY, this);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(table);
        for (GridColumn c : model.columns()) {
            boolean right = c.entry() != null && c.entry().isNumeric();
            TableColumn tc = new TableColumn(table, right ? SWT.RIGHT : SWT.LEFT);
            tc.setText(c.title());
        }
        TableColumn says = new TableColumn(table, SWT.LEFT);
        says.setText(sayingChars() == 0 ? "" : DeskWords.text("grid.says"));
        table.setColumnOrder(order(columns.saysAt()));
        widths = new GridWidths(table, model, sayingChars());
        widths.begin();
        table.setHeaderVisible(true);
        below = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(below);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(below);
        saying = new GridSaying(below, this::answered, () -> relayout.run());
        editor = new CellEditorText(table);
        keys = new GridKeys(this, table);
        new GridPainter(table, new PainterSource());
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.MouseDown, this::mouse);
        table.addListener(SWT.FocusIn, e -> {
            if (model.rows() > 0) {
                table.setSelection(cursor.row());
            }
            saying.say(cellNote());
            table.redraw();
        });
        table.addListener(SWT.FocusOut, e -> {
            table.deselectAll();
            table.redraw();
        });
        table.addListener(SWT.Selection, e -> {
            int row = table.getSelectionIndex();
            if (row >= 0 && row != cursor.row()) {
                moveTo(row, cursor.column());
            }
        });
        table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                if (e.childID == ACC.CHILDID_SELF) {
                    e.result = name + ": " + spoken();
                }
            }
        });
        List<String> help = columns.help();
        table.addListener(SWT.Help, e -> say(help.get(cursor.column())));
        look.onResize(table, this::resize);
        refresh();
    }

    /** The grid behind a table; null when the table is no grid's. */
    public static RecordGrid of(Table table) {
        return table.getData(KEY) instanceof RecordGrid g ? g : null;
    }

    /** Lets the grid grow: each new row begins as this. */
    public RecordGrid newRow(Supplier<ObjectNode> row) {
        model.newRow(row);
        if (buttons.isEmpty()) {
            button("grid.add", this::addRow);
            button("grid.remove", this::removeRow);
            saying.control().moveBelow(null);
            widths.fit();
        }
        refresh();
        return this;
    }

    /** Shows only some rows of the list; new rows must be among them. */
    public RecordGrid where(Predicate<JsonNode> rows) {
        model.where(rows);
        refresh();
        return this;
    }

    /** What is called when the grid's height changes. */
    public RecordGrid onHeight(Runnable changed) {
        relayout = changed;
        return this;
    }

    /** What is told the row of the cursor whenever it is set. */
    public RecordGrid onRow(IntConsumer listener) {
        onRow = listener;
        return this;
    }

    /** JSON pointer of the list. */
    public String list() {
        return list;
    }

    /** The grid with its buttons and its line of notes. */
    public Control control() {
        return box;
    }

    /** The table itself. */
    public Table table() {
        return table;
    }

    /** Rows, cells and blocks without the widget. */
    public GridModel model() {
        return model;
    }

    /** Shows what the draft holds now. */
    public void refresh() {
        if (table.isDisposed() || editing) {
            return;
        }
        int rows = model.rows();
        if (table.getItemCount() != rows) {
            table.setItemCount(rows);
            height(rows);
            widths.fit();
            filled.clear();
            table.clearAll();
        }
        clearOthers();
        if (cursor.row() >= rows) {
            cursor = GridCursor.at(Math.max(0, rows - 1), cursor.column());
        }
        if (table.isFocusControl()) {
            if (rows > 0 && table.getSelectionIndex() != cursor.row()) {
                table.setSelection(cursor.row());
            }
            saying.say(cellNote());
        }
        table.redraw();
    }

    /** Shows verdicts of the part in the rows where they stand. */
    public void show(List<Verdict> ofPart) {
        verdicts = ofPart;
        if (!table.isDisposed()) {
            table.redraw();
            sayObjection();
        }
    }

    /** Lets the grid be typed into, or shows it only. */
    public void editable(boolean now) {
        if (editable == now) {
            return;
        }
        editable = now;
        model.open(now);
        buttons.forEach(b -> b.setEnabled(now));
        shade();
        refresh();
    }

    /** What cannot be typed into stands on the ground of the page, as the fields do. */
    private void shade() {
        boolean typed = model.columns().stream().anyMatch(GridColumn::isEditable);
        table.setBackground(typed && !editable ? table.getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND)
                : Look.of(table).palette().paper());
    }

    public boolean isEditable() {
        return editable;
    }

    /** Puts the cursor on the cell to which a JSON pointer leads. */
    public boolean reveal(String pointer) {
        int row = model.rowOf(pointer);
        if (row < 0) {
            return false;
        }
        table.setFocus();
        moveTo(row, model.columnOf(pointer));
        return true;
    }

    /** Puts the cursor on the row left that is nearest to a place whose row is gone. */
    public boolean revealNearest(String pointer) {
        int row = model.nearestRowOf(pointer);
        if (row < 0) {
            return false;
        }
        table.setFocus();
        moveTo(row, Math.min(cursor.column(), model.columns().size() - 1));
        return true;
    }

    /** Whether a JSON pointer leads to a row of this grid's list, shown or not, or into one. */
    public boolean isAbove(String pointer) {
        return pointer.startsWith(list + "/");
    }

    /** Whether a JSON pointer leads into a column of this grid. */
    public boolean hasColumnFor(String pointer) {
        int row = model.rowOf(pointer);
        return row >= 0 && !pointer.equals(model.rowPointer(row)) && model.concerns(pointer, row);
    }

    /** What people call the cell to which a JSON pointer leads: the grid, its row counted from one, the heading. */
    public String nameOf(String pointer) {
        return DeskWords.text("grid.place", name, Integer.toString(model.rowOf(pointer) + 1),
                model.columns().get(model.columnOf(pointer)).oneLine());
    }

    /** Puts the cursor on a cell. */
    public void moveTo(int row, int column) {
        move(GridCursor.at(row, column));
    }

    /** Row of the cursor. */
    public int row() {
        return cursor.row();
    }

    /** Column of the cursor. */
    public int column() {
        return cursor.column();
    }

    /** What a screen reader says of the cursor's cell: heading, text, and what is judged or wrong there. */
    public String spoken() {
        if (model.rows() == 0) {
            return DeskWords.text("grid.empty");
        }
        String said = saying(cursor.row());
        return DeskWords.text("grid.cell", model.columns().get(cursor.column()).oneLine(),
                model.text(cursor.row(), cursor.column()), Integer.toString(cursor.row() + 1),
                said == null ? "" : said);
    }

    GridCursor cursor() {
        return cursor;
    }

    void move(GridCursor next) {
        if (model.rows() == 0) {
            return;
        }
        cursor = new GridCursor(Math.min(next.row(), model.rows() - 1), next.column(), next.anchorRow(),
                next.anchorColumn());
        table.setSelection(cursor.row());
        TableItem item = table.getItem(cursor.row());
        table.showItem(item);
        reveal();
        table.redraw();
        saying.say(cellNote());
        table.getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
        onRow.accept(cursor.row());
    }

    /** Brings the cursor's column into sight, again when columns that grew meanwhile are laid out and the bar reaches as far. */
    private void reveal() {
        showColumn(cursor.column());
        table.getDisplay().timerExec(LAID_OUT_MILLIS, () -> {
            if (!table.isDisposed() && table.isFocusControl()) {
                showColumn(cursor.column());
            }
        });
    }

    /**
     * Brings a column into sight. GTK forgets a column that it is asked for while rows wait to be laid out, as they do after
     * a cell was typed; there the bar is set as well.
     */
    private void showColumn(int column) {
        table.showColumn(table.getColumn(column));
        ScrollBar bar = table.getHorizontalBar();
        if (bar == null || !"gtk".equals(SWT.getPlatform())) {
            return;
        }
        int left = 0;
        for (int c : table.getColumnOrder()) {
            if (c == column) {
                break;
            }
            left += table.getColumn(c).getWidth();
        }
        int right = left + table.getColumn(column).getWidth();
        int room = table.getClientArea().width;
        if (left < bar.getSelection() || right - left > room) {
            bar.setSelection(left);
        } else if (right > bar.getSelection() + room) {
            bar.setSelection(right - room);
        }
    }

    /** Puts what is typed into an open cell, if one is open. */
    public void commitTyping() {
        editor.close(CellEditorText.Leaving.STAY);
    }

    /** Gives up what is typed into an open cell, if one is open. */
    public void giveUpTyping() {
        editor.close(CellEditorText.Leaving.RESTORED);
    }

    /** Opens the cursor's cell for typing. */
    void edit(String begin, boolean select) {
        GridColumn c = model.columns().get(cursor.column());
        if (!editable || !c.isEditable() || model.rows() == 0) {
            say(DeskWords.text(editable && model.rows() > 0 ? "grid.workedOut" : "grid.closed"));
            return;
        }
        int row = cursor.row();
        int column = cursor.column();
        String before = model.text(row, column);
        editing = true;
        editor.open(row, column, model.pointer(row, column), begin, select, c.entry().isNumeric(),
                text -> site.document().beingTyped(site.key(), model.pointer(row, column), text),
                how -> left(how, row, column, before));
    }

    /** Offers the choices of the cursor's cell as a menu. */
    boolean offer() {
        GridColumn c = model.columns().get(cursor.column());
        if (!editable || !(c.entry() instanceof ChoiceEntry) || model.rows() == 0) {
            return false;
        }
        Menu menu = new Menu(table);
        for (String choice : c.entry().choices()) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText(choice);
            item.addListener(SWT.Selection, e -> {
                model.type(cursor.row(), cursor.column(), choice);
                refresh();
            });
        }
        Rectangle cell = table.getItem(cursor.row()).getBounds(cursor.column());
        menu.setLocation(table.toDisplay(cell.x, cell.y + cell.height));
        menu.addListener(SWT.Hide, e -> table.getDisplay().asyncExec(menu::dispose));
        menu.setVisible(true);
        return true;
    }

    /** Offers the choices of the cell clicked again, in a list that lets what is typed through to the cell. */
    private boolean offerUnderTheMouse() {
        GridColumn c = model.columns().get(cursor.column());
        if (!editable || !(c.entry() instanceof ChoiceEntry) || model.rows() == 0) {
            return false;
        }
        int row = cursor.row();
        int column = cursor.column();
        // The toolkit's own answer to the click comes first; it gives the table the keyboard.
        table.getDisplay().asyncExec(() -> {
            if (!table.isDisposed() && row < model.rows()) {
                ChoiceList.open(table, table.getItem(row).getBounds(column), c.entry().choices(), model.text(row, column),
                        choice -> {
                            model.type(row, column, choice);
                            refresh();
                            table.setFocus();
                        }, letter -> {
                            table.setFocus();
                            edit(letter, false);
                        });
            }
        });
        return true;
    }

    void addRow() {
        if (editable) {
            model.addRow(cursor.row());
            refresh();
            table.setFocus();
        }
    }

    void removeRow() {
        if (editable) {
            model.removeRow(cursor.row());
            refresh();
            table.setFocus();
        }
    }

    /** Says something in the line under the grid. */
    void say(String text) {
        saying.say(new Note.Explained(text));
    }

    private void left(CellEditorText.Leaving how, int row, int column, String before) {
        editing = false;
        site.document().typingEnded(site.key());
        if (how != CellEditorText.Leaving.RESTORED) {
            model.type(row, column, editor.now());
            typedLast = row;
            typedColumn = column;
        }
        refresh();
        GridCursor here = GridCursor.at(row, column);
        int rows = model.rows();
        int columns = model.columns().size();
        switch (how) {
            case DOWN -> move(here.moved(1, 0, false, rows, columns));
            case UP -> move(here.moved(-1, 0, false, rows, columns));
            case RIGHT -> moveTo(row, Math.max(column, model.typedBeside(column, 1)));
            case LEFT -> moveTo(row, model.typedBeside(column, -1) < 0 ? column : model.typedBeside(column, -1));
            default -> move(here);
        }
    }

    private void answered(Typed.Understood answer) {
        model.answer(cursor.row(), cursor.column(), answer);
        refresh();
        table.setFocus();
    }

    private Note cellNote() {
        if (model.rows() == 0) {
            return new Note.None();
        }
        Note note = model.note(cursor.row(), cursor.column());
        return note instanceof Note.None ? objection(cursor.row()).or(() -> objection(typedLast)).or(this::leftBehind)
                .or(this::inFull).orElse(note) : note;
    }

    /** The text of the cursor's cell where its column cuts it short. */
    private Optional<Note> inFull() {
        return widths.isCut(cursor.row(), cursor.column())
                ? Optional.of(new Note.Explained(model.text(cursor.row(), cursor.column()))) : Optional.empty();
    }

    /** What is wrong in the cell typed last: its column may be too narrow to say it, and the cursor has moved on. */
    private Optional<Note> leftBehind() {
        return typedLast >= 0 && typedLast < model.filled()
                && model.note(typedLast, typedColumn) instanceof Note.Problem p
                ? Optional.of(new Note.Problem(DeskWords.text("grid.leftBehind", Integer.toString(typedLast + 1), p.text())))
                : Optional.empty();
    }

    /** Says what the new verdicts hold against an instrument, and takes it back when they no longer do. */
    private void sayObjection() {
        Note now = cellNote();
        if (!editing && (objected || now instanceof Note.Explained)) {
            saying.say(now);
            objected = now instanceof Note.Explained;
        }
    }

    /** What stands against the instrument of a row, and what to use instead; Enter may have moved on from it. */
    private Optional<Note> objection(int row) {
        return verdictsOf(row).stream().filter(v -> v.id().startsWith(INSTRUMENT)).findFirst()
                .map(v -> new Note.Explained(DeskWords.text("grid.objection", Integer.toString(row + 1), v.reason(), v.settle())));
    }

    private String saying(int row) {
        for (int c = 0; c < model.columns().size(); c++) {
            Note n = model.note(row, c);
            if (n instanceof Note.Problem p) {
                return p.text();
            }
            if (n instanceof Note.Question q) {
                return q.text();
            }
        }
        List<Verdict> here = VerdictWords.byWeight(verdictsOf(row));
        return here.isEmpty() ? null : VerdictWords.of(here.get(0).outcome());
    }

    private List<Verdict> verdictsOf(int row) {
        return judged.of(row, verdicts);
    }

    /**
     * Has the rows filled anew whose texts are others now. Rows out of sight are filled when they come into sight, so
     * only what is seen is compared.
     */
    private void clearOthers() {
        int first = table.getTopIndex();
        int last = first + table.getClientArea().height / Math.max(1, table.getItemHeight()) + 1;
        for (int row : List.copyOf(filled.keySet())) {
            if (row < first || row > last || !filled.get(row).equals(texts(row))) {
                filled.remove(row);
                table.clear(row);
            }
        }
    }

    /** What a row is filled with: its cells, and last what is said of it. */
    private List<String> texts(int row) {
        List<String> texts = new ArrayList<>();
        for (int c = 0; c < model.columns().size(); c++) {
            texts.add(row < model.rows() ? model.text(row, c) : "");
        }
        texts.add(row < model.rows() ? saying(row) : null);
        return texts;
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        List<String> texts = texts(row);
        filled.put(row, texts);
        for (int c = 0; c < model.columns().size(); c++) {
            item.setText(c, texts.get(c));
        }
        item.setText(model.columns().size(), "");
        item.setData(texts.get(model.columns().size()));
        if (row == model.filled()) {
            item.setText(0, DeskWords.text("grid.newRow"));
            item.setForeground(0, Look.of(table).palette().muted());
        } else {
            item.setForeground(0, null);
        }
    }

    private void mouse(Event e) {
        TableItem item = table.getItem(new Point(e.x, e.y));
        if (item == null || e.button != 1) {
            return;
        }
        int row = table.indexOf(item);
        for (int c = 0; c < model.columns().size(); c++) {
            if (item.getBounds(c).contains(e.x, e.y)) {
                boolean again = cursor.row() == row && cursor.column() == c && table.isFocusControl();
                if ((e.stateMask & SWT.SHIFT) != 0) {
                    move(new GridCursor(row, c, cursor.anchorRow(), cursor.anchorColumn()));
                } else {
                    moveTo(row, c);
                    if (again && !offerUnderTheMouse()) {
                        table.getDisplay().asyncExec(() -> edit(model.text(cursor.row(), cursor.column()), true));
                    }
                }
                return;
            }
        }
    }

    private void button(String key, Runnable action) {
        Button b = Look.of(box).as(Look.Role.TEXT, new Button(below, SWT.PUSH));
        buttons.add(b);
        b.setEnabled(editable);
        b.setText(DeskWords.text(key));
        b.setData(Desk.ID, list + "#" + key);
        b.addListener(SWT.Selection, e -> action.run());
    }

    /** A grid that only shows has nothing to judge. */
    private int sayingChars() {
        return model.columns().stream().anyMatch(GridColumn::isEditable) ? SAYING_CHARS : 0;
    }

    /** Places of the columns on the screen: what is judged may stand in the middle. */
    private int[] order(int saysAt) {
        int[] order = new int[model.columns().size() + 1];
        for (int i = 0; i < order.length; i++) {
            order[i] = i < saysAt ? i : i == saysAt ? model.columns().size() : i - 1;
        }
        return order;
    }

    private void height(int rows) {
        int shown = Math.max(2, Math.min(MOST_ROWS, rows));
        GridData data = (GridData) table.getLayoutData();
        int height = table.getHeaderHeight() + shown * (Look.of(table).rowHeight() + 2) + 4;
        if (data.heightHint != height) {
            data.heightHint = height;
            relayout.run();
        }
    }

    private void resize() {
        Look look = Look.of(table);
        table.setFont(look.font(Look.Role.TEXT));
        widths.begin();
        height(model.rows());
        shade();
        if (table.isFocusControl()) {
            reveal();
        }
    }

    private final class PainterSource implements GridPainter.Source {
        @Override
        public GridCursor cursor() {
            return cursor;
        }

        @Override
        public Note note(int row, int column) {
            return model.note(row, column);
        }

        @Override
        public String rowNote(int row) {
            for (int c = 0; c < model.columns().size(); c++) {
                Note n = model.note(row, c);
                if (n instanceof Note.Problem p) {
                    return p.text();
                }
                if (n instanceof Note.Question q) {
                    return q.text();
                }
            }
            return null;
        }

        @Override
        public List<Verdict> verdicts(int row) {
            return row < model.filled() ? verdictsOf(row) : List.of();
        }

        @Override
        public int columns() {
            return model.columns().size();
        }

        @Override
        public boolean active() {
            return table.isFocusControl() || editor.isOpen();
        }
    }
}
