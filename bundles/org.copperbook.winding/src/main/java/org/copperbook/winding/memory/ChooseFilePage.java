package org.copperbook.winding.memory;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.copperbook.calc.quantity.DecimalMark;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.sheets.cards.CardFile;
import org.copperbook.sheets.cards.TableFormat;
import org.copperbook.sheets.cards.TableRow;
import org.copperbook.sheets.cards.UnreadableTableException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Which file, and how it is to be read; what was found out is shown and can be corrected. */
final class ChooseFilePage extends WizardPage {

    private static final int PAUSE = 200;
    private static final int COLUMNS_SHOWN = 40;

    private final CardImport cards;
    private final Words words;
    private Text path;
    private Combo sheet;
    private Combo encoding;
    private Combo separator;
    private Combo decimal;
    private Spinner header;
    private Table sample;
    private int asked;

    ChooseFilePage(CardImport cards, Words words) {
        super("file", words.text("cards.fileTitle"), null);
        this.cards = cards;
        this.words = words;
        setDescription(words.text("cards.fileHint"));
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(1).applyTo(box);
        Composite line = row(box, 3);
        label(line, "cards.file");
        path = new Text(line, SWT.BORDER);
        path.setData(Desk.ID, "cards.file");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(path);
        path.addListener(SWT.Modify, e -> soon());
        Button browse = new Button(line, SWT.PUSH);
        browse.setText(words.text("cards.browse"));
        browse.addListener(SWT.Selection, e -> browse());
        Composite how = row(box, 6);
        sheet = combo(how, "cards.sheet", List.of());
        header = new Spinner(labelled(how, "cards.header"), SWT.BORDER);
        header.setValues(0, 0, 60, 0, 1, 5);
        header.setData(Desk.ID, "cards.header");
        header.addListener(SWT.Selection, e -> readAs(false));
        encoding = combo(how, "cards.encoding", TableFormat.ENCODINGS);
        separator = combo(how, "cards.separator", TableFormat.SEPARATORS.stream().map(this::name).toList());
        decimal = combo(how, "cards.decimal", List.of(words.text("cards.dot"), words.text("cards.comma")));
        sheet.addListener(SWT.Selection, e -> readAs(true));
        encoding.addListener(SWT.Selection, e -> readAs(true));
        separator.addListener(SWT.Selection, e -> readAs(true));
        decimal.addListener(SWT.Selection, e -> readAs(false));
        sample = new Table(box, SWT.BORDER | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        sample.setHeaderVisible(true);
        sample.setData(Desk.ID, "cards.sample");
        GridDataFactory.fillDefaults().grab(true, true).hint(Look.of(box).chars(90), SWT.DEFAULT).applyTo(sample);
        enable(null);
        setControl(box);
    }

    private static Composite row(Composite box, int columns) {
        Composite row = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).spacing(8, 4).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        return row;
    }

    private void label(Composite in, String key) {
        Label l = new Label(in, SWT.NONE);
        l.setText(words.text(key));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(l);
    }

    private Composite labelled(Composite in, String key) {
        label(in, key);
        return in;
    }

    private Combo combo(Composite in, String key, List<String> items) {
        Combo c = new Combo(labelled(in, key), SWT.READ_ONLY);
        c.setItems(items.toArray(String[]::new));
        c.setData(Desk.ID, key);
        return c;
    }

    private String name(char separatorSign) {
        return separatorSign == '\t' ? words.text("cards.tab") : String.valueOf(separatorSign);
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
        dialog.setText(words.text("cards.fileTitle"));
        dialog.setFilterExtensions(new String[] {"*.xlsx;*.csv;*.txt;*.XLSX;*.CSV;*.TXT", "*.*"});
        String chosen = dialog.open();
        if (chosen != null) {
            path.setText(chosen);
        }
    }

    private void soon() {
        int mine = ++asked;
        cards.forget();
        setPageComplete(false);
        Display display = path.getDisplay();
        display.timerExec(PAUSE, () -> {
            if (mine == asked && !path.isDisposed() && !path.getText().isBlank()) {
                try {
                    Path file = Path.of(path.getText().strip());
                    inBackground(() -> CardFile.open(file));
                } catch (InvalidPathException e) {
                    setErrorMessage(e.getMessage());
                }
            }
        });
    }

