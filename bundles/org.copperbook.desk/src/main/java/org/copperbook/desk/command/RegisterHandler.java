package org.copperbook.desk.command;

import org.copperbook.desk.Desk;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the register with the cursor in its filter, wherever the work is. */
public final class RegisterHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(Desk.REGISTER);
        } catch (PartInitException e) {
            throw new ExecutionException("the register could not be shown", e);
        }
    }
}
