package org.copperbook.desk.theme;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;

/**
 * Lets what can wrap wrap, in any width: words, rows of buttons and pictures that ask for more width than their place
 * has would otherwise be cut off at its edge. It looks at the layout, so that plug-ins need not think of it.
 */
public final class Narrow {

    private Narrow() {
    }

    /** Makes everything below a control that grows with its place shrink with it too. Call it before laying out. */
    public static void ensure(Control root) {
        int least = Look.of(root).wrapping();
        below(root, least);
    }

    private static void below(Control at, int least) {
        if (at instanceof Composite c && !(at instanceof Table)) {
            for (Control child : c.getChildren()) {
                if (c.getLayout() instanceof GridLayout && wraps(child)) {
                    give(child, least);
                }
                below(child, least);
            }
        }
    }

    private static boolean wraps(Control c) {
        return c instanceof Label && (c.getStyle() & SWT.WRAP) != 0
                || c instanceof Composite row && row.getLayout() instanceof RowLayout layout && layout.wrap
                || c instanceof Canvas canvas && canvas.getLayout() == null;
    }

    private static void give(Control c, int least) {
        GridData data = c.getLayoutData() instanceof GridData d ? d : null;
        boolean row = c instanceof Composite composite && composite.getLayout() instanceof RowLayout;
        boolean alone = ((GridLayout) c.getParent().getLayout()).numColumns == 1;
        // The layout gives plain data to a child that has none; a row of buttons on a line of its own may have it all.
        if (row && (data == null || alone && !data.grabExcessHorizontalSpace)) {
            data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        }
        if (data != null && (data.grabExcessHorizontalSpace && (data.widthHint > least || row
                && data.widthHint == SWT.DEFAULT))) {
            data.widthHint = least;
            data.horizontalAlignment = SWT.FILL;
            c.setLayoutData(data);
        }
    }
}
