package org.copperbook.desk.editor;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.handlers.IHandlerService;

/** What a workshop without jobs shows in place of one: how the first machine is booked in, and the keys to know. */
final class ReadyToBookIn {

    private static final int WIDTH_CHARS = 70;
    private static final String NEW_JOB = "org.copperbook.desk.command.newJob";

    private final IWorkbenchPartSite site;
    private final Button bookIn;

    ReadyToBookIn(Composite parent, IWorkbenchPartSite site) {
        this.site = site;
        Look look = Look.of(parent);
        Composite box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(24, 18).spacing(0, 12).applyTo(box);
        look.as(Look.Role.HEADING, new Label(box, SWT.NONE)).setText(DeskWords.text("ready.title"));
        words(box, "ready.words");
        bookIn = look.as(Look.Role.STRONG, new Button(box, SWT.PUSH));
        bookIn.setText(DeskWords.text("ready.bookIn"));
        bookIn.setData(Desk.ID, "ready/bookIn");
        bookIn.addListener(SWT.Selection, e -> bookIn());
        words(box, "ready.keys");
        look.onResize(box, () -> {
            look.dress(box);
            box.layout(true, true);
        });
    }

    void focus() {
        bookIn.setFocus();
    }

    private static void words(Composite box, String key) {
        Look look = Look.of(box);
        Label l = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        l.setText(DeskWords.text(key));
        GridDataFactory.fillDefaults().hint(look.chars(WIDTH_CHARS), SWT.DEFAULT).applyTo(l);
    }

    /** Opens the job first, so that this page can go. */
    private void bookIn() {
        try {
            site.getService(IHandlerService.class).executeCommand(NEW_JOB, null);
            site.getPage().closeEditor((IEditorPart) site.getPart(), false);
        } catch (CommandException e) {
            ILog.of(ReadyToBookIn.class).error("a machine could not be booked in", e);
        }
    }
}
