package org.copperbook.desk.form;

import java.util.Optional;
import java.util.function.Supplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * Buttons that change the part in one step, and a line below them that says what came of the last one pressed. While
 * the part may not be edited a button says why and does nothing.
 */
public final class Actions {

    private final PageSite site;
    private final Composite buttons;
    private final Label said;
    private Supplier<Optional<String>> unless = Optional::empty;

    /**
     * Puts an empty row of buttons.
     *
     * @param area   an area of the form without a layout
     * @param saidId id under which the line below is found
     */
    public Actions(Composite area, PageSite site, String saidId) {
        this.site = site;
        GridLayoutFactory.fillDefaults().extendedMargins(0, 0, 0, 10).applyTo(area);
        buttons = new Composite(area, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.wrap = true;
        row.marginLeft = 0;
        row.spacing = 8;
        buttons.setLayout(row);
        said = Look.of(area).as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, saidId);
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(area).wrapping(), SWT.DEFAULT).applyTo(said);
    }

    /**
     * Adds a button.
     *
     * @param does does it and gives what to say, or an empty text
     */
    public Actions button(String id, String text, Supplier<String> does) {
        Button button = Look.of(buttons).as(Look.Role.TEXT, new Button(buttons, SWT.PUSH));
        button.setText(text);
        button.setData(Desk.ID, id);
        button.addListener(SWT.Selection, e -> again(does));
        return this;
    }

    /** Names what else keeps the buttons from doing anything, in words; empty while nothing does. */
    public Actions unless(Supplier<Optional<String>> reason) {
        unless = reason;
        return this;
    }

    /** Does something that was asked for with one of the buttons and has waited since, unless the part may not be edited now. */
    public void again(Supplier<String> does) {
        say(site.blocked().or(unless).orElseGet(does));
    }

    private void say(String text) {
        if (!said.isDisposed()) {
            said.setText(text);
            said.requestLayout();
        }
    }
}
