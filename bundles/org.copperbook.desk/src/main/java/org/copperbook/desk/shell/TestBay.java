package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** Test bay: the job takes the window and the register lies under it, out of the way of the readings. */
public final class TestBay implements IPerspectiveFactory {

    private static final float JOB = 0.8f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addView(Desk.REGISTER, IPageLayout.BOTTOM, JOB, layout.getEditorArea());
        layout.getViewLayout(Desk.REGISTER).setCloseable(false);
    }
}
