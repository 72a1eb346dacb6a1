package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Display;

/** Carries the size chosen in the preferences over to the look, now and whenever it changes. */
final class SizePreference {

    static final String KEY = "size";

    private final Look look;
    private final Display display = Display.getCurrent();
    private final IPreferenceChangeListener listener = e -> {
        if (KEY.equals(e.getKey())) {
            apply();
        }
    };

    SizePreference(Look look) {
        this.look = look;
    }

    void follow() {
        apply();
        preferences().addPreferenceChangeListener(listener);
    }

    void forget() {
        preferences().removePreferenceChangeListener(listener);
    }

    private void apply() {
        String stored = preferences().get(KEY, Look.Size.DESK.name());
        for (Look.Size s : Look.Size.values()) {
            if (s.name().equals(stored)) {
                display.asyncExec(() -> look.resize(s));
            }
        }
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode(Desk.BUNDLE);
    }
}
