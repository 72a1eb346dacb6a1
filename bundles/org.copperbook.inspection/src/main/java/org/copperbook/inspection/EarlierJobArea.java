package org.copperbook.inspection;

import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.check.SinceEarlier;
import org.copperbook.store.JobStore;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * A machine that came back: how it left on the earlier job that the booking names, beside what is read today, followed
 * as readings come in. The earlier job is read outside the window's thread.
 */
final class EarlierJobArea {

    private static final String[] COLUMNS = {"earlier.where", "earlier.then", "earlier.today", "earlier.change"};
    private static final int MOST_ROWS = 12;

    private final Composite area;
    private final PageSite site;
    private final Words words;
    private final Label said;
    private String askedFor;
    private Job earlier;
    private Table table;
    private FittedColumns widths;
    private Label changes;
    private SinceEarlier shown;

    EarlierJobArea(Composite area, PageSite site, Words words) {
        this.area = area;
        this.site = site;
        this.words = words;
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        said = line();
        said.setData(Desk.ID, "earlier.said");
        follow();
    }

    /** Shows the comparison with what the job holds now. */
    void follow() {
        String number = site.document().job().booking().map(Booking::earlierJob).map(String::strip).orElse("");
        if (!number.equals(askedFor)) {
            askedFor = number;
            earlier = null;
            ask(number);
        }
        if (earlier != null) {
            show(SinceEarlier.of(site.document().job(), earlier, site.shop()));
        }
    }

    private void ask(String number) {
        if (number.isEmpty()) {
            clear(words.text("earlier.none"));
            return;
        }
        clear(words.text("earlier.reading", number));
        JobStore store = site.store();
        Job here = site.document().job();
        Display display = area.getDisplay();
        new DeskJob(words.text("earlier.reading", number), monitor -> {
            Optional<Job> found = store.earlierOf(here);
            display.asyncExec(() -> answered(number, found));
        }).schedule();
    }

    private void answered(String number, Optional<Job> found) {
        if (area.isDisposed() || !number.equals(askedFor)) {
            return;
        }
        if (found.isEmpty()) {
            clear(words.text("earlier.unknown", number));
            return;
        }
        earlier = found.get();
        follow();
    }

    private void clear(String text) {
        shown = null;
        if (table != null) {
            table.dispose();
            changes.dispose();
            table = null;
        }
        say(text);
    }

    private void show(SinceEarlier since) {
        if (since.equals(shown)) {
            return;
        }
        shown = since;
        if (table == null) {
            build();
        }
        say(words.text(since.rows().isEmpty() ? "earlier.nothing" : "earlier.intro", since.earlier(),
                Double.toString(site.shop().workshop().referenceCelsius()).replaceAll("\\.0$", "")));
        table.setItemCount(0);
        for (SinceEarlier.Row r : since.rows()) {
            TableItem item = new TableItem(table, SWT.NONE);
            String where = words.text(r.kind() == SinceEarlier.Kind.INSULATION ? "earlier.insulation" : "earlier.place",
                    r.winding(), r.label());
            item.setText(new String[] {where, dash(r.then()), dash(r.today()), r.changeInWords()});
        }
        widths.fit();
        GridDataFactory.fillDefaults().grab(true, false)
                .hint(SWT.DEFAULT, table.getHeaderHeight() + table.getItemHeight()
                        * Math.min(MOST_ROWS, since.rows().size() + 1)).applyTo(table);
        changes.setText(since.changes().isEmpty() ? words.text("earlier.unchanged")
                : "\u2022 " + String.join("\n\u2022 ", since.changes()));
        Grown.tell(area);
    }

    private void build() {
        Look look = Look.of(area);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "earlier.table");
        for (int i = 0; i < COLUMNS.length; i++) {
            TableColumn column = new TableColumn(table, SWT.NONE);
            column.setText(words.text(COLUMNS[i]));
        }
        widths = new FittedColumns(table, new int[COLUMNS.length]);
        Rows.dress(table, column -> false);
        changes = line();
        changes.setData(Desk.ID, "earlier.changes");
    }

    private Label line() {
        Look look = Look.of(area);
        Label label = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }

    private static String dash(String text) {
        return text.isEmpty() ? "\u2013" : text;
    }
}
