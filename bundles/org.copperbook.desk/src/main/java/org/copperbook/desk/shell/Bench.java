package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** Bench: the job takes the window, the register stands narrow beside it. */
public final class Bench implements IPerspectiveFactory {

    private static final float REGISTER = 0.16f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addView(Desk.REGISTER, IPageLayout.LEFT, REGISTER, layout.getEditorArea());
        layout.getViewLayout(Desk.REGISTER).setCloseable(false);
    }
}
