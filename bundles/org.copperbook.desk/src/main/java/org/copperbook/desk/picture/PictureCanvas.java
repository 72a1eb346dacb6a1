package org.copperbook.desk.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * Shows a scene: fits it, enlarges and moves it by mouse (Ctrl and wheel, dragging) and keys (+, -, 0, arrows),
 * highlights by id, tells which id was clicked, and offers copying, saving and printing in its menu. Use on the
 * display's thread only.
 */
public final class PictureCanvas extends Canvas {

    private static final double STEP = 1.25;
    private static final int MOVE = 40;
    private static final int REACH = 7;
    private static final int STILL = 4;
    private static final int NATURAL_CHARS = 40;
    private static final int LEAST_ROWS = 9;
    private static final int EMPTY_ROWS = 3;
    private static final double MOST_OF_SCREEN = 0.7;

    private final List<Consumer<String>> picked = new ArrayList<>();
    private final List<Runnable> seen = new ArrayList<>();
    private final List<Runnable> shown = new ArrayList<>();
    private final List<Runnable> highlights = new ArrayList<>();
    private final List<Predicate<Event>> keys = new ArrayList<>();
    private final PictureOutput output;
    private Scene scene = Scene.EMPTY;
    private Sight sight = new Sight(1, 0, 0);
    private boolean fitted = true;
    private String chosen = "";
    private Event pressed;
    private Event last;

