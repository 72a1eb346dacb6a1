package org.copperbook.desk.editor;

import java.util.function.BooleanSupplier;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.HandlerEvent;
import org.eclipse.ui.services.IEvaluationService;
import org.eclipse.ui.services.IServiceLocator;

/** A command that can be given only while the document has something for it. */
final class DocumentHandler extends AbstractHandler {

    private final IServiceLocator site;
    private final Runnable action;
    private final BooleanSupplier enabled;
    private boolean told;

    DocumentHandler(IServiceLocator site, Runnable action, BooleanSupplier enabled) {
        this.site = site;
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

    /** Tells menus and the tool bar when it can be given, or cannot any more. */
    void check() {
        boolean now = isEnabled();
        if (now != told) {
            told = now;
            fireHandlerChanged(new HandlerEvent(this, true, false));
            // The tool bar does not listen to handlers; it asks all of them again when anything at all is to be evaluated.
            site.getService(IEvaluationService.class).requestEvaluation(DocumentHandler.class.getName());
        }
    }
}
