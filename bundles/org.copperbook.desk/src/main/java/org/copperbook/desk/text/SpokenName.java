package org.copperbook.desk.text;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** The name by which a screen reader calls a control that has no label of its own. */
public final class SpokenName {

    private SpokenName() {
    }

    /** Gives a control its name, for as long as it lives. */
    public static <C extends Control> C give(C control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                if (e.childID == ACC.CHILDID_SELF) {
                    e.result = name;
                }
            }
        });
        return control;
    }
}
