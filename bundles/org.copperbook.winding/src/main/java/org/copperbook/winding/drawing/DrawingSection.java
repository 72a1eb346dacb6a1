package org.copperbook.winding.drawing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.Coalescing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.picture.PictureButtons;
import org.copperbook.desk.picture.PictureCanvas;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.winding.WindingView;
import org.copperbook.winding.Aside;
import org.copperbook.winding.OpenWinding;
import org.copperbook.winding.WindingSection;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * Draws the winding as it stands on the page. The group under the cursor of the group grid is highlighted; a click on a
 * group puts the cursor on its row.
 */
public final class DrawingSection implements WindingSection {

    private static final int QUIET_MILLIS = 150;
    private static final Pattern GROUP = Pattern.compile("group/(\\d+)(/.*)?");

    /** What is to be drawn, and how. */
    private record Asked(WindingData data, WindingView view) {
    }

    private record Drawn(Asked asked, Scene scene) {
    }

    private final OpenWinding winding;
    private final Supplier<RecordGrid> groups;
    /** One and the same each time, so that a new change puts the drawing off and does not ask for one more. */
    private final Runnable whenQuiet = this::redrawIfChanged;
    private final Map<WindingView, Button> choices = new EnumMap<>(WindingView.class);
    private WindingView view = WindingView.DEVELOPED;
    private WindingData drawn;
    private Coalescing<Asked, Drawn> drawing;
    private PictureCanvas canvas;
    private Label said;

    /** @param groups the grid of the coil groups, once it is built */
    public DrawingSection(OpenWinding winding, Supplier<RecordGrid> groups) {
        this.winding = winding;
        this.groups = groups;
    }

    @Override
    public void build(Form here) {
        Composite area = here.area("winding.drawing");
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Composite views = new Composite(area, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        row.spacing = 10;
        views.setLayout(row);
        for (WindingView v : WindingView.values()) {
            choices.put(v, choice(views, look, v));
        }
        choices.get(view).setSelection(true);
        canvas = new PictureCanvas(area);
        canvas.setData(Desk.ID, "winding.drawing");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(canvas);
        canvas.onPick(this::picked);
        canvas.output().onSaid(this::say);
        canvas.output().headed(winding::heading);
        new PictureButtons(area, canvas).moveAbove(canvas);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "winding.drawing.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        groups.get().onRow(this::highlight);
        drawing = Aside.of(area, a -> new Drawn(a, a.data == null ? Scene.EMPTY : a.view.of(a.data)), this::show);
        draw();
    }

    private Button choice(Composite views, Look look, WindingView v) {
        Button button = look.as(Look.Role.TEXT, new Button(views, SWT.RADIO));
        button.setText(winding.words().text("drawing." + v.name()));
        button.setData(Desk.ID, "drawing." + v.name());
        button.addListener(SWT.Selection, e -> {
            if (button.getSelection()) {
                view = v;
                drawn = null;
                draw();
            }
        });
        return button;
    }

    @Override
    public void changed() {
        if (canvas != null && !canvas.isDisposed()) {
            canvas.getDisplay().timerExec(QUIET_MILLIS, whenQuiet);
        }
    }

    private void redrawIfChanged() {
        if (!canvas.isDisposed() && !winding.data().equals(java.util.Optional.ofNullable(drawn))) {
            drawn = winding.data().orElse(null);
            drawing.ask(new Asked(drawn, view));
        }
    }

    private void draw() {
        drawn = winding.data().orElse(null);
        show(new Drawn(new Asked(drawn, view), drawn == null ? Scene.EMPTY : view.of(drawn)));
    }

    /** Shows a drawing, unless another one has been asked for since. */
    private void show(Drawn next) {
        if (canvas.isDisposed() || next.asked.data != drawn || next.asked.view != view) {
            return;
        }
        canvas.show(next.scene);
        say(winding.words().text(canvas.scene().isEmpty() ? "drawing.nothing" : "drawing.hint"));
    }

    private void highlight(int row) {
        int number = winding.document().rows(winding.key(), "/groups").path(row).path("number").asInt(0);
        canvas.highlight(number == 0 ? "" : "group/" + number);
    }

    private void picked(String id) {
        Matcher m = GROUP.matcher(id);
        if (!m.matches()) {
            canvas.highlight(id);
            return;
        }
        canvas.highlight("group/" + m.group(1));
        ArrayNode rows = winding.document().rows(winding.key(), "/groups");
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).path("number").asInt() == Integer.parseInt(m.group(1))) {
                groups.get().moveTo(i, groups.get().column());
                groups.get().table().setSelection(i);
            }
        }
    }

    private void say(String text) {
        if (!said.isDisposed() && !text.equals(said.getText())) {
            said.setText(text);
            Grown.tell(said);
        }
    }
}
