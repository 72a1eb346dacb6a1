package org.copperbook.inspection.customer;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.FittedColumns;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.customer.CustomerRecall;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * Customers of the shop's register, offered as the name is typed: arrow down and Enter take one, with its contact. Who is
 * not there yet is put there by one button. The register is read outside the window's thread, once somebody is asked for.
 */
public final class RegisterCustomers {

    private static final String[] COLUMNS =
            {"offered.name", "offered.address", "offered.phone", "offered.foundBy"};
    private static final int MOST_ROWS = 6;
    /** Longer than any name of a customer: what was typed is something else. */
    private static final int LONGEST_NAME = 120;

    private final PageSite site;
    private final Words words;
    private final Consumer<String> goTo;
    private final TakenCustomer taken;
    private final Composite area;
    private final Label said;
    private final Table table;
    private final FittedColumns widths;
    private final Composite actions;
    private final Composite keeping;
    private final Button take;
    private final Button keep;
    private CustomerRecall register;
    private boolean reading;
    private String note = "";
    /** The booking of which the note speaks; about another one it says nothing. */
    private Optional<Booking> noteFor = Optional.empty();

    /**
     * Builds the area.
     *
     * @param keeping where the button stands that puts a name into the register; it has no layout yet
     * @param goTo puts the cursor on the field with a JSON pointer
     */
    public RegisterCustomers(Composite area, Composite keeping, PageSite site, Words words, Consumer<String> goTo) {
        this.area = area;
        this.keeping = keeping;
        this.site = site;
        this.words = words;
        this.goTo = goTo;
        taken = new TakenCustomer(site.document());
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "offered.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "offered.customers");
        SpokenName.give(table, words.text("offered.title"));
        for (String column : COLUMNS) {
            new TableColumn(table, SWT.NONE).setText(words.text(column));
        }
        widths = new FittedColumns(table, new int[COLUMNS.length]);
        Rows.dress(table, column -> false);
        table.addListener(SWT.Selection, e -> enable());
        table.addListener(SWT.DefaultSelection, e -> take());
        table.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                goTo.accept("/customer");
            }
        });
        actions = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().wrap(true).spacing(8).applyTo(actions);
        take = button(actions, "offered.take", this::take);
        RowLayoutFactory.fillDefaults().wrap(true).applyTo(keeping);
        keep = button(keeping, "offered.keep", this::keep);
        JobStore.Listening listening = site.store().onChange(c -> {
            if (JobStore.SHOP.equals(c.jobId()) && c.part().startsWith(PartKind.CUSTOMER.word() + "/")) {
                later(this::readAgain);
            }
        });
        area.addDisposeListener(e -> listening.close());
        show();
        if (site.document().number().isEmpty()) {
            // A machine is booked in: the register is there before the first letter is.
            read();
        }
    }

    private Button button(Composite row, String key, Runnable does) {
        Button b = Look.of(area).as(Look.Role.TEXT, new Button(row, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, key);
        b.addListener(SWT.Selection, e -> does.run());
        return b;
    }

    /** Looks again when the booking has changed. */
    public void follow() {
        if (register == null && !reading && (customerKey() != null || typed().length() >= CustomerRecall.LEAST_CHARS)) {
            read();
        }
        if (show()) {
            Grown.tell(area);
        }
    }

    /** Puts the cursor on the first offer; false when there is none. */
    public boolean focus() {
        if (!table.getVisible() || table.getItemCount() == 0) {
            return false;
        }
        table.setSelection(0);
        enable();
        if (!table.setFocus()) {
            // Offered at this very key: the list takes the cursor once it has its place on the page.
            table.getDisplay().asyncExec(() -> {
                if (!table.isDisposed()) {
                    table.setFocus();
                }
            });
        }
        return true;
    }

    /** The contacts of the customer taken from the register; none for a customer who was only typed. */
    public List<Contact> contacts() {
        return linked().map(f -> f.customer().contacts()).orElse(List.of());
    }

    private Optional<Booking> booking() {
        return site.document().part(site.key(), Booking.class);
    }

    private String typed() {
        return booking().map(Booking::customer).map(String::strip).orElse("");
    }

    private String customerKey() {
        return booking().map(Booking::customerKey).orElse(null);
    }

    private Optional<CustomerRecall.Found> linked() {
        return register == null ? Optional.empty() : register.behind(customerKey());
    }

    private void readAgain() {
        if (register != null) {
            read();
        }
    }

    private void read() {
        reading = true;
        JobStore store = site.store();
        new DeskJob(words.text("offered.reading"), monitor -> {
            Map<String, Customer> all = new HashMap<>();
            try {
                store.shopParts(PartKind.CUSTOMER).forEach(s -> all.put(s.key().name(), (Customer) s.part()));
            } catch (StoreException e) {
                ILog.of(RegisterCustomers.class).error("the customers could not be read", e);
            }
            CustomerRecall now = new CustomerRecall(all);
            later(() -> {
                reading = false;
                register = now;
                if (show()) {
                    Grown.tell(area);
                }
            });
        }).schedule();
    }

    private void later(Runnable does) {
        if (!area.isDisposed()) {
            area.getDisplay().asyncExec(() -> {
                if (!area.isDisposed()) {
                    does.run();
                }
            });
        }
    }

    /**
     * Shows what fits the booking now. Does not lay out: asked for while the page is built, a layout would hold back the
     * page's own.
     *
     * @return whether the area needs another size
     */
    private boolean show() {
        boolean open = site.blocked().isEmpty();
        boolean asks = open && register != null && customerKey() == null && typed().length() >= CustomerRecall.LEAST_CHARS;
        List<CustomerRecall.Found> found = asks ? register.find(typed()) : List.of();
        List<CustomerRecall.Found> rows = found.subList(0, Math.min(MOST_ROWS, found.size()));
        boolean changed = !rows.equals(shownRows());
        if (changed) {
            fill(rows);
        }
        changed |= say(said(asks, found.size()));
        changed |= shown(table, !rows.isEmpty());
        changed |= shown(actions, !rows.isEmpty());
        changed |= shown(keeping, asks);
        enable();
        return changed;
    }

    private List<Object> shownRows() {
        return Stream.of(table.getItems()).map(TableItem::getData).toList();
    }

    private void fill(List<CustomerRecall.Found> rows) {
        table.removeAll();
        for (CustomerRecall.Found row : rows) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {row.customer().name(), line(row.customer().address()), line(row.customer().phone()),
                    row.by()});
            item.setData(row);
        }
        if (!rows.isEmpty()) {
            table.select(0);
            widths.fit();
            ((GridData) table.getLayoutData()).heightHint =
                    table.getHeaderHeight() + table.getItemHeight() * (rows.size() + 1);
        }
    }

    private String said(boolean asks, int found) {
        if (!note.isEmpty() && noteFor.equals(booking())) {
            return note;
        }
        if (customerKey() != null && register != null) {
            return linked().map(f -> f.customer().name() == null || f.customer().name().equals(typed())
                            ? words.text("offered.linked") : words.text("offered.linkedAs", f.customer().name()))
                    .orElse(words.text("offered.gone"));
        }
        if (!asks) {
            return words.text("offered.hint");
        }
        return found == 0 ? words.text("offered.none") : found > MOST_ROWS ? words.text("offered.more", MOST_ROWS, found)
                : words.text("offered.some");
    }

    private boolean say(String text) {
        boolean changed = !text.equals(said.getText());
        if (changed) {
            said.setText(text);
        }
        return changed;
    }

    private void note(String text) {
        note = text;
        noteFor = booking();
        if (show()) {
            Grown.tell(area);
        }
    }

    private static boolean shown(Control what, boolean now) {
        boolean before = what.getVisible() && what.getLayoutData() != null;
        what.setVisible(now);
        if (what.getLayoutData() == null) {
            GridDataFactory.fillDefaults().grab(true, false).applyTo(what);
        }
        ((GridData) what.getLayoutData()).exclude = !now;
        return before != now;
    }

    private void enable() {
        take.setEnabled(chosen().isPresent());
        keep.setEnabled(register != null && typed().length() <= LONGEST_NAME && !register.has(typed()));
    }

    private Optional<CustomerRecall.Found> chosen() {
        TableItem[] s = table.getSelection();
        return s.length == 1 ? Optional.of((CustomerRecall.Found) s[0].getData()) : Optional.empty();
    }

    private void take() {
        chosen().ifPresent(found -> {
            boolean had = booking().map(b -> b.contact() != null || b.contactKey() != null).orElse(false);
            taken.take(found.key(), found.customer());
            boolean contact = !found.customer().contacts().isEmpty();
            note(words.text(!contact ? "offered.taken" : had ? "offered.takenContactStays" : "offered.takenContact",
                    found.customer().name(), contact ? found.customer().contacts().get(0).name() : "",
                    found.customer().contacts().size()));
            goTo.accept(had || contact ? "/orderNo" : "/contact");
        });
    }

    /** Puts the customer as typed into the register and ties the booking to it. */
    private void keep() {
        Optional<String> who = site.who();
        if (who.isEmpty()) {
            note(words.text("offered.whoFirst"));
            return;
        }
        String name = typed();
        PartKey key = Customer.newKey();
        Customer customer = TakenCustomer.asTyped(name, booking().map(Booking::contact).orElse(null));
        JobStore store = site.store();
        keep.setEnabled(false);
        String why = words.text("offered.why");
        new DeskJob(words.text("offered.keeping"), monitor -> {
            try {
                store.saveShopPart(key, customer, 0, who.get(), why);
                later(() -> {
                    if (name.equals(typed()) && customerKey() == null) {
                        taken.tie(key.name());
                    }
                    note(words.text("offered.kept", name));
                    goTo.accept("/orderNo");
                });
            } catch (StoreException e) {
                later(() -> note(e.getMessage()));
            }
        }).schedule();
    }

    private static String line(String text) {
        return text == null ? "" : text.replaceAll("\\R+", ", ");
    }
}
