package org.copperbook.desk.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerService;

/** Undo, redo and turning pages by their standard commands and keys, while the job is the active part. */
final class EditorCommands {

    private static final String NEXT_PAGE = "org.eclipse.ui.part.nextPage";
    private static final String PREVIOUS_PAGE = "org.eclipse.ui.part.previousPage";

    private final JobEditor editor;
    private final List<DocumentHandler> all = new ArrayList<>();

    EditorCommands(JobEditor editor) {
        this.editor = editor;
    }

    void activate() {
        IHandlerService handlers = editor.getSite().getService(IHandlerService.class);
        handler(handlers, IWorkbenchCommandConstants.EDIT_UNDO, editor::undo, editor::canUndo);
        handler(handlers, IWorkbenchCommandConstants.EDIT_REDO, editor::redo, editor::canRedo);
        handler(handlers, NEXT_PAGE, () -> editor.turn(1), () -> editor.document() != null);
        handler(handlers, PREVIOUS_PAGE, () -> editor.turn(-1), () -> editor.document() != null);
        editor.addPropertyListener((source, property) -> check());
    }

    private void handler(IHandlerService handlers, String command, Runnable action, BooleanSupplier enabled) {
        DocumentHandler h = new DocumentHandler(editor.getSite(), action, enabled);
        all.add(h);
        handlers.activateHandler(command, h);
    }

    /** Another page is shown, or something was changed: what can be undone is another. */
    void check() {
        all.forEach(DocumentHandler::check);
    }
}
