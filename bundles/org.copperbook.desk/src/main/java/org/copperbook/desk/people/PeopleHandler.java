package org.copperbook.desk.people;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;
/** Shows the people of the shop, their roles and whether they have a secret. */
public final class PeopleHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        PeopleDialog.open(HandlerUtil.getActiveShellChecked(event));
        return null;
    }
}
