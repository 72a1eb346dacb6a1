package org.copperbook.desk.tests.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.tests.window.CrashEntries;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.store.RegisterQuery;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What was typed when the program ended without warning is offered again, also half-typed and not understood. */
class LeftByACrashTest {

    private static final PartKey BOOKING = PartKey.of(PartKind.BOOKING);

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void typedTextIsPutBackAfterTheProgramWasKilled() throws Exception {
        desktop.beSomebody();
        String number = desktop.session().store().register(RegisterQuery.first(50)).rows().stream()
                .filter(r -> !r.voided()).findFirst().orElseThrow().number();
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String damage = "left cover cracked, seen " + System.nanoTime();
        desktop.type("/transportDamage", damage);
        desktop.type("/spendLimit", "about nine hundred");
        desktop.until("the journal has both", () -> CrashEntries.find("about nine hundred").flatMap(f -> CrashEntries.find(damage)).isPresent());
        Path kept = CrashEntries.find(damage).orElseThrow();
        byte[] bytes = Files.readAllBytes(kept);
        desktop.closeAll();
        desktop.until("closing the job forgets the entry", () -> CrashEntries.find(damage).isEmpty());

        // The same entry under the name of a program that runs no more is what a crash leaves.
        Files.write(CrashEntries.ofADeadProgram(kept), bytes);
        editor = desktop.open(number);
        desktop.until("the job says that something was left", () -> desktop.shows("left"));
        assertFalse(editor.isDirty(), "nothing is put back unasked");
        desktop.press("left/putBack");
        JobEditor reopened = editor;
        desktop.until("the text is back", () -> reopened.isDirty());
        assertEquals(damage, desktop.text("/transportDamage"));
        assertEquals("about nine hundred", desktop.text("/spendLimit"), "a text not understood is kept as typed");
    }

    @Test
    void whatWasLeftCanBeThrownAway() throws Exception {
        desktop.beSomebody();
        String number = desktop.session().store().register(RegisterQuery.first(50)).rows().stream()
                .filter(r -> !r.voided()).findFirst().orElseThrow().number();
        JobEditor editor = desktop.open(number);
        editor.show(BOOKING);
        String damage = "not wanted " + System.nanoTime();
        desktop.type("/transportDamage", damage);
        desktop.until("the journal has it", () -> CrashEntries.find(damage).isPresent());
        Path kept = CrashEntries.find(damage).orElseThrow();
        byte[] bytes = Files.readAllBytes(kept);
        desktop.closeAll();
        desktop.until("closing the job forgets the entry", () -> CrashEntries.find(damage).isEmpty());
        Files.write(CrashEntries.ofADeadProgram(kept), bytes);
        editor = desktop.open(number);
        desktop.press("left/throwAway");
        desktop.until("the entry is gone", () -> CrashEntries.find(damage).isEmpty());
        editor.show(BOOKING);
        assertNotEquals(damage, desktop.text("/transportDamage"));
        assertFalse(editor.isDirty());
    }
}
