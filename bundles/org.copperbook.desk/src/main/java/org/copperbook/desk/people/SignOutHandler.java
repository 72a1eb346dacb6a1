package org.copperbook.desk.people;

import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Nobody is signed in any more. */
public final class SignOutHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        DeskSession session = DeskSession.ofWorkbench();
        if (session.hasSecrets()) {
            signOut(session);
        }
        session.say(DeskWords.text(session.hasSecrets() ? "signOut.done" : "signOut.noSecrets"));
        return null;
    }

    static void signOut(DeskSession session) {
        session.store().accounts().signOut();
        session.background().execute(session::signedInOrOut);
    }
}
