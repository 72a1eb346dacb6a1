package org.copperbook.office.registers;

import org.copperbook.desk.page.ShopPage;
import org.copperbook.office.SinglePage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the registers of the shop, by a command or because a crash left something of them. */
public final class RegistersHandler extends AbstractHandler implements ShopPage {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            openIn(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
            return null;
        } catch (PartInitException e) {
            throw new ExecutionException("the registers could not be shown", e);
        }
    }

    @Override
    public void openIn(IWorkbenchPage page) throws PartInitException {
        page.openEditor(new SinglePage("registers.tab"), RegistersEditor.ID);
    }
}
