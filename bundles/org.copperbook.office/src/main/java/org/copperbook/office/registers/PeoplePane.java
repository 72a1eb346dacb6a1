package org.copperbook.office.registers;

import org.copperbook.desk.Desk;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.handlers.IHandlerService;

/** The way to the people of the shop, who are kept apart because of their secrets. */
final class PeoplePane {

    private static final String COMMAND = Desk.BUNDLE + ".command.people";

    private final Composite box;
    private final Button open;

    PeoplePane(Composite parent, Words words, IHandlerService handlers) {
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(12, 12).spacing(0, 8).applyTo(box);
        Label about = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        about.setText(words.text("registers.peopleAbout"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(about);
        open = PushButton.in(box, "registers.people", words.text("registers.peopleOpen"), () -> {
            try {
                handlers.executeCommand(COMMAND, null);
            } catch (CommandException x) {
                ILog.of(PeoplePane.class).error("the people could not be shown", x);
            }
        });
        Reach.ensure(box);
    }

    Composite control() {
        return box;
    }

    void setFocus() {
        open.setFocus();
    }
}
