package org.copperbook.desk.people;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;

/** Asks who works here: the quick change-over at a bench that several people share. */
public final class SignInHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        SignInDialog.open(null);
        return null;
    }
}