    public PictureCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER | SWT.NO_BACKGROUND);
        output = new PictureOutput(this);
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Resize, e -> refit());
        addListener(SWT.MouseDown, this::press);
        addListener(SWT.MouseMove, this::drag);
        addListener(SWT.MouseUp, this::release);
        addListener(SWT.MouseVerticalWheel, this::wheel);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT
                || e.detail == SWT.TRAVERSE_TAB_PREVIOUS || e.detail == SWT.TRAVERSE_ESCAPE);
        setMenu(output.menu());
        speak();
    }

    /** Shows a scene; the part in sight stays when its size stays. */
    public void show(Scene next) {
        boolean other = next.width() != scene.width() || next.height() != scene.height();
        boolean grown = aspect(next) != aspect(scene);
        scene = next;
        if (grown) {
            Grown.tell(this);
        }
        if (other || fitted) {
            fit();
        } else {
            redraw();
        }
        shown.forEach(Runnable::run);
    }

    private static double aspect(Scene scene) {
        return scene.isEmpty() ? 0 : scene.height() / scene.width();
    }

    /** As high as the picture is at the width given, so that no empty ground stands above and below it. */
    @Override
    public org.eclipse.swt.graphics.Point computeSize(int widthHint, int heightHint, boolean changed) {
        checkWidget();
        Look look = Look.of(this);
        int frame = 2 * getBorderWidth();
        int width = widthHint == SWT.DEFAULT ? look.chars(NATURAL_CHARS) : widthHint;
        int most = (int) (getMonitor().getClientArea().height * MOST_OF_SCREEN);
        int least = Math.min(most, (scene.isEmpty() ? EMPTY_ROWS : LEAST_ROWS) * look.rowHeight());
        int height = heightHint == SWT.DEFAULT
                ? Math.max(least, Math.min(most, (int) Math.ceil(width * aspect(scene)))) : heightHint;
        return new org.eclipse.swt.graphics.Point(width + frame, height + frame);
    }

    /** The scene shown. */
    public Scene scene() {
        return scene;
    }

    /** Copying, saving and printing of the scene. */
    public PictureOutput output() {
        return output;
    }

    /** Highlights what the id names and all below it; empty for nothing. */
    public void highlight(String id) {
        if (!id.equals(chosen)) {
            chosen = id;
            redraw();
            highlights.forEach(Runnable::run);
        }
    }

    /** What is highlighted; empty for nothing. */
    public String highlighted() {
        return chosen;
    }

    /** Tells the id of what was clicked; empty for a click beside everything. */
    public void onPick(Consumer<String> listener) {
        picked.add(listener);
    }

    /** Tells whenever another part is seen. */
    public void onSight(Runnable listener) {
        seen.add(listener);
    }

    /** Tells whenever another scene is shown. */
    void onShown(Runnable listener) {
        shown.add(listener);
    }

    /** Tells whenever something else is highlighted. */
    void onHighlight(Runnable listener) {
        highlights.add(listener);
    }

    /** Does what a click on something of that id does. */
    void pick(String id) {
        picked.forEach(l -> l.accept(id));
    }

    /** Gives every key to the listener first; one that it answers with true moves nothing here. */
    public void onKey(Predicate<Event> listener) {
        keys.add(listener);
    }

    /** Shows the whole scene, also after the next change of the control's size. */
    public void fit() {
        Rectangle area = getClientArea();
        fitted = true;
        see(Sight.fit(scene.width(), scene.height(), Math.max(1, area.width), Math.max(1, area.height)));
    }

    /** Larger, about the middle. */
    public void larger() {
        enlarge(STEP);
    }

    /** Smaller, about the middle. */
    public void smaller() {
        enlarge(1 / STEP);
    }

    /** Pixels per unit of the scene. */
    public double scale() {
        return sight.scale();
    }

    /** Where a place of the scene lies in the control. */
    public org.eclipse.swt.graphics.Point toControl(Point p) {
        return new org.eclipse.swt.graphics.Point((int) Math.round(sight.x() + p.x() * sight.scale()),
                (int) Math.round(sight.y() + p.y() * sight.scale()));
    }

    /** The place of the scene at a point of the control. */
    public Point toScene(int x, int y) {
        return sight.onScene(x, y);
    }

    private void enlarge(double by) {
        Rectangle area = getClientArea();
        fitted = false;
        see(sight.enlarged(by, area.width / 2.0, area.height / 2.0));
    }

    private void move(double dx, double dy) {
        Rectangle area = getClientArea();
        fitted = false;
        see(sight.moved(dx, dy, scene.width(), scene.height(), area.width, area.height));
    }

    private void see(Sight next) {
        sight = next;
        redraw();
        seen.forEach(Runnable::run);
    }

    private void refit() {
        if (fitted) {
            fit();
        }
    }

    private void paint(Event e) {
        Look look = Look.of(this);
        ScenePalette palette = look.palette().isDark() ? ScenePalette.DARK : ScenePalette.LIGHT;
        Rectangle area = getClientArea();
        int paper = palette.paper();
        e.gc.setBackground(new Color(paper >> 16 & 0xFF, paper >> 8 & 0xFF, paper & 0xFF));
        e.gc.fillRectangle(area);
        if (scene.isEmpty()) {
            e.gc.setForeground(look.palette().muted());
            e.gc.setFont(look.font(Look.Role.TEXT));
            e.gc.drawText(DeskWords.text("picture.nothing"), look.lineHeight(), look.lineHeight(), true);
        } else {
            ScenePainter.paint(e.gc, scene, palette, sight.x(), sight.y(), sight.scale(), chosen);
        }
        if (isFocusControl()) {
            e.gc.setForeground(look.palette().accent());
            e.gc.setLineWidth(2);
            e.gc.drawRectangle(1, 1, area.width - 2, area.height - 2);
        }
    }

    private void press(Event e) {
        setFocus();
        if (e.button == 1) {
            pressed = e;
            last = e;
        }
    }

    private void drag(Event e) {
        if (last != null && (Math.abs(e.x - pressed.x) > STILL || Math.abs(e.y - pressed.y) > STILL || last != pressed)) {
            move(e.x - last.x, e.y - last.y);
            last = e;
        }
    }

    private void release(Event e) {
        if (e.button == 1 && pressed != null && last == pressed) {
            pick(e.x, e.y);
        }
        pressed = null;
        last = null;
    }

    private void pick(int x, int y) {
        pick(Picking.at(scene, sight.onScene(x, y), REACH / sight.scale()).orElse(""));
    }

    private void wheel(Event e) {
        if ((e.stateMask & SWT.MOD1) != 0) {
            fitted = false;
            see(sight.enlarged(e.count > 0 ? STEP : 1 / STEP, e.x, e.y));
            e.doit = false;
        }
    }

    private void key(Event e) {
        if (keys.stream().anyMatch(k -> k.test(e))) {
            return;
        }
        if ((e.stateMask & SWT.MOD1) != 0 && (e.keyCode == 'c' || e.keyCode == 'C')) {
            output.copy();
            return;
        }
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> move(MOVE, 0);
            case SWT.ARROW_RIGHT -> move(-MOVE, 0);
            case SWT.ARROW_UP -> move(0, MOVE);
            case SWT.ARROW_DOWN -> move(0, -MOVE);
            case SWT.KEYPAD_ADD -> larger();
            case SWT.KEYPAD_SUBTRACT -> smaller();
            default -> typed(e.character);
        }
    }

    private void typed(char c) {
        switch (c) {
            case '+', '=' -> larger();
            case '-' -> smaller();
            case '0' -> fit();
            default -> {
            }
        }
    }

    private void speak() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = scene.title();
            }

            @Override
            public void getHelp(AccessibleEvent e) {
                e.result = DeskWords.text("picture.keys");
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent e) {
                e.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }
}
