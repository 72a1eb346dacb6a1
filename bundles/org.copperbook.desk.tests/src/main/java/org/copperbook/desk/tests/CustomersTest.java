package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.customer.Contact;
import org.copperbook.jobs.customer.Customer;
import org.copperbook.store.JobStore;
import org.copperbook.store.PartSave;
import org.copperbook.store.Saved;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The customers in the window. Expected: the tests' own inputs. */
class CustomersTest {

    @TempDir
    Path folder;

    private final Desktop desktop = new Desktop();

    @BeforeEach
    void showThem() throws Exception {
        desktop.closeAll();
        String who = desktop.beSomebody();
        for (String name : List.of("Zellberg Quarry Ltd", "ZELLBERG QUARRY")) {
            if (saved(name).isEmpty()) {
                desktop.session().store().saveShopParts(List.of(new PartSave(Customer.newKey(), Customer.named(name), 0)), who,
                        "");
            }
        }
        desktop.command("org.copperbook.office.command.registers");
        CTabFolder tabs = (CTabFolder) desktop.field("registers.tabs");
        tabs.setSelection(1);
        tabs.notifyListeners(SWT.Selection, new Event());
        desktop.until("the customers are read", () -> list().getItemCount() >= 2);
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    private Optional<Saved> saved(String name) {
        return desktop.session().store().shopParts(PartKind.CUSTOMER).stream()
                .filter(s -> name.equals(((Customer) s.part()).name())).findFirst();
    }

    private Table list() {
        return (Table) desktop.field("customers.list");
    }

    private TableItem row(String name) {
        return Stream.of(list().getItems()).filter(i -> i.getText(0).equals(name)).findFirst().orElseThrow();
    }

    private void choose(String name) {
        list().setSelection(row(name));
        list().notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    private void saveAndWait() {
        desktop.activeEditor().doSave(new NullProgressMonitor());
        desktop.until("it is saved", () -> !desktop.activeEditor().isDirty());
    }

    @Test
    void aCustomerIsAddedWithContactsAndFoundByThem() {
        desktop.press("customers.add");
        String name = "Otterbrook Ferries " + System.nanoTime();
        desktop.type("/name", name);
        Text contacts = (Text) desktop.field("/contacts");
        contacts.setFocus();
        contacts.setText("Ada Brook; 040 555; ada@ferry.example\nBo Mill");
        desktop.field("/name").setFocus();
        desktop.work();
        saveAndWait();
        Customer kept = (Customer) saved(name).orElseThrow().part();
        assertEquals(List.of(new Contact("Ada Brook", "040 555", "ada@ferry.example"), new Contact("Bo Mill", "", "")),
                kept.contacts());
        ((Text) desktop.field("customers.filter")).setText("ferry.example");
        desktop.until("only it is listed", () -> Stream.of(list().getItems()).map(i -> i.getText(0)).toList().contains(name));
    }

    @Test
    void theWishToKnowWhoWorksHereGoesWhenItIsGranted() {
        Label said = (Label) desktop.field("customers.said");
        desktop.session().who("");
        desktop.press("customers.import");
        assertFalse(said.getText().isEmpty(), "nobody works here, and a table is not taken in for nobody");
        desktop.beSomebody();
        desktop.until("nothing is asked any more", () -> said.getText().isEmpty());
    }

    @Test
    void aCustomerWithAnotherNameKeepsTheJobsBookedUnderTheOldOne() throws Exception {
        String old = "Before " + System.nanoTime();
        JobStore store = desktop.session().store();
        String who = desktop.session().who().orElseThrow();
        PartKey key = Customer.newKey();
        store.saveShopParts(List.of(new PartSave(key, Customer.named(old), 0)), who, "");
        String number = store.create((Booking) desktop.session().json().read(PartKey.of(PartKind.BOOKING),
                "{\"schema\":1,\"customer\":\"" + old + "\"}"), who).number();
        String name = old.replace("Before", "After");
        store.saveShopPart(key, Customer.named(name), 1, who, "");
        desktop.until("it is listed", () -> Stream.of(list().getItems()).anyMatch(i -> i.getText(0).equals(name)));
        choose(name);
        desktop.until("its job is named", () -> desktop.text("customers.jobs").contains(number));
    }

    private String book(String name, String key) throws Exception {
        return desktop.session().store().create((Booking) desktop.session().json().read(PartKey.of(PartKind.BOOKING),
                "{\"schema\":1,\"customer\":\"" + name + "\"" + (key == null ? "" : ",\"customerKey\":\"" + key + "\"") + "}"),
                desktop.session().who().orElseThrow()).number();
    }

    private void chooseAt(String name, String address) {
        list().setSelection(Stream.of(list().getItems())
                .filter(i -> i.getText(0).equals(name) && i.getText(1).equals(address)).findFirst().orElseThrow());
        list().notifyListeners(SWT.Selection, new Event());
        desktop.work();
    }

    @Test
    void jobsOfTwoCustomersOfOneNameStandWithTheirOwnAndWithBothOnceTheyAreMerged() throws Exception {
        String name = "Millrace " + System.nanoTime();
        PartKey north = Customer.newKey();
        PartKey south = Customer.newKey();
        desktop.session().store().saveShopParts(List.of(
                new PartSave(north, new Customer(1, name, "North", null, null, List.of(), null, null, null, null, null, null,
                        null, Map.of()), 0),
                new PartSave(south, new Customer(1, name, "South", null, null, List.of(), null, null, null, null, null, null,
                        null, Map.of()), 0)), desktop.session().who().orElseThrow(), "");
        String ofNorth = book(name, north.name());
        String ofSouth = book(name, south.name());
        String ofEither = book(name, null);
        desktop.until("both are listed", () -> Stream.of(list().getItems()).filter(i -> i.getText(0).equals(name)).count() == 2);
        chooseAt(name, "South");
        desktop.until("its own job is named", () -> desktop.text("customers.jobs").startsWith(ofSouth + " "));
        assertFalse(desktop.text("customers.jobs").contains(ofNorth), desktop.text("customers.jobs"));
        assertTrue(desktop.text("customers.jobs").contains("of the same name, since nobody said which: " + ofEither + "."),
                desktop.text("customers.jobs"));
        chooseAt(name, "North");
        desktop.until("its own job is named", () -> desktop.text("customers.jobs").startsWith(ofNorth + " "));
        assertFalse(desktop.text("customers.jobs").contains(ofSouth), desktop.text("customers.jobs"));
        desktop.session().store().saveShopPart(south, ((Customer) desktop.session().store().current(JobStore.SHOP, south)
                .orElseThrow().part()).into(north.name()), 1, desktop.session().who().orElseThrow(), "");
        desktop.until("all are named", () -> Stream.of(ofNorth, ofSouth, ofEither)
                .allMatch(desktop.text("customers.jobs")::contains) && !desktop.text("customers.jobs").contains("since nobody"));
        chooseAt(name, "South");
        desktop.press("customers.undoMerge");
        desktop.until("each has its own again", () -> desktop.text("customers.jobs").startsWith(ofSouth + " "));
        desktop.command("org.eclipse.ui.edit.undo");
        desktop.until("they are one again", () -> desktop.text("customers.jobs").contains(ofNorth));
    }

    @Test
    void doublesAreFoundMergedSavedAndToldApartAgain() {
        desktop.press("customers.doubles");
        desktop.until("the pair is found", () -> desktop.shows("doubles.pairs")
                && ((Table) desktop.field("doubles.pairs")).getItemCount() > 0);
        Table pairs = (Table) desktop.field("doubles.pairs");
        String count = ((Label) desktop.field("doubles.said")).getText();
        assertTrue(count.startsWith(pairs.getItemCount() == 1 ? "One pair." : pairs.getItemCount() + " pairs."), count);
        TableItem pair = Stream.of(pairs.getItems()).filter(i -> i.getText(0).toLowerCase().contains("zellberg"))
                .findFirst().orElseThrow();
        assertEquals("same name", pair.getText(2));
        String stays = pair.getText(0);
        String goes = pair.getText(1);
        pairs.setSelection(pair);
        desktop.press("doubles.keepFirst");
        pairs.getShell().close();
        desktop.work();
        saveAndWait();
        Customer gone = (Customer) saved(goes).orElseThrow().part();
        assertEquals(saved(stays).orElseThrow().key().name(), gone.mergedInto());
        assertEquals("is " + stays, row(goes).getText(3));
        choose(stays);
        desktop.until("it is also known by the other name", () -> desktop.text("customers.alsoKnown").contains(goes));
        choose(goes);
        desktop.press("customers.undoMerge");
        saveAndWait();
        assertEquals(null, ((Customer) saved(goes).orElseThrow().part()).mergedInto());
    }

    @Test
    void customersAreTakenInFromATableAndWhoIsThereIsRefused() throws Exception {
        String name = "Firma " + System.nanoTime();
        Path file = Files.writeString(folder.resolve("k.csv"), "Kundenname;Telefon;PLZ Ort;Ansprechpartner\n" + name
                + ";040 123;20457 Otter;Ada\nzellberg quarry;1;;\n");
        desktop.press("customers.import");
        ((Text) desktop.field("import.path")).setText(file.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the table is read", () -> ((Table) desktop.field("import.refused")).getItemCount() == 1);
        assertEquals("A3", ((Table) desktop.field("import.refused")).getItem(0).getText(0));
        desktop.press("import.takeIn");
        desktop.until("it is in", () -> saved(name).isPresent());
        Customer kept = (Customer) saved(name).orElseThrow().part();
        assertEquals("20457 Otter", kept.address());
        assertEquals("Ada", kept.contacts().get(0).name());
        desktop.until("it is listed", () -> Stream.of(list().getItems()).anyMatch(i -> i.getText(0).equals(name)));
        assertTrue(saved(name).orElseThrow().revision().why().contains("table"));
    }

    private void choose(Path file) {
        desktop.press("customers.import");
        ((Text) desktop.field("import.path")).setText(file.toString());
        desktop.field("import.path").notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the table is read", () -> desktop.field("import.takeIn").isEnabled());
    }

    @Test
    void anImportStoppedWhileItIsSavedLeavesNothingAndCanBeDoneAgainAndTakenBack() throws Exception {
        String name = "Stopped " + System.nanoTime();
        StringBuilder csv = new StringBuilder("Name\n");
        for (int i = 0; i < 4000; i++) {
            csv.append(name).append(' ').append(i).append('\n');
        }
        choose(Files.writeString(folder.resolve("many.csv"), csv));
        long end = desktop.session().store().chainEnd().sequence();
        desktop.press("import.takeIn");
        desktop.until("some are written", () -> !said().startsWith("Saving 0 ") && said().startsWith("Saving"));
        desktop.press("import.stop");
        desktop.until("it says that it was stopped", () -> said().startsWith("Stopped"));
        assertEquals(end, desktop.session().store().chainEnd().sequence(), "all or nothing");
        assertTrue(desktop.field("import.takeIn").isEnabled(), "it can be done again");
        ((Text) desktop.field("import.path")).getShell().close();
        choose(Files.writeString(folder.resolve("few.csv"), "Name\n" + name + " A\n" + name + " B\n"));
        desktop.press("import.takeIn");
        desktop.until("both are in", () -> saved(name + " B").isPresent() && !desktop.shows("import.window"));
        desktop.until("it can be taken back", () -> desktop.field("customers.undoImport").isEnabled());
        desktop.press("customers.undoImport");
        desktop.until("both are out of use", () -> Stream.of(" A", " B").allMatch(n -> Boolean.TRUE.equals(
                ((Customer) saved(name + n).orElseThrow().part()).outOfUse())));
    }

    private String said() {
        return ((Label) desktop.field("import.said")).getText();
    }
}
