package org.copperbook.office.hours;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.report.Actuals;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.stock.StockEntry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Planned and used, line by line, with what went out of stock; kept up with every movement for the job. */
final class ActualsArea {

    private static final List<String> HEADS = List.of("hours.what", "hours.planned", "hours.used", "hours.difference",
            "hours.unit");

    private final PageSite site;
    private final Words words;
    private final Label said;
    private final Table table;
    private final FittedColumns fitted;
    private final Label reserved;
    private List<StockItem> moved = List.of();

    ActualsArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "hours.saidActuals");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.SINGLE | SWT.H_SCROLL | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "hours.actuals");
        SpokenName.give(table, words.text("hours.compared"));
        for (String head : HEADS) {
            boolean figure = !head.equals("hours.what") && !head.equals("hours.unit");
            new TableColumn(table, figure ? SWT.RIGHT : SWT.LEFT).setText(words.text(head));
        }
        int[] least = new int[HEADS.size()];
        least[HEADS.size() - 1] = 12;
        fitted = new FittedColumns(table, least);
        Rows.dress(table, column -> false);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), look.rowHeight() * 3).applyTo(table);
        Button reserve = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        reserve.setText(words.text("hours.reserveWire"));
        reserve.setData(Desk.ID, "hours.reserveWire");
        reserve.addListener(SWT.Selection, e -> reserveWire());
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(reserve);
        reserved = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        reserved.setData(Desk.ID, "hours.saidWire");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(reserved);
        JobStore.Listening listening = site.store().onChange(change -> {
            if (JobStore.SHOP.equals(change.jobId()) && change.part().startsWith(PartKind.STOCK_ITEM.word() + "/")) {
                read();
            }
        });
        table.addDisposeListener(e -> listening.close());
        read();
    }

    /** Reads what was moved for the job, behind. */
    private void read() {
        String job = site.document().id();
        JobStore store = site.store();
        Display display = table.getDisplay();
        new DeskJob(words.text("hours.reading"), monitor -> {
            try {
                List<StockItem> found = store.stock().movesFor(job).stream().map(StockEntry::item).toList();
                display.asyncExec(() -> {
                    if (!table.isDisposed()) {
                        moved = found;
                        show();
                        Grown.tell(table);
                    }
                });
            } catch (StoreException e) {
                display.asyncExec(() -> {
                    if (!said.isDisposed()) {
                        said.setText(e.getMessage());
                    }
                });
            }
        }).schedule();
    }

    private void reserveWire() {
        WireOfJob wire = new WireOfJob(site, words);
        Map<String, BigDecimal> needed = wire.needed();
        Map<String, Set<Integer>> grades = wire.grades(needed.keySet());
        Optional<String> who = site.who();
        if (who.isEmpty() || needed.isEmpty()) {
            say(words.text(who.isEmpty() ? "stock.whoFirst" : "hours.noMass"));
            return;
        }
        String job = site.document().id();
        Display display = table.getDisplay();
        new DeskJob(words.text("hours.reserveWire"), monitor -> {
            String outcome = wire.reserve(needed, grades, job, who.get());
            display.asyncExec(() -> {
                if (!table.isDisposed()) {
                    say(outcome);
                }
            });
        }).schedule();
    }

    private void say(String text) {
        reserved.setText(text);
        Grown.tell(reserved);
    }

    /** Shows the draft against what was moved. */
    void show() {
        String currency = site.shop().workshop().currency();
        Actuals a = Actuals.of(site.document().job(), moved, currency);
        table.removeAll();
        a.labour().forEach(l -> row(l.what().isEmpty() ? words.text("hours.noTrade") : l.what(), l, words.text("hours.h")));
        a.material().forEach(l -> row(words.of(Actuals.Sort.valueOf(l.what())), l, currency));
        a.outside().forEach(l -> row(l.what().isEmpty() ? words.text("hours.outsideUnnamed")
                : words.text("hours.outside", l.what()), l, currency));
        a.elsewhere().forEach(this::agreedElsewhere);
        for (Actuals.Issued i : a.issued()) {
            TableItem row = new TableItem(table, SWT.NONE);
            row.setText(new String[] {words.text(i.priced() ? "hours.item" : "hours.itemUnpriced", i.item().code(),
                i.item().name()), "", number(i.quantity()), "", i.item().unit().sign()});
        }
        int before = ((GridData) table.getLayoutData()).heightHint;
        said.setText(words.text(a.agreed() ? "hours.againstQuote" : "hours.noQuote") + (a.elsewhere().isEmpty() ? ""
                : " " + words.text("hours.otherCurrency", a.elsewhere().stream()
                        .map(Actuals.Elsewhere::currency).distinct().collect(Collectors.joining(", ")), currency)) + (a.unpriced().isEmpty() ? ""
                : " " + words.text("hours.outsideUnpriced", String.join(", ", a.unpriced()))));
        ((GridData) table.getLayoutData()).heightHint = table.getHeaderHeight()
                + Look.of(table).rowHeight() * Math.max(2, table.getItemCount());
        fitted.fit();
        if (((GridData) table.getLayoutData()).heightHint != before) {
            Grown.tell(table);
        }
    }

    private void row(String what, Actuals.Line line, String unit) {
        TableItem row = new TableItem(table, SWT.NONE);
        row.setText(new String[] {what, number(line.planned()), number(line.actual()),
            (line.difference().signum() > 0 ? "+" : "") + number(line.difference()), unit});
        if (line.difference().signum() > 0) {
            row.setForeground(3, Look.of(table).palette().problem());
        }
    }

    /** Agreed in another currency: it stands there with nothing to compare it with. */
    private void agreedElsewhere(Actuals.Elsewhere e) {
        boolean sort = Arrays.stream(Actuals.Sort.values()).anyMatch(s -> s.name().equals(e.what()));
        String what = sort ? words.of(Actuals.Sort.valueOf(e.what()))
                : e.what().isEmpty() ? words.text("hours.outsideUnnamed") : words.text("hours.outside", e.what());
        new TableItem(table, SWT.NONE).setText(new String[] {what, number(e.cost()), "", "", e.currency()});
    }

    private static String number(BigDecimal n) {
        NumberFormat format = NumberFormat.getInstance();
        format.setMaximumFractionDigits(2);
        return format.format(n);
    }
}
