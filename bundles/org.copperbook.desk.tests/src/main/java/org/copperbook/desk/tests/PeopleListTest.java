package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The people among the registers. Expected: the tests' own inputs. */
class PeopleListTest {

    @TempDir
    Path folder;

    private final Desktop desktop = new Desktop();
    private final String name = "Noor " + System.nanoTime();

    @BeforeEach
    void showThem() throws Exception {
        desktop.closeAll();
        desktop.beSomebody();
        desktop.command("org.copperbook.office.command.registers");
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        tabs.setSelection(tabs.getItemCount() - 1);
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    @AfterEach
    void leave() {
        for (Person p : desktop.session().store().shop().people().values()) {
            if (p.name() != null && p.name().startsWith(name) && p.active()) {
                desktop.session().store().savePerson(new Person(p.key(), p.name(), p.roles(), null, null, false),
                        desktop.session().who().orElseThrow());
            }
        }
        desktop.closeAll();
    }

    private Table list() {
        return (Table) desktop.field("people.list");
    }

    private Optional<Person> kept(String who) {
        return desktop.session().store().shop().people().values().stream().filter(p -> who.equals(p.name())).findFirst();
    }

    @Test
    void aListOfPeopleIsTakenInRowsThatCannotBeAreNamedAndItIsTakenBack() throws Exception {
        String known = list().getItem(0).getText(0);
        Path file = Files.writeString(folder.resolve("people.csv"), "Name,Role,Works here\n"
                + name + " A,\"Winder, tester\",yes\n" + name + " B,Wickler,no\n"
                + name + " a,office,yes\n" + name + " C,wizard,yes\n" + known.toUpperCase() + ",owner,yes\n" + name + " D,,yes\n");
        desktop.press("people.import");
        ((Text) desktop.field("import.path")).setText(file.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the table is read", () -> ((Table) desktop.field("import.refused")).getItemCount() == 4);
        Table refused = (Table) desktop.field("import.refused");
        assertTrue(refused.getItem(0).getText(3).contains("Row 2"), refused.getItem(0).getText(3));
        assertTrue(refused.getItem(1).getText(3).contains("wizard is no role"), refused.getItem(1).getText(3));
        assertTrue(refused.getItem(2).getText(3).contains("here already"), refused.getItem(2).getText(3));
        desktop.press("import.takeIn");
        desktop.until("both are in", () -> kept(name + " A").isPresent() && kept(name + " B").isPresent());
        assertEquals(Set.of(Role.WINDER, Role.TESTER), kept(name + " A").orElseThrow().roles());
        assertEquals(Set.of(Role.WINDER), kept(name + " B").orElseThrow().roles());
        assertFalse(kept(name + " B").orElseThrow().active());
        assertTrue(kept(name + " C").isEmpty());
        desktop.until("they are listed", () -> Stream.of(list().getItems()).anyMatch(i -> i.getText(0).equals(name + " A")
                && i.getText(1).equals("winder, tester")));
        desktop.until("it can be taken back", () -> desktop.field("people.undoImport").isEnabled());
        desktop.press("people.undoImport");
        desktop.until("she works here no more", () -> !kept(name + " A").orElseThrow().active());
    }

    @Test
    void whoChangedTheRolesStandsInTheHistoryByNameAndGoesBackByNoButton() throws Exception {
        String key = Person.newKey();
        desktop.session().store().savePerson(new Person(key, name, Set.of(Role.WINDER), null, null, true),
                desktop.session().who().orElseThrow());
        desktop.until("she is listed", () -> Stream.of(list().getItems()).anyMatch(i -> i.getText(0).equals(name)));
        desktop.press("people.history");
        desktop.until("the revisions are listed", () -> desktop.shows("history.revisions")
                && ((Table) desktop.field("history.revisions")).getItemCount() > 0);
        Table fields = (Table) desktop.field("history.fields");
        assertTrue(Stream.of(fields.getItems()).anyMatch(i -> i.getText(0).contains(name)), "by name and not by key");
        assertFalse(desktop.shows("history.goBack"));
        fields.getShell().close();
    }

    @Test
    void theListIsFilteredCopiedAndWrittenAsAWorkbook() throws Exception {
        int all = list().getItemCount();
        ((Text) desktop.field("people.filter")).setText("owner");
        assertTrue(list().getItemCount() > 0 && list().getItemCount() < all);
        desktop.press("people.copy");
        desktop.until("the clipboard has them", () -> desktop.copied().startsWith("Name\tRoles\tWorks here\n"));
        ((Text) desktop.field("people.filter")).setText("");
        desktop.press("people.workbook");
        desktop.until("it is written", () -> ((Label) desktop.field("people.said")).getText().contains("Written"));
    }
}
