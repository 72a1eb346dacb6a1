package org.copperbook.desk.editor;

import java.util.function.BooleanSupplier;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.HandlerEvent;
import org.eclipse.ui.IPropertyListener;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerService;

/** Undo, redo and turning pages by their standard commands and keys, while the job is the active part. */
final class EditorCommands {

    private static final String NEXT_PAGE = "org.eclipse.ui.part.nextPage";
    private static final String PREVIOUS_PAGE = "org.eclipse.ui.part.previousPage";

    private final JobEditor editor;

    EditorCommands(JobEditor editor) {
        this.editor = editor;
    }

    void activate() {
        IHandlerService handlers = editor.getSite().getService(IHandlerService.class);
        handler(handlers, IWorkbenchCommandConstants.EDIT_UNDO, editor::undo, editor::canUndo);
        handler(handlers, IWorkbenchCommandConstants.EDIT_REDO, editor::redo, editor::canRedo);
        handler(handlers, NEXT_PAGE, () -> editor.turn(1), () -> editor.document() != null);
        handler(handlers, PREVIOUS_PAGE, () -> editor.turn(-1), () -> editor.document() != null);
    }

    private void handler(IHandlerService handlers, String command, Runnable action, BooleanSupplier enabled) {
        DocumentHandler h = new DocumentHandler(action, enabled);
        IPropertyListener follow = (source, property) -> h.check();
        editor.addPropertyListener(follow);
        handlers.activateHandler(command, h);
    }

    private static final class DocumentHandler extends AbstractHandler {

        private final Runnable action;
        private final BooleanSupplier enabled;

        DocumentHandler(Runnable action, BooleanSupplier enabled) {
            this.action = action;
            this.enabled = enabled;
        }

        @Override
        public Object execute(ExecutionEvent event) {
            action.run();
            return null;
        }

        @Override
        public boolean isEnabled() {
            return enabled.getAsBoolean();
        }

        void check() {
            fireHandlerChanged(new HandlerEvent(this, true, false));
        }
    }
}
