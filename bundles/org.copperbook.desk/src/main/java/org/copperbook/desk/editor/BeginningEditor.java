package org.copperbook.desk.editor;

import java.time.Year;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Change;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.EnterMovesOn;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberPattern;
import org.copperbook.store.StoreException;
import org.copperbook.store.people.Accounts;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.part.EditorPart;

/** The beginning of an empty workshop: its name, currency, units, reference temperature, and who begins. */
public final class BeginningEditor extends EditorPart {

    private static final PartKey WORKSHOP = PartKey.of(PartKind.WORKSHOP);
    private static final int WIDTH_CHARS = 70;

    private DeskSession session;
    private JobDocument document;
    private Form form;
    private Composite box;
    private ReadyToBookIn ready;
    private Text person;
    private Text secret;
    private Text again;
    private Label problem;
    private Button begin;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        session = DeskSession.ofWorkbench();
    }

    @Override
    public void createPartControl(Composite parent) {
        if (session.isBegun()) {
            ready = new ReadyToBookIn(parent, getSite());
            return;
        }
        document = new JobDocument(new Job(JobStore.SHOP, "", Map.of()), Map.of(), session.json());
        document.beginWith(WORKSHOP, session.json().tree(new Workshop(Workshop.SCHEMA, null, null, localCurrency(),
                null, null, null, null, null, null, null, Map.of())));
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(24, 18).spacing(0, 8).applyTo(box);
        Label title = look.as(Look.Role.HEADING, new Label(box, SWT.NONE));
        title.setText(DeskWords.text("beginning.title"));
        Label words = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        words.setText(DeskWords.text("beginning.words", session.store().file()));
        GridDataFactory.fillDefaults().hint(look.chars(WIDTH_CHARS), SWT.DEFAULT).applyTo(words);
        form = new Form(box, new ShopSite(session, document, WORKSHOP), DeskWords.get());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(form.control());
        form.section("beginning.shop")
                .text("/name", "beginning.name")
                .longText("/address", "beginning.address")
                .proposals("/currency", "beginning.currency", BeginningEditor::currencies)
                .choice("/units", "beginning.units", Workshop.Units.class)
                .number("/referenceCelsius", "beginning.reference", FieldUnit.CELSIUS)
                .text("/numberSeries", "beginning.series")
                .computed("beginning.example", "beginning.example", this::example);
        form.words("beginning.seriesWords");
        form.refresh();
        person(box, look);
        problem = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        problem.setData(Desk.ID, "beginning/problem");
        problem.setForeground(look.palette().problem());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(problem);
        begin = look.as(Look.Role.STRONG, new Button(box, SWT.PUSH));
        begin.setText(DeskWords.text("beginning.begin"));
        begin.setData(Desk.ID, "beginning/begin");
        begin.addListener(SWT.Selection, e -> begin());
        document.addListener(c -> {
            if (c.what() == Change.What.DRAFT) {
                form.refresh();
            }
        });
        Reach.ensure(box);
        look.onResize(box, () -> {
            look.dress(box);
            Reach.ensure(box);
            box.layout(true, true);
        });
    }

    @Override
    public void setFocus() {
        if (ready != null) {
            ready.focus();
        } else {
            // Before the first layout fields refuse the cursor.
            box.getDisplay().asyncExec(() -> {
                if (!box.isDisposed()) {
                    form.focusFirst();
                }
            });
        }
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (ready == null) {
            begin();
        }
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("a workshop begins once");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    private void person(Composite box, Look look) {
        Composite row = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 0).spacing(8, 0).applyTo(row);
        label(row, look, "beginning.person");
        person = line(row, look, "beginning.person", SWT.BORDER);
        person.setData(Desk.ID, "beginning/person");
        Label words = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        words.setText(DeskWords.text("beginning.secretWords"));
        GridDataFactory.fillDefaults().hint(look.chars(WIDTH_CHARS), SWT.DEFAULT).applyTo(words);
        Composite secrets = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 0).spacing(8, 4).applyTo(secrets);
        label(secrets, look, "beginning.secret");
        secret = line(secrets, look, "beginning.secret", SWT.BORDER | SWT.PASSWORD);
        secret.setData(Desk.ID, "beginning/secret");
        label(secrets, look, "beginning.secretAgain");
        again = line(secrets, look, "beginning.secretAgain", SWT.BORDER | SWT.PASSWORD);
        again.setData(Desk.ID, "beginning/secretAgain");
    }

    private static void label(Composite row, Look look, String key) {
        Label l = look.as(Look.Role.TEXT, new Label(row, SWT.WRAP));
        l.setText(DeskWords.text(key));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).hint(look.chars(24), SWT.DEFAULT).applyTo(l);
    }

    private static Text line(Composite row, Look look, String key, int style) {
        Text line = EnterMovesOn.from(look.as(Look.Role.TEXT, new Text(row, style)));
        SpokenName.give(line, DeskWords.text(key));
        GridDataFactory.fillDefaults().hint(look.chars(30), SWT.DEFAULT).applyTo(line);
        return line;
    }

    private void begin() {
        Workshop shop = document.part(WORKSHOP, Workshop.class).orElse(null);
        String name = person.getText().strip();
        if (shop == null || shop.name() == null || shop.name().isBlank()) {
            say(DeskWords.text("beginning.needsName"));
            return;
        }
        if (!document.draft(WORKSHOP).asTyped().isEmpty()) {
            say(DeskWords.text("beginning.unread"));
            return;
        }
        if (name.isEmpty()) {
            say(DeskWords.text("beginning.needsPerson"));
            person.setFocus();
            return;
        }
        char[] typed = secret.getTextChars();
        char[] repeated = again.getTextChars();
        boolean same = Arrays.equals(typed, repeated);
        Arrays.fill(repeated, '\0');
        if (!same || typed.length > 0 && typed.length < Accounts.SHORTEST) {
            Arrays.fill(typed, '\0');
            say(same ? DeskWords.text("people.words", Accounts.SHORTEST) : DeskWords.text("people.differ"));
            secret.setFocus();
            return;
        }
        begin.setEnabled(false);
        Person first = new Person(Person.newKey(), name, Set.of(Role.values()), null, null, true);
        Display display = begin.getDisplay();
        new DeskJob(DeskWords.text("beginning.task"), monitor -> {
            try {
                session.store().savePerson(first, first.key());
                session.store().saveShopPart(WORKSHOP, shop, 0, first.key(), "");
                if (typed.length > 0) {
                    session.store().accounts().begin(first.key(), typed);
                }
                session.readShop();
                display.asyncExec(() -> begun(first));
            } catch (StoreException e) {
                ILog.of(BeginningEditor.class).error("the workshop could not be begun", e);
                display.asyncExec(() -> {
                    if (!begin.isDisposed()) {
                        begin.setEnabled(true);
                        say(e.getMessage());
                    }
                });
            } finally {
                Arrays.fill(typed, '\0');
            }
        }).schedule();
    }

    private void begun(Person first) {
        if (session.hasSecrets()) {
            session.background().execute(session::signedInOrOut);
        } else {
            session.who(first.key());
        }
        if (!box.isDisposed()) {
            Composite parent = box.getParent();
            box.dispose();
            ready = new ReadyToBookIn(parent, getSite());
            parent.layout(true, true);
            ready.focus();
        }
    }

    /** Two job numbers as the pattern typed writes them, or why it writes none. */
    private String example() {
        String pattern = document.value(WORKSHOP, "/numberSeries").asText("");
        try {
            NumberPattern series = new NumberPattern(pattern);
            int year = Year.now().getValue();
            return DeskWords.text("beginning.exampleText", series.format(year, 1), series.format(year, 2));
        } catch (StoreException e) {
            return e.getMessage();
        }
    }

    private void say(String words) {
        problem.setText(words);
        problem.getParent().layout(true, true);
    }

    private static String localCurrency() {
        try {
            Currency c = Currency.getInstance(Locale.getDefault());
            return c == null ? null : c.getCurrencyCode();
        } catch (IllegalArgumentException noCountry) {
            return null;
        }
    }

    private static Map<String, String> currencies() {
        Map<String, String> names = new LinkedHashMap<>();
        for (String code : List.of("EUR", "GBP", "USD", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "AUD", "CAD", "NZD",
                "ZAR", "INR", "JPY")) {
            names.put(code, code);
        }
        return names;
    }
}
