package org.copperbook.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.register.RegisterView;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.store.RegisterQuery;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RegisterTest {

    private final Desktop desktop = new Desktop();

    @AfterEach
    void leave() throws Exception {
        desktop.register().filter().setText("");
        desktop.closeAll();
    }

    @Test
    void everyJobOfTheStoreStandsInTheRegister() throws Exception {
        RegisterView register = desktop.register();
        int jobs = desktop.session().store().register(RegisterQuery.first(0)).total();
        assertTrue(jobs >= 6);
        desktop.until("the register shows " + jobs + " jobs", () -> register.table().getItemCount() == jobs);
    }

    @Test
    void theRegisterIsFilteredAsOneTypes() throws Exception {
        RegisterView register = desktop.register();
        Table table = register.table();
        desktop.until("the register is filled", () -> table.getItemCount() > 1);
        // One that is in every demo workshop, whatever other tests have booked in.
        String customer = desktop.session().store().register(new RegisterQuery("2026-0001", 0, 1, null)).rows().get(0)
                .customer();
        int expected = desktop.session().store()
                .register(new RegisterQuery(customer, 0, 50, null)).total();
        register.filter().setText(customer);
        desktop.until(expected + " jobs are left", () -> table.getItemCount() == expected);
        for (int i = 0; i < expected; i++) {
            assertEquals(customer, table.getItem(i).getText(1));
        }
        register.filter().setText("no such words anywhere");
        desktop.until("nothing is left", () -> table.getItemCount() == 0);
    }

    @Test
    void aNumberTypedOrScannedIntoTheFilterOpensItsJob() throws Exception {
        RegisterView register = desktop.register();
        String number = desktop.session().store().register(RegisterQuery.first(1)).rows().get(0).number();
        register.filter().setText(number);
        register.filter().notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the job is open", () -> desktop.activeEditor() instanceof JobEditor);
        assertEquals(number, assertInstanceOf(JobEditor.class, desktop.activeEditor()).getPartName());
    }

    @Test
    void enterOnARowOpensItsJob() throws Exception {
        RegisterView register = desktop.register();
        Table table = register.table();
        desktop.until("the register is filled", () -> table.getItemCount() > 1 && !table.getItem(0).getText(0).isEmpty());
        table.setFocus();
        table.setSelection(0);
        table.notifyListeners(SWT.DefaultSelection, new Event());
        desktop.until("the job is open", () -> desktop.activeEditor() instanceof JobEditor);
    }
}
