package org.copperbook.desk.tests.run;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.WorkbenchAdvisor;

/** Opens a workbench window and runs the tests as soon as it is up. */
final class TestAdvisor extends WorkbenchAdvisor {

    private final Runnable tests;

    TestAdvisor(Runnable tests) {
        this.tests = tests;
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return null;
    }

    @Override
    public void postStartup() {
        super.postStartup();
        Display.getCurrent().asyncExec(tests);
    }
}
