package org.copperbook.office;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.part.EditorPart;

/** A page over all jobs: it shows what was saved elsewhere, and has nothing of its own to save. */
public abstract class SinglePageEditor extends EditorPart {

    @Override
    public final void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public final void doSave(IProgressMonitor monitor) {
        // Whatever is typed here is kept at once.
    }

    @Override
    public final void doSaveAs() {
        throw new UnsupportedOperationException("a page over all jobs is not saved");
    }

    @Override
    public final boolean isDirty() {
        return false;
    }

    @Override
    public final boolean isSaveAsAllowed() {
        return false;
    }
}
