package org.copperbook.desk.theme;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/**
 * Fonts and sizes of the desk on one display: the system font at the size chosen in the preferences. One look hangs on
 * each display; whoever draws asks it and is told when the size changes.
 */
public final class Look {

    /** Sizes of text and targets. */
    public enum Size {
        /** As the system says. */
        DESK(1.0),
        /** For reading at arm's length with gloves on: text and targets half as large again. */
        BENCH(1.5),
        /** Larger still. */
        FAR(2.0);

        private final double factor;

        Size(double factor) {
            this.factor = factor;
        }
    }

    /** Kinds of text. */
    public enum Role { TEXT, STRONG, HEADING }

    private static final String KEY = "org.copperbook.look";
    private static final String ROLE = "org.copperbook.look.role";
    private static final double MM_PER_INCH = 25.4;
    private static final double TARGET_MM = 9;
    private static final int WRAPPING_CHARS = 16;

    private final Display display;
    private final LocalResourceManager resources;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Size size = Size.DESK;
    private Measures measures;
    private boolean dark;

    private record Measures(int rowHeight, int lineHeight, int target, double charWidth) {
    }

    private Look(Display display) {
        this.display = display;
        this.resources = new LocalResourceManager(JFaceResources.getResources(display));
        this.dark = Palette.of(display).isDark();
        display.addListener(SWT.Settings, e -> themed());
        display.disposeExec(resources::dispose);
    }

    /** The look of a display. */
    public static Look of(Display display) {
        if (display.getData(KEY) instanceof Look look) {
            return look;
        }
        Look made = new Look(display);
        display.setData(KEY, made);
        return made;
    }

    /** The look of a control's display. */
    public static Look of(Control control) {
        return of(control.getDisplay());
    }

    public Size size() {
        return size;
    }

    /** How many times as large as the system's the text is. */
    public double factor() {
        return size.factor;
    }

    /** Changes the size and tells everybody who draws. */
    public void resize(Size next) {
        if (next != size) {
            size = next;
            measures = null;
            listeners.forEach(Runnable::run);
        }
    }

    /** The system has gone from light to dark or back: whoever draws asks for the colours anew. */
    private void themed() {
        boolean now = Palette.of(display).isDark();
        if (now != dark) {
            dark = now;
            measures = null;
            listeners.forEach(Runnable::run);
        }
    }

    /** Tells the listener when the size or the theme changes, for as long as the control lives. */
    public void onResize(Control control, Runnable listener) {
        Runnable living = () -> {
            if (!control.isDisposed()) {
                listener.run();
            }
        };
        listeners.add(living);
        control.addDisposeListener(e -> listeners.remove(living));
    }

    /** The colours of now. */
    public Palette palette() {
        return Palette.of(display);
    }

    public Font font(Role role) {
        FontData system = display.getSystemFont().getFontData()[0];
        double height = system.getHeight() * size.factor * (role == Role.HEADING ? 1.25 : 1.0);
        FontDescriptor d = FontDescriptor.createFrom(system).setHeight((int) Math.round(height));
        return resources.create(role == Role.TEXT ? d : d.setStyle(SWT.BOLD));
    }

    /** Height of a row of a grid or list, pixels: one line with air, and at bench size at least 9 mm. */
    public int rowHeight() {
        return measures().rowHeight();
    }

    /** Height of a line of text, pixels. */
    public int lineHeight() {
        return measures().lineHeight();
    }

    /** Least height and width of what is pressed or touched, pixels; 0 where the system's own size will do. */
    public int target() {
        return measures().target();
    }

    /** Width hint of words that wrap in whatever width their place has, pixels: narrow enough for any place. */
    public int wrapping() {
        return chars(WRAPPING_CHARS);
    }

    /** Width of a number of average characters, pixels. */
    public int chars(int count) {
        return (int) Math.ceil(measures().charWidth() * count);
    }

    private Measures measures() {
        if (measures == null) {
            GC gc = new GC(display);
            try {
                gc.setFont(font(Role.TEXT));
                int line = gc.getFontMetrics().getHeight();
                int air = line + Math.max(6, line / 3);
                int target = size == Size.DESK ? 0 : (int) Math.ceil(TARGET_MM * display.getDPI().y / MM_PER_INCH);
                measures = new Measures(Math.max(air, target), line, target, gc.getFontMetrics().getAverageCharacterWidth());
            } finally {
                gc.dispose();
            }
        }
        return measures;
    }

    /** Gives a control the font of its role, now and when the size changes through {@link #dress}. */
    public <C extends Control> C as(Role role, C control) {
        control.setData(ROLE, role);
        control.setFont(font(role));
        return control;
    }

    /** Gives every control below the fonts of now. */
    public void dress(Control control) {
        control.setFont(font(control.getData(ROLE) instanceof Role r ? r : Role.TEXT));
        if (control instanceof Composite c) {
            for (Control child : c.getChildren()) {
                dress(child);
            }
        }
    }
}
