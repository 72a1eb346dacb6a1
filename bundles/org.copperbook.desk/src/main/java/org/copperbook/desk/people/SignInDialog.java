package org.copperbook.desk.people;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.shop.Person;
import org.copperbook.store.StoreException;
import org.copperbook.store.people.SignIn;
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
import org.eclipse.ui.PlatformUI;

/**
 * Asks who works here: a large button for each person, and the secret where the workshop has secrets. Whoever closes it
 * leaves signed in who was.
 */
public final class SignInDialog extends Dialog {

    private static final int COLUMNS = 2;
    private static final int WIDTH_CHARS = 60;
    private static final int NUMBERED = 9;

    private final DeskSession session;
    private final Map<String, Button> people = new LinkedHashMap<>();
    private String chosen;
    private Text secret;
    private Label said;

    private SignInDialog(Shell parent, DeskSession session, String chosen) {
        super(parent);
        this.session = session;
        this.chosen = chosen;
        setBlockOnOpen(false);
    }

    /** Opens it over the workbench's window, with a person chosen or, where null, nobody. */
    public static void open(String chosen) {
        new SignInDialog(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), DeskSession.ofWorkbench(),
                chosen).open();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(DeskWords.text("signIn.title"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Look look = Look.of(parent);
        words(area, look, DeskWords.text(session.hasSecrets() ? "signIn.ask" : "signIn.byName"));
        Composite names = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).equalWidth(true).spacing(8, 6).applyTo(names);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(names);
        List<Person> staff = session.shop().people().values().stream()
                .filter(p -> p.active() && !p.roles().isEmpty()).toList();
        for (Person p : staff) {
            person(names, look, p);
        }
        if (staff.isEmpty()) {
            words(area, look, DeskWords.text("signIn.nobody"));
        }
        if (session.hasSecrets()) {
            Composite row = new Composite(area, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(row);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
            Label l = look.as(Look.Role.TEXT, new Label(row, SWT.NONE));
            l.setText(DeskWords.text("signIn.secret"));
            secret = look.as(Look.Role.TEXT, new Text(row, SWT.BORDER | SWT.PASSWORD));
            secret.setData(Desk.ID, "signIn/secret");
            SpokenName.give(secret, DeskWords.text("signIn.secret"));
            GridDataFactory.fillDefaults().grab(true, false).applyTo(secret);
        }
        said = words(area, look, "");
        said.setData(Desk.ID, "signIn/said");
        said.setForeground(look.palette().problem());
        Reach.ensure(area);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        if (session.hasSecrets()) {
            dressed(createButton(parent, IDialogConstants.OK_ID, DeskWords.text("signIn.do"), true), "signIn/do");
        }
        dressed(createButton(parent, IDialogConstants.CANCEL_ID, DeskWords.text("signIn.close"), false),
                "signIn/close");
        Reach.ensure(parent);
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        if (chosen != null && people.containsKey(chosen)) {
            choose(chosen);
        } else if (!people.isEmpty()) {
            people.values().iterator().next().setFocus();
        }
        return contents;
    }

    @Override
    protected void okPressed() {
        if (!people.containsKey(chosen)) {
            say(DeskWords.text("signIn.chooseFirst"));
            return;
        }
        char[] typed = secret.getTextChars();
        secret.setTextChars(new char[0]);
        String key = chosen;
        working(true);
        say(DeskWords.text("signIn.checking"));
        Display display = getShell().getDisplay();
        new DeskJob(DeskWords.text("signIn.task"), monitor -> {
            String refused = tried(key, typed);
            if (refused == null) {
                session.signedInOrOut();
            }
            display.asyncExec(() -> answered(refused));
        }).schedule();
    }

    /** Why somebody was not signed in; null when the person was. */
    private String tried(String key, char[] typed) {
        try {
            return session.store().accounts().signIn(key, typed) instanceof SignIn.Refused r ? r.message() : null;
        } catch (StoreException e) {
            return e.getMessage();
        } finally {
            Arrays.fill(typed, '\0');
        }
    }

    private void answered(String refused) {
        if (getShell() == null || getShell().isDisposed()) {
            return;
        }
        if (refused == null) {
            close();
            return;
        }
        working(false);
        say(refused);
        secret.setFocus();
    }

    private void working(boolean now) {
        getButton(IDialogConstants.OK_ID).setEnabled(!now);
        secret.setEnabled(!now);
        people.values().forEach(b -> b.setEnabled(!now));
    }

    private void person(Composite names, Look look, Person p) {
        Button b = look.as(Look.Role.STRONG, new Button(names, SWT.TOGGLE));
        int number = people.size() + 1;
        String name = p.name() == null ? p.key() : p.name().replace("&", "&&");
        b.setText(DeskWords.text(number <= NUMBERED ? "signIn.person" : "signIn.further", number, name));
        b.setData(Desk.ID, "signIn/person/" + p.key());
        b.setSelection(session.who().filter(p.key()::equals).isPresent());
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, look.rowHeight() * 3 / 2).applyTo(b);
        b.addListener(SWT.Selection, e -> choose(p.key()));
        b.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_RETURN) {
                e.doit = false;
                choose(p.key());
            }
        });
        b.addListener(SWT.KeyDown, e -> chooseByNumber(e.character));
        people.put(p.key(), b);
    }

    /** The number before a name chooses it, also without Alt, while the cursor is among the names. */
    private void chooseByNumber(char typed) {
        int number = Character.digit(typed, 10);
        if (number >= 1 && number <= Math.min(NUMBERED, people.size())) {
            choose(List.copyOf(people.keySet()).get(number - 1));
        }
    }

    private void choose(String key) {
        chosen = key;
        people.forEach((k, b) -> b.setSelection(k.equals(key)));
        if (session.hasSecrets()) {
            secret.setFocus();
        } else {
            session.who(key);
            close();
        }
    }

    private void say(String words) {
        said.setText(words);
        getShell().layout(true, true);
        getShell().pack();
    }

    private static Label words(Composite area, Look look, String words) {
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        l.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(WIDTH_CHARS), SWT.DEFAULT).applyTo(l);
        return l;
    }

    private static void dressed(Button b, String id) {
        Look.of(b).as(Look.Role.TEXT, b);
        b.setData(Desk.ID, id);
    }
}
