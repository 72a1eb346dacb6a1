package org.copperbook.desk.editor;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;

/** Brings what could not be saved before the eyes of whoever saves all and may want to leave: its strip says why. */
public final class InFront {

    private InFront() {
    }

    /** Shows a part of the window and gives it the keyboard, unless it is in sight. */
    public static void bring(IWorkbenchPart part) {
        IWorkbenchPage page = part.getSite().getPage();
        if (!page.isPartVisible(part)) {
            page.activate(part);
        }
    }
}
