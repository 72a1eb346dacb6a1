package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Person;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.store.Intake;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import org.copperbook.store.StoreException;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.handlers.IHandlerService;

/** The people of the shop; names, roles and secrets of one are changed in a window of their own, because of the secrets. */
final class PeoplePane extends RegisterPane {

    private static final String COMMAND = Desk.BUNDLE + ".command.people";
    private static final PartKey STAFF = PartKey.of(PartKind.STAFF);
    private static final String[] HEADS = {"people.name", "people.roles", "people.active"};

    private final PeopleRows table;
    private final ChosenList list;
    private final Button undoImport;
    private List<Person> takenIn = List.of();

    PeoplePane(Composite parent, ShopEditing editing, DeskSession session, Words words, IHandlerService handlers) {
        super(parent, editing, session, words, "people");
        table = new PeopleRows(words, title());
        button("open", "people.open", () -> {
            try {
                handlers.executeCommand(COMMAND, null);
            } catch (CommandException x) {
                ILog.of(PeoplePane.class).error("the people could not be shown", x);
            }
        });
        commonButtons();
        undoImport = button("undoImport", "people.undoImport", this::undoImport);
        undoImport.setEnabled(false);
        Label about = Look.of(parent).as(Look.Role.TEXT, new Label(body(), SWT.WRAP));
        about.setText(words.text("people.about"));
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(parent).wrapping(), SWT.DEFAULT).applyTo(about);
        list = new ChosenList(body(), words, "people", HEADS, key -> { });
        list.fill();
        Runnable follow = () -> later(this::show);
        session.onShop(follow);
        control().addDisposeListener(e -> session.removeOnShop(follow));
        show();
    }

    /** Everybody who has a role here; contacts of customers have none. */
    private List<Person> people() {
        return session().shop().people().values().stream().filter(p -> !p.roles().isEmpty()).toList();
    }

    private void show() {
        List<ChosenList.Entry> entries = new ArrayList<>();
        for (Person p : people()) {
            entries.add(new ChosenList.Entry(p.key(), List.of(p.name() == null ? p.key() : p.name(), PeopleRows.roles(p),
                    words().text(p.active() ? "people.here" : "people.left")), "", false));
        }
        list.show(entries);
    }

    @Override
    boolean owns(PartKey key) {
        return false;
    }

    @Override
    Optional<PartKey> key() {
        return Optional.of(STAFF);
    }

    /** Roles go back only by giving them anew, so that nobody gets one by looking at the past. */
    @Override
    boolean goesBack() {
        return false;
    }

    @Override
    void changed() {
        show();
    }

    @Override
    void setFocus() {
        list.focus();
    }

    @Override
    void resized() {
        list.fit();
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
        return table.rows(people());
    }

    @Override
    void importTable() {
        Optional<String> who = whoOrSay();
        if (who.isEmpty()) {
            return;
        }
        new ImportWindow<Person>(control().getShell(), words(), title(), shape(), table.maker(people()), (rows, goOn) -> {
            if (!goOn.test(0)) {
                throw new CancellationException(words().text("people.stopped"));
            }
            keep(rows, who.get(), words().text("import.why"));
            later(() -> imported(rows));
            return words().text("people.takenIn", rows.size());
        }, told -> {
            if (!control().isDisposed()) {
                say(told);
            }
        }).open();
    }

    private void keep(List<Person> people, String who, String why) {
        session().store().takeIn(new Intake(Map.of(), people, List.of(), List.of()), who, why, NumberTaken.REFUSE);
    }

    private void imported(List<Person> people) {
        takenIn = people;
        undoImport.setEnabled(!people.isEmpty());
    }

    /** Those whom the last table brought in and nobody changed since work here no more; the chain cannot forget them. */
    private void undoImport() {
        Optional<String> who = whoOrSay();
        if (who.isEmpty()) {
            return;
        }
        Map<String, Person> now = session().shop().people();
        List<Person> back = takenIn.stream().filter(p -> p.equals(now.get(p.key())))
                .map(p -> new Person(p.key(), p.name(), p.roles(), p.phone(), p.mail(), false, p.more())).toList();
        int kept = takenIn.size() - back.size();
        JobStore store = session().store();
        String why = words().text("people.undoImport");
        new DeskJob(why, monitor -> {
            String said;
            try {
                if (!back.isEmpty()) {
                    store.takeIn(new Intake(Map.of(), back, List.of(), List.of()), who.get(), why, NumberTaken.REFUSE);
                }
                said = words().text("people.importUndone", back.size(), kept);
                later(() -> imported(List.of()));
            } catch (StoreException e) {
                said = e.getMessage();
            }
            String told = said;
            later(() -> say(told));
        }).schedule();
    }
}
