package org.copperbook.desk.tests.run;

import org.copperbook.desk.shell.DeskAdvisor;
import org.copperbook.desk.shell.DeskSession;
import org.eclipse.swt.widgets.Display;

/** Sets up the product's workbench as it is and runs the tests as soon as its window is up. */
final class TestAdvisor extends DeskAdvisor {

    private final Runnable tests;

    TestAdvisor(DeskSession session, Runnable tests) {
        super(session);
        this.tests = tests;
    }

    @Override
    public void postStartup() {
        super.postStartup();
        Display.getCurrent().asyncExec(tests);
    }
}
