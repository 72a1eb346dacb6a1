package org.copperbook.desk.form;

import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/**
 * Lays out the one child of what a page scrolls, and has the page scroll as far as the child now needs. Without it
 * something that grows by a layout request of its own pushes what stands below it out of the page for good.
 */
final class AsHighAsItsContent extends Layout {

    private final ScrolledComposite scroll;

    AsHighAsItsContent(ScrolledComposite scroll) {
        this.scroll = scroll;
    }

    @Override
    protected Point computeSize(Composite outer, int widthHint, int heightHint, boolean flushCache) {
        return outer.getChildren()[0].computeSize(widthHint, heightHint, flushCache);
    }

    @Override
    protected void layout(Composite outer, boolean flushCache) {
        Control content = outer.getChildren()[0];
        int width = outer.getClientArea().width;
        if (width <= 0) {
            return;
        }
        int height = content.computeSize(width, -1, flushCache).y;
        if (height != scroll.getMinHeight()) {
            scroll.setMinHeight(height);
        }
        Rectangle now = outer.getClientArea();
        content.setBounds(now);
    }

    @Override
    protected boolean flushCache(Control control) {
        return true;
    }
}
