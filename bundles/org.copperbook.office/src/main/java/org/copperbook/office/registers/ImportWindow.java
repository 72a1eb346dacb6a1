package org.copperbook.office.registers;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Placing;
import org.copperbook.desk.theme.Reach;
import org.copperbook.desk.theme.Rows;
import org.copperbook.sheets.cards.UnreadableTableException;
import org.copperbook.sheets.registers.RefusedCell;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterImport;
import org.copperbook.sheets.registers.RegisterMapping;
import org.copperbook.sheets.registers.RegisterReading;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.store.StoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * Takes rows of a workbook or text file into a register: which column is which can be changed, every row that is refused is
 * named with its cell and the reason, and nothing is taken in before the button is pressed.
 */
public final class ImportWindow<T> {

    private static final int WIDTH = 90;
    private static final int HEIGHT = 30;
    private static final int COLUMN_LINES = 7;
    private static final int SHOWN_MILLIS = 150;
    private static final String[] REFUSED = {"import.cell", "import.column", "import.text", "import.reason"};

    private final Shell shell;
    private final Words words;
    private final RegisterShape shape;
    private final RegisterImport.Maker<T> maker;
    private final Consumer<List<T>> put;
    private final Saving<T> saving;
    private final Consumer<String> told;
    private final Text path;
    private final Combo sheet;
    private final ScrolledComposite scroll;
    private final Composite columns;
    private final Table refused;
    private final FittedColumns widths;
    private final Label said;
    private final Button takeIn;
    private final Button choose;
    private final Button stop;
    private final List<Combo> meant = new ArrayList<>();
    private RegisterImport table;
    private RegisterReading<T> reading;
    private Run running = new Run();

    /** Reading or saving behind the window, as far as this window has to do with it. */
    private static final class Run {
        private volatile boolean stopped;
        private volatile int written;
    }

    /** Keeps rows in the store, all of them or none; outside the window's thread. */
    public interface Saving<T> {

        /**
         * @param goOn to be asked with how many are written; false stops
         * @return what to say when they are kept
         * @throws StoreException        when they cannot be kept
         * @throws CancellationException when it was stopped
         */
        String save(List<T> rows, IntPredicate goOn);

        /** Told in the window's thread that rows could not be kept, after it was said why; somebody may be asked then. */
        default void notSaved(List<T> rows, RuntimeException why) {
        }
    }

    /**
     * @param maker makes of a row what the register keeps
     * @param put   puts them on the screen, all at once and in the window's thread
     */
    public ImportWindow(Shell parent, Words words, String title, RegisterShape shape, RegisterImport.Maker<T> maker,
            Consumer<List<T>> put) {
        this(parent, words, title, shape, maker, put, null, null);
    }

    /**
     * @param maker  makes of a row what the register keeps
     * @param saving keeps them
     * @param told   told in the window's thread what became of it, when this window has closed
     */
    public ImportWindow(Shell parent, Words words, String title, RegisterShape shape, RegisterImport.Maker<T> maker,
            Saving<T> saving, Consumer<String> told) {
        this(parent, words, title, shape, maker, null, saving, told);
    }

