package org.copperbook.desk.page;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/** A page over some of the shop's own parts, contributed by a plug-in; opened again when a crash left something of it. */
public interface ShopPage {

    /** Shows it in the window; it offers by itself what was left. */
    void openIn(IWorkbenchPage page) throws PartInitException;
}
