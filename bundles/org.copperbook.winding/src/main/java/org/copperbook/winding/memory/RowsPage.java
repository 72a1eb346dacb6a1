package org.copperbook.winding.memory;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.cards.CardLine;
import org.copperbook.sheets.cards.CardMapping;
import org.copperbook.sheets.cards.CardReport;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Every row as it was understood, and those that are refused with the reason, before anything is taken in. */
final class RowsPage extends WizardPage {

    private static final String REPORT = "refused-cards.xlsx";

    private final CardImport cards;
    private final Words words;
    private Label summary;
    private Button refusedOnly;
    private Button revise;
    private Table table;
    private int[] places = {};
    private List<Integer> shown = List.of();

    RowsPage(CardImport cards, Words words) {
        super("rows", words.text("cards.rowsTitle"), null);
        this.cards = cards;
        this.words = words;
        setDescription(words.text("cards.rowsHint"));
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(box);
        summary = new Label(box, SWT.WRAP);
        summary.setData(Desk.ID, "cards.summary");
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(box).chars(80), SWT.DEFAULT).applyTo(summary);
        Composite bar = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(16, 0).applyTo(bar);
        refusedOnly = check(bar, "cards.refusedOnly");
        refusedOnly.addListener(SWT.Selection, e -> show());
        revise = check(bar, "cards.revise");
        Button save = new Button(bar, SWT.PUSH);
        save.setText(words.text("cards.saveRefused"));
        save.setData(Desk.ID, "cards.saveRefused");
        save.addListener(SWT.Selection, e -> save(this, words, cards::refusals));
        table = new Table(box, SWT.VIRTUAL | SWT.BORDER | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "cards.rows");
        table.addListener(SWT.SetData, this::fill);
        GridDataFactory.fillDefaults().grab(true, true).hint(Look.of(box).chars(90), 200).applyTo(table);
        setControl(box);
    }

    private Button check(Composite in, String key) {
        Button b = new Button(in, SWT.CHECK);
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        return b;
    }

    /** Whether cards whose number is in already are kept as newer revisions. */
    boolean newRevision() {
        return revise.getSelection();
    }

    /** Shows the rows once they are read. */
    void fill() {
        for (TableColumn c : table.getColumns()) {
            c.dispose();
        }
        column(words.text("cards.rowNumber"), 8);
        column(words.text("cards.verdict"), 50);
        List<CardMapping.Column> columns = cards.mapping().columns();
        List<Integer> mapped = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).field() != null) {
                mapped.add(i);
                String unit = columns.get(i).unit();
                column(columns.get(i).field().inWords() + (unit == null ? "" : " (" + unit + ")"), 16);
            }
        }
        shown = List.copyOf(mapped);
        refusedOnly.setSelection(false);
        refusedOnly.setEnabled(cards.refusedCount() > 0);
        int good = cards.size() - cards.refusedCount();
        String text = words.text("cards.counted", cards.size(), good, cards.refusedCount());
        summary.setText(cards.remarks().isEmpty() ? text : text + "\n" + String.join(" ", cards.remarks()));
        setErrorMessage(good == 0 ? words.text("cards.noneGood") : null);
        setPageComplete(good > 0);
        show();
        ((Composite) getControl()).layout(true, true);
    }

    private void column(String title, int chars) {
        TableColumn c = new TableColumn(table, SWT.LEFT);
        c.setText(title);
        c.setWidth(Look.of(table).chars(chars));
    }

    private void show() {
        places = cards.places(refusedOnly.getSelection());
        table.setItemCount(places.length);
        table.clearAll();
    }

    private void fill(Event e) {
        TableItem item = (TableItem) e.item;
        int place = places[table.indexOf(item)];
        CardLine line = cards.line(place);
        boolean good = line.card().isPresent();
        item.setText(0, Integer.toString(line.number()));
        item.setText(1, good ? words.text("cards.good")
                : line.problems().stream().map(CardLine.Problem::inWords).collect(Collectors.joining(" ")));
        item.setForeground(good ? null : Look.of(table).palette().problem());
        RowText text = new RowText(line, cards.row(place));
        for (int i = 0; i < shown.size(); i++) {
            int column = shown.get(i);
            item.setText(i + 2, text.of(cards.mapping().columns().get(column), column));
        }
    }

    /** Asks for a file and writes rows into it outside the window's thread. */
    static void save(WizardPage page, Words words, Supplier<List<CardReport.Line>> lines) {
        FileDialog dialog = new FileDialog(page.getShell(), SWT.SAVE);
        dialog.setText(words.text("cards.saveRefused"));
        dialog.setFileName(REPORT);
        dialog.setFilterExtensions(new String[] {"*.xlsx", "*.csv"});
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            write(page, words, lines, Path.of(chosen));
        }
    }

    private static void write(WizardPage page, Words words, Supplier<List<CardReport.Line>> lines, Path file) {
        Display display = page.getShell().getDisplay();
        new DeskJob(words.text("cards.saveRefused"), monitor -> {
            String problem;
            try {
                new CardReport(lines.get()).write(file);
                problem = null;
            } catch (WorkbookNotWrittenException e) {
                problem = e.getMessage();
            }
            String said = problem;
            display.asyncExec(() -> {
                if (page.getControl() != null && !page.getControl().isDisposed()) {
                    page.setErrorMessage(said);
                    if (said == null) {
                        page.setMessage(words.text("cards.saved", file));
                    }
                }
            });
        }).schedule();
    }
}
