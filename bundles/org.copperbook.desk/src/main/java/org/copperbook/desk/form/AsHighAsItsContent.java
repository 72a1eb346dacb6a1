package org.copperbook.desk.form;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/**
 * Lays out the one child of what a page scrolls, and has the page scroll as far as the child now needs. Without it
 * something that grows by a layout request of its own pushes what stands below it out of the page for good.
 */
final class AsHighAsItsContent extends Layout {

    private final ScrolledComposite scroll;
    private final BooleanSupplier measured;
    private int laidOutAt;

    /** @param measured whether who lays the page out has just measured its content and set the height to scroll */
    AsHighAsItsContent(ScrolledComposite scroll, BooleanSupplier measured) {
        this.scroll = scroll;
        this.measured = measured;
    }

    @Override
    protected Point computeSize(Composite outer, int widthHint, int heightHint, boolean flushCache) {
        return outer.getChildren()[0].computeSize(widthHint, heightHint, flushCache);
    }

    @Override
    protected void layout(Composite outer, boolean flushCache) {
        Control content = outer.getChildren()[0];
        int width = outer.getClientArea().width;
        if (width <= 0 || !measured.getAsBoolean() && width != laidOutAt) {
            return; // At another width the form lays itself out.
        }
        laidOutAt = width;
        if (!measured.getAsBoolean()) {
            int height = content.computeSize(width, -1, flushCache).y;
            if (height != scroll.getMinHeight()) {
                scroll.setMinHeight(height);
            }
        }
        content.setBounds(outer.getClientArea());
    }

    @Override
    protected boolean flushCache(Control control) {
        return true;
    }
}
