package org.copperbook.desk.shell;

import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The band that says, in colour and in words, that what is shown is invented. */
public final class DemoBand {

    private DemoBand() {
    }

    /** Adds the band to a composite with a grid layout when the session is the demo's. */
    public static void addTo(Composite parent, DeskSession session) {
        if (!session.isDemo()) {
            return;
        }
        Look look = Look.of(parent);
        Palette palette = look.palette();
        Composite band = new Composite(parent, SWT.NONE);
        band.setBackground(palette.demoBand());
        GridLayoutFactory.fillDefaults().margins(8, 3).applyTo(band);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(band);
        Label words = look.as(Look.Role.STRONG, new Label(band, SWT.WRAP));
        words.setText(DeskWords.text("demo.band"));
        words.setBackground(palette.demoBand());
        words.setForeground(palette.demoText());
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(20), SWT.DEFAULT).applyTo(words);
    }
}
