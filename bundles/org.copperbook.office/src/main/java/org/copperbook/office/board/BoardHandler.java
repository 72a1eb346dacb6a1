package org.copperbook.office.board;

import org.copperbook.office.SinglePage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows where all jobs stand. */
public final class BoardHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .openEditor(new SinglePage("board.tab"), BoardEditor.ID);
        } catch (PartInitException e) {
            throw new ExecutionException("where jobs stand could not be shown", e);
        }
    }
}
