package org.copperbook.desk.editor;

import org.copperbook.desk.Desk;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPartSite;

/** Which group of pages the perspective of now is for. */
final class PerspectiveGroups {

    private PerspectiveGroups() {
    }

    static String current(IWorkbenchPartSite site) {
        IPerspectiveDescriptor p = site.getPage().getPerspective();
        return switch (p == null ? "" : p.getId()) {
            case Desk.BENCH -> "bench";
            case Desk.TEST_BAY -> "testbay";
            default -> "office";
        };
    }
}
