package org.copperbook.desk.form;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Words that the page says and nobody types: they wrap, can be selected and copied, and stand on the page's own ground. */
public final class SaidText {

    private SaidText() {
    }

    /**
     * Makes such words, as wide as their place allows.
     *
     * @param id   id under which they are found
     * @param name name by which a screen reader calls them
     */
    public static Text in(Composite parent, String id, String name) {
        Text text = in(parent);
        text.setData(Desk.ID, id);
        return SpokenName.give(text, name);
    }

    /** The same for words that are given their id and name elsewhere. */
    public static Text in(Composite parent) {
        Look look = Look.of(parent);
        Text text = look.as(Look.Role.TEXT, new Text(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY));
        text.setBackground(parent.getBackground());
        look.onResize(text, () -> text.setBackground(text.getParent().getBackground()));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(text);
        return text;
    }
}
