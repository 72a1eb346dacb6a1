package org.copperbook.office.month;

import org.copperbook.office.SinglePage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows a month in figures. */
public final class MonthHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .openEditor(new SinglePage("month.tab"), MonthEditor.ID);
        } catch (PartInitException e) {
            throw new ExecutionException("the month could not be shown", e);
        }
    }
}