    @FunctionalInterface
    private interface Opening {
        CardFile open() throws UnreadableTableException;
    }

    private void readAs(boolean findOut) {
        cards.file().ifPresent(file -> {
            TableFormat wished = new TableFormat(file.table().isWorkbook() ? sheet.getText() : "",
                    file.table().isWorkbook() ? "" : encoding.getText(),
                    TableFormat.SEPARATORS.get(Math.max(0, separator.getSelectionIndex())),
                    decimal.getSelectionIndex() == 1 ? DecimalMark.COMMA : DecimalMark.DOT, header.getSelection());
            if (wished.equals(file.format())) {
                return;
            }
            inBackground(() -> findOut ? file.detectedAs(wished) : file.as(wished));
        });
    }

    /** Files are looked at outside the window's thread; only the answer to the newest question counts. */
    private void inBackground(Opening opening) {
        int mine = ++asked;
        Display display = path.getDisplay();
        setErrorMessage(null);
        setMessage(words.text("cards.looking"));
        new DeskJob(words.text("cards.looking"), monitor -> {
            try {
                CardFile opened = opening.open();
                display.asyncExec(() -> show(mine, opened));
            } catch (UnreadableTableException e) {
                display.asyncExec(() -> refuse(mine, e.getMessage()));
            }
        }).schedule();
    }

    private void refuse(int mine, String why) {
        if (mine == asked && !path.isDisposed()) {
            setErrorMessage(why);
            setPageComplete(false);
        }
    }

    private void show(int mine, CardFile opened) {
        if (mine != asked || path.isDisposed()) {
            return;
        }
        cards.use(opened);
        enable(opened);
        setErrorMessage(null);
        setMessage(words.text(opened.format().headerRow() == 0 ? "cards.noHeader" : "cards.fileHint"));
        setPageComplete(!opened.headers().isEmpty());
    }

    private void enable(CardFile opened) {
        boolean book = opened != null && opened.table().isWorkbook();
        boolean text = opened != null && !book;
        sheet.setEnabled(book);
        header.setEnabled(opened != null);
        encoding.setEnabled(text);
        separator.setEnabled(text);
        decimal.setEnabled(opened != null);
        if (opened == null) {
            return;
        }
        TableFormat f = opened.format();
        sheet.setItems(opened.table().sheets().toArray(String[]::new));
        sheet.setText(f.sheet());
        header.setSelection(f.headerRow());
        encoding.setText(text ? f.encoding() : "");
        if (text) {
            separator.select(TableFormat.SEPARATORS.indexOf(f.separator()));
        } else {
            separator.deselectAll();
            encoding.deselectAll();
        }
        decimal.select(f.decimal() == DecimalMark.COMMA ? 1 : 0);
        fillSample(opened);
        ((Composite) getControl()).layout(true, true);
    }

    private void fillSample(CardFile opened) {
        sample.setRedraw(false);
        sample.removeAll();
        for (TableColumn c : sample.getColumns()) {
            c.dispose();
        }
        Look look = Look.of(sample);
        List<String> headers = opened.headers();
        column("#", look.chars(6));
        int shown = Math.min(COLUMNS_SHOWN, headers.size());
        for (int i = 0; i < shown; i++) {
            column(headers.get(i), look.chars(Math.max(8, Math.min(20, headers.get(i).length() + 2))));
        }
        for (TableRow row : opened.sample()) {
            TableItem item = new TableItem(sample, SWT.NONE);
            item.setText(0, Integer.toString(row.number()));
            for (int i = 0; i < shown; i++) {
                item.setText(i + 1, row.cell(i).text());
            }
            if (row.number() <= opened.format().headerRow()) {
                item.setForeground(look.palette().muted());
            }
        }
        sample.setRedraw(true);
    }

    private void column(String title, int width) {
        TableColumn c = new TableColumn(sample, SWT.LEFT);
        c.setText(title);
        c.setWidth(width);
    }
}
