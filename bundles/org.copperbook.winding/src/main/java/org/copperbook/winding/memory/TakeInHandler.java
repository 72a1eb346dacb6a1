package org.copperbook.winding.memory;

import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.winding.WindingPage;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Takes in old winding cards from the menu, with no job open; the wizard asks which winding the cards are of. */
public final class TakeInHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        TakeInWizard.open(HandlerUtil.getActiveShellChecked(event), DeskSession.ofWorkbench(),
                Words.of(WindingPage.class), WindingRole.MAIN_STATOR, () -> { });
        return null;
    }
}
