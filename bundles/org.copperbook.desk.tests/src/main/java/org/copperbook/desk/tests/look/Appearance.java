package org.copperbook.desk.tests.look;

import java.util.function.BooleanSupplier;
import org.copperbook.desk.Desk;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Display;

/** How the window is to look: the system's theme and the size chosen in the preferences. */
enum Appearance {

    LIGHT(false, Look.Size.DESK),
    DARK(true, Look.Size.DESK),
    LIGHT_BENCH(false, Look.Size.BENCH),
    DARK_BENCH(true, Look.Size.BENCH);

    private static final String SIZE = "size";

    private final boolean dark;
    private final Look.Size size;

    Appearance(boolean dark, Look.Size size) {
        this.dark = dark;
        this.size = size;
    }

    boolean isBench() {
        return size != Look.Size.DESK;
    }

    /** Makes the window look so, and waits until it does. */
    void putOn(Desktop desktop) {
        Display display = Display.getCurrent();
        preferDark(dark);
        await(desktop, "the theme is " + (dark ? "dark" : "light"), () -> Palette.of(display).isDark() == dark);
        InstanceScope.INSTANCE.getNode(Desk.BUNDLE).put(SIZE, size.name());
        await(desktop, "the size is " + size, () -> Look.of(display).size() == size);
        desktop.work();
    }

    private static void await(Desktop desktop, String what, BooleanSupplier holds) {
        desktop.until(what, holds);
    }

    /** Asks the toolkit for the other variant of its theme, as a change in the system's settings does. */
    private static void preferDark(boolean dark) {
        try {
            Class.forName("org.eclipse.swt.internal.gtk.OS", true, Display.class.getClassLoader())
                    .getMethod("setDarkThemePreferred", boolean.class).invoke(null, dark);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("this toolkit cannot be asked for a dark theme", e);
        }
    }
}
