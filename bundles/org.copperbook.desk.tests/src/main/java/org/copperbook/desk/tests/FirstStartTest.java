package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.editor.BeginningEditor;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.run.OwnStart;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.people.SignIn;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

/** The first start leads through creating the owner, with a secret, up to the first machine booked in. */
@OwnStart(OwnStart.Way.FIRST)
class FirstStartTest {

    private static final String SECRET = "slip ring number nine";

    private final Desktop desktop = new Desktop();

    private void enter(String id, String text) {
        ((Text) desktop.field(id)).setText(text);
    }

    private String told() {
        desktop.press("beginning/begin");
        return ((Label) desktop.field("beginning/problem")).getText();
    }

    @Test
    void theOwnerIsCreatedWithASecretAndTheFirstMachineIsBookedIn() throws Exception {
        assertInstanceOf(BeginningEditor.class, desktop.activeEditor());
        JobStore store = desktop.session().store();
        assertTrue(told().contains("name"), told());
        desktop.type("/name", "Quay Street Rewinds");
        enter("beginning/person", "Olga Owner");
        enter("beginning/secret", "short");
        enter("beginning/secretAgain", "short");
        assertTrue(told().contains("8"), told());
        enter("beginning/secret", SECRET);
        enter("beginning/secretAgain", SECRET + "!");
        assertTrue(told().contains("not the same"), told());
        assertTrue(store.persons().isEmpty(), "nothing was begun by a slip");

        enter("beginning/secret", SECRET);
        enter("beginning/secretAgain", SECRET);
        desktop.press("beginning/begin");
        desktop.until("the owner works here", () -> desktop.session().who().isPresent());
        assertTrue(desktop.session().hasSecrets());
        Person owner = store.persons().values().iterator().next();
        assertEquals(Set.copyOf(EnumSet.allOf(Role.class)), owner.roles(), "the first can do everything");
        assertEquals(Optional.of(owner.key()), desktop.session().who());
        assertInstanceOf(SignIn.Refused.class, store.accounts().signIn(owner.key(), "another".toCharArray()));

        desktop.until("the first machine can be booked in", () -> desktop.shows("ready/bookIn"));
        desktop.press("ready/bookIn");
        desktop.until("a job is begun", () -> desktop.activeEditor() instanceof JobEditor);
        JobEditor job = (JobEditor) desktop.activeEditor();
        desktop.settle(job);
        job.show(PartKey.of(PartKind.BOOKING));
        desktop.type("/customer", "Harbour Ice");
        job.doSave(new NullProgressMonitor());
        desktop.until("it has a number", () -> !job.document().number().isEmpty());
        assertFalse(job.isDirty());
        assertEquals(1, store.register(RegisterQuery.first(9)).total());
        assertTrue(store.audit().passed());
        desktop.closeAll();
    }
}
