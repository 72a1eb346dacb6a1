package org.copperbook.office.handback;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.handback.HandBack;
import org.copperbook.jobs.handback.ReceivedStock;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.office.AfterChanges;
import org.copperbook.office.stock.ReceivingDialog;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.stock.StockEntry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/**
 * Puts a delivery of the job in stock where it is written down, and says what of each is there. The record and the stock change
 * together when the page is saved; until then it is a step to be undone like any other.
 */
final class ReceivingArea {

    private static final int PAUSE = 200;

    private final PageSite site;
    private final Words words;
    private final RecordGrid deliveries;
    private final Button put;
    private final Composite rows;
    private final Label said;
    private List<StockEntry> moved = List.of();
    private List<ReceivedStock> kept = List.of();
    private List<String> shown = List.of();

    /** @param deliveries the grid whose marked row is put in stock */
    ReceivingArea(Composite area, PageSite site, Words words, RecordGrid deliveries) {
        this.site = site;
        this.words = words;
        this.deliveries = deliveries;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        put = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        put.setText(words.text("receive.open"));
        put.setData(Desk.ID, "receive.open");
        put.addListener(SWT.Selection, e -> ask());
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "receive.outcome");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        AfterChanges again = new AfterChanges(area, PAUSE, this::read);
        rows = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(rows);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(rows);
        Display display = area.getDisplay();
        JobStore.Listening listening = site.store().onChange(change -> display.asyncExec(() -> {
            boolean stock = JobStore.SHOP.equals(change.jobId()) && change.part().startsWith("stock-item/");
            if (stock || change.jobId().equals(site.document().id()) && change.part().equals(site.key().toString())) {
                again.changed();
            }
        }));
        area.addDisposeListener(e -> listening.close());
        read();
    }

    /** Reads behind what was moved for the job and what the kept record says. */
    private void read() {
        if (rows.isDisposed()) {
            return;
        }
        String job = site.document().id();
        PartKey key = site.key();
        JobStore store = site.store();
        Display display = rows.getDisplay();
        new DeskJob(words.text("receive.reading"), monitor -> {
            try {
                List<StockEntry> entries = store.stock().movesFor(job);
                List<ReceivedStock> before = store.current(job, key).map(s -> received((HandBack) s.part()))
                        .orElse(List.of());
                display.asyncExec(() -> {
                    if (!rows.isDisposed()) {
                        moved = entries;
                        kept = before;
                        show();
                    }
                });
            } catch (StoreException e) {
                display.asyncExec(() -> say(e.getMessage()));
            }
        }).schedule();
    }

    private static List<ReceivedStock> received(HandBack record) {
        return record.deliveries().stream().flatMap(d -> d.received().stream()).toList();
    }

    /** Shows what the draft says was put in stock, and what of it stock has. */
    void show() {
        put.setEnabled(site.blocked().isEmpty());
        HandBack record = record().orElse(null);
        List<ReceivedStock> now = record == null ? List.of() : received(record);
        List<String> lines = new ArrayList<>();
        now.forEach(r -> lines.add(line(r)));
        if (now.stream().noneMatch(r -> state(r) == State.TO_COME) && said.getText().equals(words.text("receive.noted"))) {
            say("");
        }
        kept.stream().filter(k -> now.stream().noneMatch(r -> r.id().equals(k.id())) && state(k) == State.THERE)
                .forEach(k -> lines.add(words.text("receive.out", amount(k.quantity()), sign(k), k.item(), k.quantity())));
        lines.add(Boolean.toString(put.isEnabled()));
        if (lines.equals(shown)) {
            return;
        }
        shown = lines;
        for (Control c : rows.getChildren()) {
            c.dispose();
        }
        Look look = Look.of(rows);
        for (int i = 0; i < lines.size() - 1; i++) {
            ReceivedStock of = i < now.size() ? now.get(i) : null;
            Label line = look.as(Look.Role.TEXT, new Label(rows, SWT.WRAP));
            line.setText(lines.get(i));
            line.setData(Desk.ID, "receive.line." + i);
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).span(of == null ? 2 : 1, 1)
                    .hint(look.wrapping(), SWT.DEFAULT).applyTo(line);
            if (of != null) {
                Button back = look.as(Look.Role.TEXT, new Button(rows, SWT.PUSH));
                back.setText(words.text("receive.back"));
                back.setData(Desk.ID, "receive.back." + i);
                back.setEnabled(put.isEnabled());
                back.addListener(SWT.Selection, e -> takeBack(of));
            }
        }
        Reach.ensure(rows);
        Grown.tell(rows);
    }

    private Optional<HandBack> record() {
        return site.document().part(site.key(), HandBack.class);
    }

    /** What stock knows of what the record says. */
    private enum State { TO_COME, THERE, TAKEN_BACK }

    private State state(ReceivedStock r) {
        List<StockEntry> of = moved.stream().filter(e -> r.moved(e.movement())
                && e.movement().kind() == StockMovement.Kind.RECEIVE).toList();
        return of.isEmpty() || kept.stream().noneMatch(k -> k.id().equals(r.id())) ? State.TO_COME
                : of.stream().anyMatch(e -> !e.undone()) ? State.THERE : State.TAKEN_BACK;
    }

    private String line(ReceivedStock r) {
        String key = "receive." + state(r).name() + (Boolean.TRUE.equals(r.setAside()) ? ".aside" : "");
        return words.text(key, amount(r.quantity()), sign(r), r.item(), r.quantity());
    }

    private static String sign(ReceivedStock r) {
        return r.unit() == null ? "" : r.unit().sign();
    }

    private static String amount(BigDecimal quantity) {
        NumberFormat format = NumberFormat.getInstance();
        format.setMaximumFractionDigits(StockItem.DECIMALS);
        return format.format(quantity);
    }

    private void ask() {
        int row = deliveries.row();
        List<HandBack.Delivery> all = record().map(HandBack::deliveries).orElse(List.of());
        if (row < 0 || row >= all.size()) {
            say(words.text("receive.rowFirst"));
            return;
        }
        HandBack.Delivery delivery = all.get(row);
        Display display = put.getDisplay();
        JobStore store = site.store();
        put.setEnabled(false);
        new DeskJob(words.text("receive.reading"), monitor -> {
            try {
                List<StockItem> items = store.stock().items().stream().map(s -> (StockItem) s.part()).toList();
                display.asyncExec(() -> open(row, delivery, items));
            } catch (StoreException e) {
                display.asyncExec(() -> {
                    say(e.getMessage());
                    show();
                });
            }
        }).schedule();
    }

    private void open(int row, HandBack.Delivery delivery, List<StockItem> items) {
        if (put.isDisposed()) {
            return;
        }
        show();
        if (items.stream().allMatch(i -> Boolean.TRUE.equals(i.retired()))) {
            say(words.text("receive.noItems"));
            return;
        }
        BigDecimal waits = came(delivery).subtract(booked(delivery));
        new ReceivingDialog(put.getShell(), words, delivery, waits.signum() > 0 ? waits : delivery.missing(), items,
                received -> put(row, delivery, received)).open();
    }

    private static BigDecimal came(HandBack.Delivery d) {
        return d.came() == null ? BigDecimal.ZERO : d.came();
    }

    private static BigDecimal booked(HandBack.Delivery d) {
        return d.received().stream().map(ReceivedStock::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** One step: what came is at least what is in stock of it, and it came last when the rest did. */
    private void put(int row, HandBack.Delivery delivery, ReceivedStock received) {
        if (put.isDisposed()) {
            return;
        }
        List<HandBack.Delivery> all = record().map(HandBack::deliveries).orElse(List.of());
        if (site.blocked().isPresent() || row >= all.size() || !all.get(row).equals(delivery)) {
            say(site.blocked().orElseGet(() -> words.text("receive.rowChanged")));
            return;
        }
        BigDecimal came = came(delivery).max(booked(delivery).add(received.quantity()));
        Optional<String> refused = site.document().change(site.key(), "/deliveries/" + row + "/came", tree -> {
            ObjectNode line = (ObjectNode) tree.withArray("deliveries").get(row);
            if (came.compareTo(came(delivery)) > 0 || delivery.lastCame() == null) {
                line.put("came", came).put("lastCame", LocalDate.now().toString());
            }
            line.withArray("received").add(site.json().mapper().valueToTree(received));
            return tree;
        });
        say(refused.orElseGet(() -> words.text("receive.noted")));
    }

    /** Out of the record, and with the next save out of stock; what came in came all the same. */
    private void takeBack(ReceivedStock received) {
        Optional<String> refused = site.document().change(site.key(), "/deliveries", tree -> {
            for (var line : tree.withArray("deliveries")) {
                ArrayNode of = ((ObjectNode) line).withArray("received");
                for (int i = of.size() - 1; i >= 0; i--) {
                    if (received.id().equals(of.get(i).path("id").asText())) {
                        of.remove(i);
                    }
                }
                if (of.isEmpty()) {
                    ((ObjectNode) line).remove("received");
                }
            }
            return tree;
        });
        say(refused.orElse(""));
    }

    private void say(String text) {
        if (!said.isDisposed() && !text.equals(said.getText())) {
            said.setText(text);
            Grown.tell(said);
        }
    }
}
