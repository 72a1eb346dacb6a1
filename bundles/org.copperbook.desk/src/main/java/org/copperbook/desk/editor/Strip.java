package org.copperbook.desk.editor;

import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A strip across the top of a job that says something and offers what to do about it, without a dialog. */
final class Strip {

    private final Composite box;
    private final Composite body;

    Strip(Composite parent, String id, boolean urgent) {
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        box.setData(Desk.ID, id);
        GridLayoutFactory.fillDefaults().extendedMargins(4, 0, 0, 0).applyTo(box);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(box);
        box.setBackground(urgent ? look.palette().problem() : look.palette().accent());
        body = new Composite(box, SWT.NONE);
        body.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND));
        GridLayoutFactory.fillDefaults().numColumns(6).margins(8, 4).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(body);
    }

    Strip text(String words) {
        Label l = Look.of(body).as(Look.Role.TEXT, new Label(body, SWT.WRAP));
        l.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER)
                .hint(Look.of(body).wrapping(), SWT.DEFAULT).applyTo(l);
        return this;
    }

    Strip button(String id, String words, Runnable action) {
        Button b = Look.of(body).as(Look.Role.TEXT, new Button(body, SWT.PUSH));
        b.setText(words);
        b.setData(Desk.ID, id);
        b.addListener(SWT.Selection, e -> action.run());
        return this;
    }

    Combo list(String id, String... items) {
        Combo c = Look.of(body).as(Look.Role.TEXT, new Combo(body, SWT.DROP_DOWN | SWT.READ_ONLY));
        c.setItems(items);
        c.setData(Desk.ID, id);
        return c;
    }

    /** For content of its own below the words. */
    Composite area() {
        Composite area = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().span(6, 1).grab(true, false).applyTo(area);
        return area;
    }

    void dispose() {
        if (!box.isDisposed()) {
            box.dispose();
        }
    }
}
