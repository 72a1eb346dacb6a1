package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** Front office: the register stands wide beside the jobs. */
public final class FrontOffice implements IPerspectiveFactory {

    private static final float REGISTER = 0.27f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addView(Desk.REGISTER, IPageLayout.LEFT, REGISTER, layout.getEditorArea());
        layout.getViewLayout(Desk.REGISTER).setCloseable(false);
    }
}
