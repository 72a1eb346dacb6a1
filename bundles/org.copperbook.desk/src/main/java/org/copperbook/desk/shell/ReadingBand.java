package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The band that says why nothing can be saved in this store. */
public final class ReadingBand {

    private ReadingBand() {
    }

    /** Adds the band to a composite with a grid layout when the store can only be read. */
    public static void addTo(Composite parent, DeskSession session) {
        session.store().onlyReading().ifPresent(why -> {
            Look look = Look.of(parent);
            Label words = look.as(Look.Role.STRONG, new Label(parent, SWT.WRAP));
            words.setData(Desk.ID, "band/reading");
            words.setText(DeskWords.text("reading.band", why));
            words.setForeground(look.palette().problem());
            GridDataFactory.fillDefaults().indent(8, 3).grab(true, false).hint(look.chars(20), SWT.DEFAULT)
                    .applyTo(words);
        });
    }
}
