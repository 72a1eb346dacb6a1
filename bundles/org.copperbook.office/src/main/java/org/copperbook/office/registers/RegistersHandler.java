package org.copperbook.office.registers;

import org.copperbook.office.SinglePage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the registers of the shop. */
public final class RegistersHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
                    .openEditor(new SinglePage("registers.tab"), RegistersEditor.ID);
        } catch (PartInitException e) {
            throw new ExecutionException("the registers could not be shown", e);
        }
    }
}
