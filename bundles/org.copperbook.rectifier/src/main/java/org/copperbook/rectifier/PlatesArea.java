package org.copperbook.rectifier;

import java.util.List;
import java.util.function.IntConsumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.picture.PictureButtons;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.plates.PlatesOfSet;
import org.copperbook.sheets.plates.PlatesPicture;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The two plates on the page: a diode picked in the picture is the row of the grids, and the other way round. */
final class PlatesArea {

    private static final String POSITIONS = "positions/";

    private final PictureCanvas canvas;
    private final PageWords words;
    private List<Verdict> verdicts = List.of();

    PlatesArea(Composite area, PageSite site, Words pageWords, IntConsumer picked) {
        words = new PageWords(pageWords, site);
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        canvas = new PictureCanvas(area);
        canvas.setData(Desk.ID, "rectifier.picture");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(canvas);
        new PictureButtons(area, canvas);
        Label said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setText(pageWords.text("plates.how"));
        said.setForeground(look.palette().muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        canvas.output().onSaid(text -> {
            said.setText(text);
            said.requestLayout();
        });
        canvas.onPick(id -> {
            if (id.startsWith(POSITIONS)) {
                picked.accept(Integer.parseInt(id.substring(POSITIONS.length())));
            }
        });
    }

    /** Draws the set; an empty picture while nothing is recorded. */
    void show(RectifierSet set) {
        canvas.show(set == null ? Scene.EMPTY : PlatesPicture.of(PlatesOfSet.view(set, verdicts, words)));
    }

    void judged(List<Verdict> ofJob) {
        verdicts = ofJob;
    }

    /** Marks the position whose row has the cursor. */
    void mark(int position) {
        canvas.highlight(PlatesOfSet.id(position));
    }
}
