package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.jobs.customer.Merging;
import org.copperbook.sheets.ShippedLanguages;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.store.JobStore;
import org.copperbook.store.PartSave;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** The customers: each a part of its own, so that two people can change two of them at once. */
final class CustomersPane extends RegisterPane {

    private static final String[] HEADS = {"customers.name", "customers.address", "customers.phone", "customers.state"};

    private final ChosenList list;
    private final CustomerRows table;
    private final Map<String, Saved> kept = new TreeMap<>();
    private final JobStore.Listening listening;
    private final Button undoImport;
    private List<Saved> takenIn = List.of();
    private Form form;
    private String chosen = "";
    private String jobs = "";
    /** The keys under which the customer was known when its jobs were looked for. */
    private Set<String> family = Set.of();

    CustomersPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "customers");
        table = new CustomerRows(words, title());
        button("add", "customers.add", this::add);
        button("use", "instruments.use", this::outOfUseOrBack);
        button("doubles", "customers.doubles", () -> new DoublesWindow(control().getShell(), words, this::merge)
                .open(customers()));
        button("undoMerge", "customers.undoMerge", this::undoMerge);
        commonButtons();
        undoImport = button("undoImport", "customers.undoImport", this::undoImport);
        undoImport.setEnabled(false);
        list = new ChosenList(body(), words, "customers", HEADS, this::chosen);
        listening = session.store().onChange(c -> {
            if (JobStore.SHOP.equals(c.jobId()) && c.part().startsWith(PartKind.CUSTOMER.word() + "/")) {
                read();
            }
        });
        control().addListener(SWT.Dispose, e -> listening.close());
        read();
    }

    /** Reads every customer in the background. */
    private void read() {
        JobStore store = session().store();
        new DeskJob(words().text("registers.reading"), monitor -> {
            try {
                List<Saved> all = store.shopParts(PartKind.CUSTOMER);
                later(() -> {
                    kept.clear();
                    all.forEach(s -> kept.put(s.key().name(), s));
                    all.stream().filter(s -> editing().document().part(s.key()).isPresent())
                            .filter(s -> s.number() > editing().document().baseRevision(s.key()))
                            .forEach(s -> editing().took(List.of(s)));
                    changed();
                });
            } catch (StoreException e) {
                ILog.of(CustomersPane.class).error("the customers could not be read", e);
                later(() -> say(e.getMessage()));
            }
        }).schedule();
    }

    /** The customers as they stand on the screen, by key. */
    private Map<String, Customer> customers() {
        Map<String, Customer> all = new TreeMap<>();
        kept.forEach((k, s) -> all.put(k, (Customer) s.part()));
        editing().document().job().parts().forEach((k, p) -> {
            if (p instanceof Customer c) {
                all.put(k.name(), c);
            }
        });
        return all;
    }

    private Optional<Customer> customer(String key) {
        return Optional.ofNullable(customers().get(key));
    }

    private void add() {
        PartKey key = Customer.newKey();
        editing().document().put(key, Customer.named(""));
        list.choose(key.name());
        if (form != null) {
            form.focusFirst();
        }
    }

    private void outOfUseOrBack() {
        Optional<Customer> now = customer(chosen);
        if (now.isEmpty()) {
            say(words().text("registers.chooseFirst"));
            return;
        }
        boolean out = !Boolean.TRUE.equals(now.get().outOfUse());
        editing().document().change(Customer.key(chosen), "/outOfUse", tree -> {
            if (out) {
                tree.put("outOfUse", true);
            } else {
                tree.remove("outOfUse");
            }
            return tree;
        });
        say(words().text(out ? "customers.nowOut" : "customers.nowBack", now.get().name()));
    }

    private boolean merge(String goes, String stays) {
        Optional<Customer> merged = new Merging(customers()).merge(goes, stays);
        merged.ifPresent(c -> {
            begin(goes);
            editing().document().put(Customer.key(goes), c);
        });
        return merged.isPresent();
    }

    private void undoMerge() {
        Optional<Customer> now = customer(chosen);
        if (now.isEmpty() || now.get().mergedInto() == null) {
            say(words().text("customers.notMerged"));
            return;
        }
        editing().document().put(Customer.key(chosen), now.get().into(null));
        say(words().text("customers.unmerged", now.get().name()));
    }

    /** Opens a customer for changing. */
    private void begin(String key) {
        Saved saved = kept.get(key);
        if (saved != null && editing().document().part(saved.key()).isEmpty()) {
            editing().took(List.of(saved));
        }
    }

    private void chosen(String key) {
        chosen = key;
        jobs = "";
        begin(key);
        rebuild();
        lookForJobs();
        editing().shownChanged();
    }

    private void rebuild() {
        if (form != null) {
            form.control().dispose();
            form = null;
        }
        if (customer(chosen).isPresent()) {
            form = new Form(body(), editing().site(Customer.key(chosen)), words());
            GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
            form.section("customers.who")
                    .text("/name", "customers.name")
                    .text("/taxId", "customers.taxId")
                    .longText("/address", "customers.address")
                    .lines("/contacts", "customers.contacts", new ContactsEntry())
                    .text("/phone", "customers.phone")
                    .text("/mail", "customers.mail");
            form.section("customers.quotes")
                    .proposals("/language", "customers.language", ShippedLanguages::names)
                    .text("/currency", "customers.currency")
                    .text("/paymentTerms", "customers.paymentTerms")
                    .longText("/note", "customers.note");
            form.section("customers.jobs")
                    .computed("customers.jobs", "customers.jobs", () -> jobs)
                    .computed("customers.alsoKnown", "customers.alsoKnown", this::alsoKnown);
            form.refresh();
        }
        body().layout(true, true);
    }

    private String alsoKnown() {
        Set<String> names = new LinkedHashSet<>(new Merging(customers()).names(chosen));
        customer(chosen).map(Customer::name).ifPresent(names::remove);
        return String.join("; ", names);
    }

    private void lookForJobs() {
        String mine = chosen;
        Map<String, Customer> all = customers();
        family = new Merging(all).family(mine);
        JobStore store = session().store();
        new DeskJob(words().text("registers.reading"), monitor -> {
            try {
                String found = CustomerJobs.of(store, all, mine).said(words());
                later(() -> {
                    if (mine.equals(chosen) && form != null) {
                        jobs = found;
                        form.refresh();
                    }
                });
            } catch (StoreException e) {
                ILog.of(CustomersPane.class).error("the jobs of a customer could not be read", e);
            }
        }).schedule();
    }

    @Override
    boolean owns(PartKey key) {
        return key.kind() == PartKind.CUSTOMER;
    }

    @Override
    Optional<PartKey> key() {
        return chosen.isEmpty() ? Optional.empty() : Optional.of(Customer.key(chosen));
    }

    @Override
    void changed() {
        Map<String, Customer> all = customers();
        List<ChosenList.Entry> entries = new ArrayList<>();
        all.forEach((k, c) -> entries.add(new ChosenList.Entry(k, List.of(said(c.name()),
                said(c.address()).replaceAll("\\R+", ", "), said(c.phone()), state(c, all)), said(c.mail()) + " "
                + said(c.taxId()) + " " + String.join(" ", c.contacts().stream().map(Contact::line).toList()), false)));
        entries.sort(Comparator.comparing((ChosenList.Entry e) -> e.cells().get(0), String.CASE_INSENSITIVE_ORDER)
                .thenComparing(ChosenList.Entry::key));
        list.show(entries);
        if (chosen.isEmpty() && !entries.isEmpty()) {
            list.choose(entries.get(0).key());
        } else if (form != null) {
            form.refresh();
            if (!new Merging(all).family(chosen).equals(family)) {
                lookForJobs();
            }
        }
    }

    @Override
    void show(PartKey part) {
        list.choose(part.name());
    }

    private String state(Customer c, Map<String, Customer> all) {
        if (c.mergedInto() != null) {
            Customer into = all.get(c.mergedInto());
            return words().text("customers.mergedInto", into == null ? c.mergedInto() : said(into.name()));
        }
        return Boolean.TRUE.equals(c.outOfUse()) ? words().text("instruments.outOfUse") : "";
    }

    private static String said(String text) {
        return text == null ? "" : text;
    }

    @Override
    Optional<String> problem() {
        boolean nameless = editing().document().job().parts().entrySet().stream()
                .anyMatch(e -> e.getValue() instanceof Customer c && editing().document().dirty(e.getKey())
                        && said(c.name()).isBlank());
        return nameless ? Optional.of(words().text("customers.nameless")) : Optional.empty();
    }

    @Override
    void setFocus() {
        list.focus();
    }

    @Override
    void resized() {
        list.fit();
        rebuild();
    }

    @Override
    RegisterShape shape() {
        return table.shape();
    }

    @Override
    CopiedBlock block() {
        return list.block();
    }

    @Override
    List<Map<String, Object>> rows() {
        return table.rows(customers().values());
    }

    @Override
    void importTable() {
        Optional<String> who = whoOrSay();
        if (who.isEmpty()) {
            return;
        }
        String why = words().text("import.why");
        new ImportWindow<Customer>(control().getShell(), words(), title(), shape(), table.maker(customers().values()),
                (rows, goOn) -> {
                    List<Saved> saved = session().store().saveShopParts(rows.stream()
                            .map(c -> new PartSave(Customer.newKey(), c, 0)).toList(), who.get(), why, goOn);
                    later(() -> imported(saved));
                    return words().text("customers.takenIn", saved.size());
                }, told -> {
                    if (!control().isDisposed()) {
                        say(told);
                    }
                }).open();
    }

    private void imported(List<Saved> saved) {
        takenIn = saved;
        undoImport.setEnabled(!saved.isEmpty());
    }

    /** Sets out of use what the last table brought in and nobody has changed since; the chain cannot forget it. */
    private void undoImport() {
        Optional<String> who = whoOrSay();
        if (who.isEmpty()) {
            return;
        }
        List<Saved> from = takenIn;
        String why = words().text("customers.undoImport");
        JobStore store = session().store();
        imported(List.of());
        new DeskJob(why, monitor -> {
            try {
                List<PartSave> back = from.stream().filter(s -> store.current(JobStore.SHOP, s.key())
                        .filter(now -> now.number() == s.number()).isPresent())
                        .map(s -> new PartSave(s.key(), ((Customer) s.part()).retired(), s.number())).toList();
                store.saveShopParts(back, who.get(), why);
                later(() -> say(words().text("customers.importUndone", back.size(), from.size() - back.size())));
            } catch (StoreException e) {
                later(() -> {
                    imported(from);
                    say(e.getMessage());
                });
            }
        }).schedule();
    }
}
