package org.copperbook.desk.picture;

import org.copperbook.desk.Desk;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** The buttons of a picture: what its keys and its menu do, within reach of a glove. */
public final class PictureButtons extends Composite {

    public PictureButtons(Composite parent, PictureCanvas canvas) {
        this(parent, canvas, false);
    }

    /** @param inWindow whether the picture has a window of its own already */
    PictureButtons(Composite parent, PictureCanvas canvas, boolean inWindow) {
        super(parent, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.wrap = true;
        row.marginLeft = 0;
        row.marginTop = 0;
        row.spacing = 6;
        setLayout(row);
        if (!inWindow) {
            button("picture.large", () -> new PictureWindow(canvas).open());
        }
        button("picture.fit", canvas::fit);
        button("picture.larger", canvas::larger);
        button("picture.smaller", canvas::smaller);
        button("picture.copy", canvas.output()::copy);
        button("picture.svg", canvas.output()::saveSvg);
        button("picture.png", canvas.output()::savePng);
        button("picture.print", canvas.output()::print);
    }

    private void button(String key, Runnable action) {
        Button button = Look.of(this).as(Look.Role.TEXT, new Button(this, SWT.PUSH));
        button.setText(DeskWords.text(key));
        button.setData(Desk.ID, key);
        button.addListener(SWT.Selection, e -> action.run());
    }
}
