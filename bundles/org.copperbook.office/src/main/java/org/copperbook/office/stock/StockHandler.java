package org.copperbook.office.stock;

import org.copperbook.office.SinglePage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows what is on the shelf. */
public final class StockHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .openEditor(new SinglePage("stock.tab"), StockEditor.ID);
        } catch (PartInitException e) {
            throw new ExecutionException("the stock could not be shown", e);
        }
    }
}
