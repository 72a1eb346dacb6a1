package org.copperbook.office.stock;

import org.copperbook.desk.page.ShopPage;
import org.copperbook.office.SinglePage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows what is on the shelf, by a command or because something was typed about an item when the program ended. */
public final class StockHandler extends AbstractHandler implements ShopPage {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            openIn(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
            return null;
        } catch (PartInitException e) {
            throw new ExecutionException("the stock could not be shown", e);
        }
    }

    @Override
    public void openIn(IWorkbenchPage page) throws PartInitException {
        page.openEditor(new SinglePage("stock.tab"), StockEditor.ID);
    }
}
