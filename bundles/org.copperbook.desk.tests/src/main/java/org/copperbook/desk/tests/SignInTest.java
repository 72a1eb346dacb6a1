package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.people.IdleSignOut;
import org.copperbook.desk.tests.window.CrashEntries;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.Saved;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** People of the demo workshop get secrets, change over at one bench, and keep what is theirs. */
class SignInTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);
    private static final PartKey PLATE = PartKey.of(PartKind.NAMEPLATE);
    private static final String OWNERS = "the owner's own words";
    private static final String OFFICES = "the office's own words";
    private static final String WINDERS = "the winder's own words";

    private final Desktop desktop = new Desktop();
    private final String run = Long.toString(System.nanoTime(), Character.MAX_RADIX);
    private final String owner = "t-owner-" + run;
    private final String office = "t-office-" + run;
    private final String winder = "t-winder-" + run;
    private JobStore store;

    @BeforeEach
    void people() {
        store = desktop.session().store();
        desktop.beSomebody();
        store.savePerson(new Person(owner, "Olga Owner", Set.of(Role.OWNER), null, null, true), owner);
        store.savePerson(new Person(office, "Otto Office", Set.of(Role.OFFICE), null, null, true), owner);
        store.savePerson(new Person(winder, "Wanda Winder", Set.of(Role.WINDER), null, null, true), owner);
        desktop.until("the people are known", () -> desktop.session().shop().people().containsKey(winder));
    }

    /** Erasing everybody who has a secret leaves the workshop as it was: without secrets. */
    @AfterEach
    void leave() {
        desktop.closeAll();
        store.accounts().signOut();
        Instant now = Instant.now();
        store.eraseAgain(Map.of(owner, now, office, now, winder, now));
        desktop.session().signedInOrOut();
        desktop.work();
        assertFalse(desktop.session().hasSecrets());
    }

    private void secret(String key, String words) throws Exception {
        desktop.command("org.copperbook.desk.command.people");
        desktop.until("the people are read", () -> ((org.eclipse.swt.widgets.List) desktop.field("people/list"))
                .getItemCount() > 0);
        org.eclipse.swt.widgets.List list = (org.eclipse.swt.widgets.List) desktop.field("people/list");
        list.select(list.indexOf(store.persons().get(key).name()));
        list.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
        ((Text) desktop.field("people/secret")).setText(words);
        ((Text) desktop.field("people/again")).setText(words);
        desktop.press("people/setSecret");
        desktop.until("it says what came of it", () -> !said("people/said").isEmpty());
    }

    private String said(String id) {
        return ((Label) desktop.field(id)).getText();
    }

    /** The words of a strip at the top of a job. */
    private String strip(String id) {
        Composite body = (Composite) ((Composite) desktop.field(id)).getChildren()[0];
        return ((Label) body.getChildren()[0]).getText();
    }

    private void signIn(String key, String words) throws Exception {
        desktop.command("org.copperbook.desk.command.signIn");
        desktop.press("signIn/person/" + key);
        ((Text) desktop.field("signIn/secret")).setText(words);
        desktop.press("signIn/do");
    }

    private void signedIn(String key, String words) throws Exception {
        signIn(key, words);
        desktop.until("the dialog is gone", () -> !desktop.shows("signIn/do"));
        assertEquals(Optional.of(key), desktop.session().who());
    }

    @Test
    void withoutSecretsOneChoosesANameAndIsTold() throws Exception {
        desktop.command("org.copperbook.desk.command.signIn");
        assertFalse(desktop.shows("signIn/secret"));
        desktop.press("signIn/person/" + winder);
        assertEquals(Optional.of(winder), desktop.session().who());
        assertFalse(desktop.shows("signIn/close"));
    }

    @Test
    void theFirstSecretIsAnOwnersThenPeopleChangeOverAndUnsavedTextStaysWithWhoTypedIt() throws Exception {
        secret(winder, WINDERS);
        assertTrue(said("people/said").contains("is no owner"), said("people/said"));
        secret(owner, OWNERS);
        assertTrue(desktop.session().hasSecrets());
        assertEquals(Optional.of(owner), desktop.session().who());
        secret(office, OFFICES);
        secret(winder, WINDERS);
        assertEquals("The secret of Wanda Winder is set.", said("people/said"));

        signIn(office, "not the right one");
        desktop.until("the refusal is shown", () -> said("signIn/said").contains("not the secret of Otto Office"));
        assertEquals(Optional.of(owner), desktop.session().who(), "who was signed in stays so");
        signedIn(office, OFFICES);

        JobEditor editor = desktop.open(openJob());
        editor.show(BOOKING);
        String damage = "seen by the office " + run;
        desktop.type("/transportDamage", damage);
        assertTrue(editor.isDirty());

        signedIn(winder, WINDERS);
        desktop.until("it says whose this is", () -> desktop.shows("others"));
        assertFalse(((Text) desktop.field("/transportDamage")).getEditable(), "nobody else types into it");
        editor.doSave(new NullProgressMonitor());
        desktop.work();
        assertTrue(editor.isDirty(), "nor saves it");
        assertFalse(desktop.page().closeEditor(editor, true), "nor closes it");
        assertTrue(strip("failure").contains("Not closed: Otto Office typed here"), strip("failure"));

        signedIn(office, OFFICES);
        desktop.until("it may be edited again", () -> !desktop.shows("others"));
        assertEquals(damage, desktop.text("/transportDamage"), "nothing typed is lost");
        editor.doSave(new NullProgressMonitor());
        desktop.until("it is saved", () -> !editor.isDirty());
        Saved saved = store.current(editor.document().id(), BOOKING).orElseThrow();
        assertEquals(office, saved.revision().who());
        assertEquals(damage, ((Booking) saved.part()).transportDamage());
    }

    @Test
    void aRefusalOfTheStoreIsShownAndNothingTypedIsLost() throws Exception {
        store.accounts().begin(owner, OWNERS.toCharArray());
        store.accounts().reset(winder, WINDERS.toCharArray());
        desktop.session().signedInOrOut();
        signedIn(winder, WINDERS);
        JobEditor editor = desktop.open(openJob());
        editor.show(BOOKING);
        desktop.type("/transportDamage", "by the winder " + run);
        editor.show(PLATE);
        desktop.type("/serial", "S-" + run);
        editor.doSave(new NullProgressMonitor());
        desktop.until("the refusal is shown", () -> desktop.shows("failure"));
        assertTrue(editor.isDirty());
        assertEquals(winder, store.current(editor.document().id(), PLATE).orElseThrow().revision().who(),
                "what the winder may save is saved");
        editor.show(BOOKING);
        assertEquals("by the winder " + run, desktop.text("/transportDamage"));
    }

    @Test
    void afterSigningOutAJobIsReadAndNotSaved() throws Exception {
        store.accounts().begin(owner, OWNERS.toCharArray());
        desktop.session().signedInOrOut();
        desktop.command("org.copperbook.desk.command.signOut");
        desktop.until("nobody is signed in", () -> desktop.session().who().isEmpty());
        JobEditor editor = desktop.open(openJob());
        desktop.until("it asks to sign in", () -> desktop.shows("who/signIn"));
        desktop.press("who/signIn");
        assertTrue(desktop.shows("signIn/secret"));
        desktop.press("signIn/close");
        assertFalse(editor.isDirty());
    }

    @Test
    void whoLeavesTheBenchIsSignedOutAndNothingTypedIsLost() throws Exception {
        store.accounts().begin(owner, OWNERS.toCharArray());
        desktop.session().signedInOrOut();
        JobEditor editor = desktop.open(openJob());
        editor.show(BOOKING);
        String damage = "seen by the owner " + run;
        desktop.type("/transportDamage", damage);
        AtomicLong nanos = new AtomicLong();
        IdleSignOut idle = new IdleSignOut(Display.getCurrent(), desktop.session(), nanos::get);
        idle.begin();
        try {
            nanos.set(Duration.ofMinutes(19).toNanos());
            desktop.field("/transportDamage").notifyListeners(SWT.KeyDown, new Event());
            nanos.set(Duration.ofMinutes(38).toNanos());
            idle.check();
            assertEquals(Optional.of(owner), store.accounts().signedIn(), "a key counts as work");
            nanos.set(Duration.ofMinutes(39).toNanos());
            idle.check();
        } finally {
            idle.end();
        }
        desktop.until("nobody is signed in", () -> desktop.session().who().isEmpty());
        assertTrue(editor.isDirty());
        signedIn(owner, OWNERS);
        desktop.until("it may be edited again", () -> ((Text) desktop.field("/transportDamage")).getEditable());
        assertEquals(damage, desktop.text("/transportDamage"));
    }

    @Test
    void whatACrashLeftOfSomebodyElseIsPutBackAsTheirsAndNotThrownAway() throws Exception {
        store.accounts().begin(owner, OWNERS.toCharArray());
        store.accounts().reset(office, OFFICES.toCharArray());
        desktop.session().signedInOrOut();
        signedIn(office, OFFICES);
        String number = openJob();
        JobEditor before = desktop.open(number);
        before.show(BOOKING);
        String damage = "seen by the office " + run;
        desktop.type("/transportDamage", damage);
        desktop.until("the journal has it", () -> CrashEntries.find(damage).isPresent());
        Path kept = CrashEntries.find(damage).orElseThrow();
        byte[] bytes = Files.readAllBytes(kept);
        desktop.closeAll();
        desktop.until("closing the job forgets the entry", () -> CrashEntries.find(damage).isEmpty());
        Files.write(CrashEntries.ofADeadProgram(kept), bytes);

        signedIn(owner, OWNERS);
        JobEditor editor = desktop.open(number);
        desktop.until("the job says that something was left", () -> desktop.shows("left"));
        desktop.press("left/throwAway");
        assertTrue(strip("failure").contains("only Otto Office can throw it away"), strip("failure"));
        assertTrue(CrashEntries.find(damage).isPresent());
        desktop.press("left/putBack");
        desktop.until("it is the office's", () -> desktop.shows("others"));
        assertTrue(editor.isDirty());
        signedIn(office, OFFICES);
        desktop.until("it may be edited again", () -> !desktop.shows("others"));
        editor.doSave(new NullProgressMonitor());
        desktop.until("it is saved", () -> !editor.isDirty());
        assertEquals(office, store.current(editor.document().id(), BOOKING).orElseThrow().revision().who());
    }

    private String openJob() {
        return store.register(RegisterQuery.first(50)).rows().stream().filter(r -> !r.voided()).findFirst()
                .orElseThrow().number();
    }
}