    private ImportWindow(Shell parent, Words words, String title, RegisterShape shape, RegisterImport.Maker<T> maker,
            Consumer<List<T>> put, Saving<T> saving, Consumer<String> told) {
        this.words = words;
        this.shape = shape;
        this.maker = maker;
        this.put = put;
        this.saving = saving;
        this.told = told;
        shell = new Shell(parent, SWT.SHELL_TRIM);
        shell.setText(words.text("import.title", title));
        shell.setData(Desk.ID, "import.window");
        Look look = Look.of(parent);
        GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 6).applyTo(shell);
        Label about = label("import.about");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(about);
        Composite top = new Composite(shell, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        path = look.as(Look.Role.TEXT, new Text(top, SWT.BORDER));
        path.setMessage(words.text("import.path"));
        path.setData(Desk.ID, "import.path");
        SpokenName.give(path, words.text("import.path"));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(look.chars(20), SWT.DEFAULT)
                .applyTo(path);
        path.addListener(SWT.DefaultSelection, e -> openFile());
        choose = PushButton.in(top, words, "import.choose", this::choose);
        sheet = look.as(Look.Role.TEXT, new Combo(top, SWT.DROP_DOWN | SWT.READ_ONLY));
        sheet.setData(Desk.ID, "import.sheet");
        SpokenName.give(sheet, words.text("import.sheet"));
        sheet.setEnabled(false);
        sheet.addListener(SWT.Selection, e -> otherSheet());
        scroll = new ScrolledComposite(shell, SWT.V_SCROLL | SWT.BORDER);
        scroll.setExpandHorizontal(true);
        scroll.setShowFocusedControl(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(WIDTH), look.rowHeight() * COLUMN_LINES)
                .applyTo(scroll);
        columns = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 6).spacing(10, 4).applyTo(columns);
        scroll.setContent(columns);
        said = look.as(Look.Role.STRONG, new Label(shell, SWT.WRAP));
        said.setData(Desk.ID, "import.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        refused = look.as(Look.Role.TEXT, new Table(shell, SWT.BORDER | SWT.FULL_SELECTION));
        refused.setHeaderVisible(true);
        refused.setData(Desk.ID, "import.refused");
        SpokenName.give(refused, words.text("import.refused"));
        for (String head : REFUSED) {
            new TableColumn(refused, SWT.LEFT).setText(words.text(head));
        }
        widths = new FittedColumns(refused, new int[REFUSED.length]);
        Rows.dress(refused, column -> false);
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(WIDTH), look.rowHeight() * 5).applyTo(refused);
        Composite bottom = new Composite(shell, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 0).applyTo(bottom);
        takeIn = PushButton.in(bottom, words, "import.takeIn", this::takeIn);
        takeIn.setEnabled(false);
        stop = PushButton.in(bottom, words, "import.stop", this::stop);
        stop.setEnabled(false);
        PushButton.in(bottom, words, "import.close", shell::close);
        shell.addListener(SWT.Dispose, e -> stop());
        look.dress(shell);
        Reach.ensure(shell);
        Placing.over(shell, shell.computeSize(look.chars(WIDTH), look.rowHeight() * HEIGHT));
    }

    /** The window, for what is asked about its rows. */
    public Shell shell() {
        return shell;
    }

    /** Takes other rows in than those read, as somebody chose; only where rows are saved. */
    public void takeIn(List<T> rows) {
        if (!shell.isDisposed()) {
            save(rows);
        }
    }

    /** Shows the window. */
    public void open() {
        shell.open();
        path.setFocus();
    }

    private Label label(String key) {
        Label l = Look.of(shell).as(Look.Role.TEXT, new Label(shell, SWT.WRAP));
        l.setText(words.text(key));
        return l;
    }

    private void choose() {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.xlsx;*.csv;*.txt;*.tsv", "*.*"});
        String chosen = dialog.open();
        if (chosen != null) {
            path.setText(chosen);
            openFile();
        }
    }

    private void openFile() {
        try {
            Path file = Path.of(path.getText().strip());
            read(() -> RegisterImport.open(file, shape), true);
        } catch (InvalidPathException e) {
            say(words.text("import.noPath", path.getText()));
        }
    }

    private void otherSheet() {
        RegisterImport now = table;
        String name = sheet.getText();
        read(() -> now.as(now.file().format().withSheet(name)), true);
    }

    private interface Source {
        RegisterImport open() throws UnreadableTableException;
    }

    /** Reads in the background, with progress and a way to stop; what was asked before is dropped. */
    private void read(Source source, boolean columnsChange) {
        Run mine = begin();
        takeIn.setEnabled(false);
        stop.setEnabled(true);
        say(words.text("import.reading"));
        DeskJob job = new DeskJob(words.text("import.reading"), monitor -> {
            try {
                RegisterImport opened = source.open();
                List<String> problems = opened.mapping().problems(shape);
                RegisterReading<T> read = problems.isEmpty() ? opened.read(maker, n -> !mine.stopped && !monitor.isCanceled()) : null;
                later(mine, () -> show(opened, read, problems, columnsChange));
            } catch (UnreadableTableException | CancellationException e) {
                later(mine, () -> {
                    reading = null;
                    stop.setEnabled(false);
                    say(e.getMessage());
                });
            }
        });
        job.setUser(true);
        job.schedule();
    }

    /** What was begun before is dropped. */
    private Run begin() {
        stop();
        running = new Run();
        return running;
    }

    private void stop() {
        running.stopped = true;
    }

    private void later(Run mine, Runnable does) {
        shell.getDisplay().asyncExec(() -> {
            if (!shell.isDisposed() && mine == running) {
                does.run();
            }
        });
    }

    private void show(RegisterImport opened, RegisterReading<T> read, List<String> problems, boolean columnsChange) {
        table = opened;
        reading = read;
        stop.setEnabled(false);
        if (columnsChange) {
            List<String> sheets = opened.file().table().sheets();
            sheet.setItems(sheets.toArray(String[]::new));
            sheet.setText(opened.file().format().sheet());
            sheet.setEnabled(sheets.size() > 1);
            showColumns();
        }
        refused.removeAll();
        if (read != null) {
            for (RefusedCell c : read.refused()) {
                new TableItem(refused, SWT.NONE).setText(new String[] {c.cell().isEmpty()
                        ? words.text("import.row", Integer.toString(c.row())) : c.cell(), c.column(), c.text(), c.reason()});
            }
        }
        widths.fit();
        takeIn.setEnabled(read != null && !read.rows().isEmpty());
        say(read == null ? String.join(" ", problems) : words.text("import.found", read.rows().size(), read.refusedRows())
                + (read.remarks().isEmpty() ? "" : " " + String.join(" ", read.remarks())));
    }

    private void showColumns() {
        for (var c : columns.getChildren()) {
            c.dispose();
        }
        meant.clear();
        Look look = Look.of(shell);
        List<String> names = new ArrayList<>(List.of(words.text("import.leaveOut")));
        shape.fields().stream().map(RegisterField::label).forEach(names::add);
        for (int i = 0; i < table.mapping().titles().size(); i++) {
            Label title = look.as(Look.Role.STRONG, new Label(columns, SWT.NONE));
            title.setText(table.mapping().titles().get(i));
            Combo c = look.as(Look.Role.TEXT, new Combo(columns, SWT.DROP_DOWN | SWT.READ_ONLY));
            c.setItems(names.toArray(String[]::new));
            c.select(1 + index(table.mapping().keys().get(i)));
            c.setData(Desk.ID, "import.column." + i);
            SpokenName.give(c, words.text("import.meaning", table.mapping().titles().get(i)));
            c.addListener(SWT.Selection, e -> remap());
            meant.add(c);
            Label example = look.as(Look.Role.TEXT, new Label(columns, SWT.NONE));
            example.setText(table.file().example(i).replaceAll("\\s+", " "));
            GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(20), SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
                    .applyTo(example);
        }
        Reach.ensure(columns);
        columns.setSize(columns.computeSize(Math.max(scroll.getClientArea().width, 1), SWT.DEFAULT));
        columns.layout(true, true);
    }

    private int index(String key) {
        for (int i = 0; i < shape.fields().size(); i++) {
            if (shape.fields().get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private void remap() {
        RegisterMapping mapping = table.mapping();
        for (int i = 0; i < meant.size(); i++) {
            int chosen = meant.get(i).getSelectionIndex() - 1;
            mapping = mapping.with(i, chosen < 0 ? "" : shape.fields().get(chosen).key());
        }
        RegisterImport other = table.with(mapping);
        read(() -> other, false);
    }

    private void takeIn() {
        if (reading == null) {
            return;
        }
        List<T> rows = reading.values();
        if (saving == null) {
            shell.close();
            put.accept(rows);
        } else {
            save(rows);
        }
    }

    /** Saves in the background; until it is done nothing but stopping can be done here. */
    private void save(List<T> rows) {
        Run mine = begin();
        busy(true);
        showWritten(mine, rows.size());
        Display display = shell.getDisplay();
        DeskJob job = new DeskJob(words.text("import.takeIn"), monitor -> {
            try {
                String done = saving.save(rows, n -> {
                    mine.written = n;
                    return !mine.stopped && !monitor.isCanceled();
                });
                display.asyncExec(() -> saved(done));
            } catch (StoreException | CancellationException e) {
                display.asyncExec(() -> notSaved(rows, e));
            }
        });
        job.setUser(true);
        job.schedule();
    }

    private void saved(String done) {
        running = new Run();
        if (!shell.isDisposed()) {
            shell.close();
        }
        told.accept(done);
    }

    private void notSaved(List<T> rows, RuntimeException why) {
        running = new Run();
        if (shell.isDisposed()) {
            told.accept(why.getMessage());
            return;
        }
        busy(false);
        say(why.getMessage());
        saving.notSaved(rows, why);
    }

    private void showWritten(Run mine, int of) {
        if (!shell.isDisposed() && mine == running) {
            say(words.text("import.saving", mine.written, of));
            shell.getDisplay().timerExec(SHOWN_MILLIS, () -> showWritten(mine, of));
        }
    }

    private void busy(boolean now) {
        stop.setEnabled(now);
        takeIn.setEnabled(!now);
        choose.setEnabled(!now);
        path.setEnabled(!now);
        sheet.setEnabled(!now && sheet.getItemCount() > 1);
        meant.forEach(c -> c.setEnabled(!now));
        (now ? stop : takeIn).setFocus();
    }

    private void say(String text) {
        said.setText(text);
        shell.layout(true, true);
    }
}
