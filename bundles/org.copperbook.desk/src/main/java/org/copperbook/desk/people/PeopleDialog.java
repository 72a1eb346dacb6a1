package org.copperbook.desk.people;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.StoreException;
import org.copperbook.store.people.Accounts;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** The people of the shop: names, roles, who has left, and their secrets. What may not be done the store refuses. */
public final class PeopleDialog extends Dialog {

    private static final int WORDS_CHARS = 76;
    private static final int LIST_CHARS = 26;
    private static final int LIST_ROWS = 10;
    private static final int FIELD_CHARS = 34;

    private final DeskSession session;
    private final List<String> keys = new ArrayList<>();
    private final Map<Role, Button> roles = new EnumMap<>(Role.class);
    private Label state;
    private org.eclipse.swt.widgets.List list;
    private Text name;
    private Button active;
    private Label secretState;
    private Text old;
    private Text secret;
    private Text again;
    private Label said;
    private Set<String> withSecret = Set.of();
    private String key;

    private PeopleDialog(Shell parent, DeskSession session) {
        super(parent);
        this.session = session;
        setBlockOnOpen(false);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Opens it. */
    static void open(Shell parent) {
        new PeopleDialog(parent, DeskSession.ofWorkbench()).open();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(DeskWords.text("people.title"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        state = words(area, "");
        Composite halves = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(16, 0).applyTo(halves);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        people(halves);
        Composite right = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 6).applyTo(right);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(right);
        person(right);
        secret(right);
        said = words(area, "");
        said.setData(Desk.ID, "people/said");
        said.setForeground(Look.of(area).palette().problem());
        Reach.ensure(area);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        Button close = createButton(parent, IDialogConstants.CANCEL_ID, DeskWords.text("people.close"), false);
        Look.of(close).as(Look.Role.TEXT, close);
        close.setData(Desk.ID, "people/close");
        Reach.ensure(parent);
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        read(session.who().orElse(null), "");
        return contents;
    }

    private void people(Composite halves) {
        Look look = Look.of(halves);
        Composite left = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(left);
        GridDataFactory.fillDefaults().grab(false, true).applyTo(left);
        label(left, "people.list");
        list = look.as(Look.Role.TEXT, new org.eclipse.swt.widgets.List(left, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL));
        list.setData(Desk.ID, "people/list");
        SpokenName.give(list, DeskWords.text("people.list"));
        GridDataFactory.fillDefaults().grab(true, true).hint(look.chars(LIST_CHARS), look.rowHeight() * LIST_ROWS)
                .applyTo(list);
        list.addListener(SWT.Selection, e -> show(keys.get(list.getSelectionIndex())));
        button(left, "people.new", "people/new", () -> {
            list.deselectAll();
            show(null);
            name.setFocus();
        });
    }

    private void person(Composite right) {
        name = field(right, "people.name", "people/name", SWT.BORDER);
        label(right, "people.roles");
        Composite checks = new Composite(right, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 2).applyTo(checks);
        for (Role r : Role.values()) {
            roles.put(r, check(checks, DeskWords.get().of(r), "people/role/" + r));
        }
        label(right, null);
        active = check(right, DeskWords.text("people.active"), "people/active");
        label(right, null);
        button(right, "people.save", "people/save", this::savePerson);
    }

    private void secret(Composite right) {
        secretState = Look.of(right).as(Look.Role.STRONG, new Label(right, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).indent(0, 10).applyTo(secretState);
        old = field(right, "people.old", "people/old", SWT.BORDER | SWT.PASSWORD);
        secret = field(right, "people.secret", "people/secret", SWT.BORDER | SWT.PASSWORD);
        again = field(right, "people.again", "people/again", SWT.BORDER | SWT.PASSWORD);
        Label rule = Look.of(right).as(Look.Role.TEXT, new Label(right, SWT.WRAP));
        rule.setText(DeskWords.text("people.words", Accounts.SHORTEST));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false)
                .hint(Look.of(right).chars(FIELD_CHARS), SWT.DEFAULT).applyTo(rule);
        label(right, null);
        button(right, "people.setSecret", "people/setSecret", this::setSecret);
    }

    /** Reads anew who there is and who has a secret, and shows a person and what there is to say. */
    private void read(String shown, String words) {
        Display display = getShell().getDisplay();
        session.background().execute(() -> {
            session.signedInOrOut();
            Set<String> found = session.store().accounts().withSecret();
            display.asyncExec(() -> {
                if (getShell() != null && !getShell().isDisposed()) {
                    withSecret = found;
                    fill(shown);
                    say(words);
                }
            });
        });
    }

    private void fill(String shown) {
        state.setText(DeskWords.text(session.hasSecrets() ? "people.inForce" : "people.open"));
        keys.clear();
        list.removeAll();
        for (Person p : session.shop().people().values()) {
            if (!p.roles().isEmpty()) {
                keys.add(p.key());
                list.add(p.name() == null ? p.key() : p.name());
            }
        }
        String next = keys.contains(shown) ? shown : keys.isEmpty() ? null : keys.get(0);
        list.select(keys.indexOf(next));
        show(next);
    }

    private void show(String next) {
        key = next;
        Person p = session.shop().person(next).orElse(null);
        name.setText(p == null || p.name() == null ? "" : p.name());
        roles.forEach((r, b) -> b.setSelection(p != null && p.roles().contains(r)));
        active.setSelection(p == null || p.active());
        boolean has = next != null && withSecret.contains(next);
        secretState.setText(p == null ? DeskWords.text("people.saveFirst")
                : p.name() + ": " + DeskWords.text(has ? "people.has" : "people.hasNone"));
        old.setEnabled(has && session.who().filter(k -> k.equals(next)).isPresent());
        for (Text t : List.of(old, secret, again)) {
            t.setTextChars(new char[0]);
        }
        say("");
    }

    private void savePerson() {
        String typed = name.getText().strip();
        Set<Role> held = EnumSet.noneOf(Role.class);
        roles.forEach((r, b) -> {
            if (b.getSelection()) {
                held.add(r);
            }
        });
        if (typed.isEmpty() || held.isEmpty()) {
            say(DeskWords.text(typed.isEmpty() ? "people.needsName" : "people.needsRole"));
            return;
        }
        Person before = session.shop().person(key).orElse(null);
        Person next = before == null
                ? new Person(Person.newKey(), typed, held, null, null,
                        active.getSelection())
                : new Person(before.key(), typed, held, before.phone(), before.mail(), active.getSelection(),
                        before.more());
        work(next.key(), DeskWords.text("people.saved", typed), 
                () -> session.store().savePerson(next, session.who().orElse(next.key())));
    }

    private void setSecret() {
        if (key == null) {
            say(DeskWords.text("people.saveFirst"));
            return;
        }
        char[] fresh = secret.getTextChars();
        char[] repeated = again.getTextChars();
        char[] former = old.getTextChars();
        boolean same = Arrays.equals(fresh, repeated);
        Arrays.fill(repeated, '\0');
        if (!same) {
            Arrays.fill(fresh, '\0');
            Arrays.fill(former, '\0');
            say(DeskWords.text("people.differ"));
            return;
        }
        String of = key;
        boolean own = old.isEnabled();
        Accounts accounts = session.store().accounts();
        work(of, DeskWords.text("people.secretSet", session.shop().nameOf(of)), () -> {
            if (!session.hasSecrets()) {
                accounts.begin(of, fresh);
            } else if (own) {
                accounts.change(former, fresh);
            } else {
                accounts.reset(of, fresh);
            }
        });
    }

    /** Does something outside the window's thread and says what came of it; a refusal changes nothing on the screen. */
    private void work(String shown, String done, Runnable work) {
        Display display = getShell().getDisplay();
        new DeskJob(DeskWords.text("people.task"), monitor -> {
            try {
                work.run();
                display.asyncExec(() -> {
                    if (getShell() != null && !getShell().isDisposed()) {
                        read(shown, done);
                    }
                });
            } catch (StoreException e) {
                display.asyncExec(() -> {
                    if (getShell() != null && !getShell().isDisposed()) {
                        say(e.getMessage());
                    }
                });
            }
        }).schedule();
    }

    private void say(String words) {
        said.setText(words);
        getShell().layout(true, true);
        getShell().pack();
    }

    private static Label words(Composite area, String words) {
        Look look = Look.of(area);
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        l.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(WORDS_CHARS), SWT.DEFAULT).applyTo(l);
        return l;
    }

    private static void label(Composite parent, String text) {
        Label l = Look.of(parent).as(Look.Role.TEXT, new Label(parent, SWT.NONE));
        l.setText(text == null ? "" : DeskWords.text(text));
    }

    private static Text field(Composite parent, String text, String id, int style) {
        label(parent, text);
        Text t = Look.of(parent).as(Look.Role.TEXT, new Text(parent, style));
        t.setData(Desk.ID, id);
        SpokenName.give(t, DeskWords.text(text));
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(parent).chars(FIELD_CHARS), SWT.DEFAULT).applyTo(t);
        return t;
    }

    private static Button check(Composite parent, String text, String id) {
        Button b = Look.of(parent).as(Look.Role.TEXT, new Button(parent, SWT.CHECK));
        b.setText(text);
        b.setData(Desk.ID, id);
        return b;
    }

    private static void button(Composite parent, String text, String id, Runnable action) {
        Button b = Look.of(parent).as(Look.Role.TEXT, new Button(parent, SWT.PUSH));
        b.setText(DeskWords.text(text));
        b.setData(Desk.ID, id);
        b.addListener(SWT.Selection, e -> action.run());
    }
}
