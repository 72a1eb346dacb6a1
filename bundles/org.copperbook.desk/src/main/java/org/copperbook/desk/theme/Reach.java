package org.copperbook.desk.theme;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/**
 * Makes what is pressed or typed into large enough to be hit with a glove, where the chosen size asks for it. It looks
 * at the layout and not at who made the control, so that plug-ins need not think of it.
 */
public final class Reach {

    private Reach() {
    }

    /** Gives every button, list and line below a control the least size of the look. Call it before laying out. */
    public static void ensure(Control root) {
        int least = Look.of(root).target();
        if (least > 0) {
            below(root, least);
        }
    }

    private static void below(Control at, int least) {
        boolean line = at instanceof Text t && (t.getStyle() & (SWT.MULTI | SWT.READ_ONLY)) == 0;
        if (at instanceof Button || at instanceof Combo || line) {
            give(at, least);
        } else if (at instanceof Composite c && !(at instanceof Table)) {
            for (Control child : c.getChildren()) {
                below(child, least);
            }
        }
    }

    private static void give(Control c, int least) {
        Point natural = c.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        if (c.getParent().getLayout() instanceof GridLayout) {
            GridData data = data(c);
            data.heightHint = Math.max(data.heightHint, Math.max(natural.y, least));
            if (natural.x < least) {
                data.widthHint = Math.max(data.widthHint, least);
            }
            if (c instanceof Text && natural.y < least) {
                data.verticalAlignment = SWT.FILL;
                raiseRow(c, least);
            }
        } else if (c.getParent().getLayout() instanceof RowLayout) {
            c.setLayoutData(new RowData(Math.max(natural.x, least), Math.max(natural.y, least)));
        }
    }

    /** The toolkit gives a line of text its own height whatever is asked, but lets it fill a row that is higher. */
    private static void raiseRow(Control line, int least) {
        Composite parent = line.getParent();
        Control[] row = parent.getChildren();
        if (row.length == 1) {
            data(line).grabExcessVerticalSpace = true;
            GridLayout layout = (GridLayout) parent.getLayout();
            int margins = 2 * layout.marginHeight + layout.marginTop + layout.marginBottom;
            data(parent).heightHint = Math.max(data(parent).heightHint, least + margins);
            return;
        }
        for (int i = 0; i < row.length; i++) {
            int beside = row[i] == line && i > 0 ? i - 1 : row[i] == line ? i + 1 : -1;
            if (beside >= 0 && row[beside] instanceof Label label) {
                int words = label.computeSize(data(label).widthHint, SWT.DEFAULT).y;
                data(label).heightHint = Math.max(words, least);
            }
        }
    }

    private static GridData data(Control c) {
        GridData data = c.getLayoutData() instanceof GridData d ? d : new GridData();
        c.setLayoutData(data);
        return data;
    }
}
