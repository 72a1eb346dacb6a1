package org.copperbook.desk.editor;

import java.util.Arrays;
import java.util.function.IntSupplier;
import org.copperbook.desk.theme.Look;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/**
 * Divides a job's place between outline, part and what the readings say. The outline is as wide as its rows; what the
 * readings say stands beside the part, or under it where both would be too narrow to be read. Sashes that somebody has
 * moved stay where they are.
 */
final class JobSplit {

    private static final int SASH = 6;
    private static final int ALL = 1000;
    private static final int ROOMY_CHARS = 88;
    private static final double MOST_OF_WIDTH = 0.42;
    private static final double LEAST_OF_WIDTH = 0.12;
    private static final int[] BESIDE = {58, 42};
    private static final int[] BELOW = {62, 38};

    private final SashForm outer;
    private final SashForm inner;
    private final IntSupplier wanted;
    private int[] outerSet;
    private int[] innerSet;

    /** @param outlineWidth width that the outline wants, pixels; asked for whenever the place changes */
    JobSplit(Composite parent, IntSupplier outlineWidth) {
        wanted = outlineWidth;
        outer = new SashForm(parent, SWT.HORIZONTAL);
        outer.setSashWidth(SASH);
        inner = new SashForm(outer, SWT.HORIZONTAL);
        inner.setSashWidth(SASH);
        outer.addListener(SWT.Resize, e -> divide());
        inner.addListener(SWT.Resize, e -> turn());
    }

    /** The whole place. */
    SashForm whole() {
        return outer;
    }

    /** Where the part and what the readings say go. */
    SashForm content() {
        return inner;
    }

    /** Divides anew; call it when the outline wants another width. */
    void divide() {
        int width = outer.getClientArea().width;
        if (width <= 0 || outer.getChildren().length < 2 || moved(outer, outerSet)) {
            return;
        }
        double part = Math.min(MOST_OF_WIDTH, Math.max(LEAST_OF_WIDTH, (double) wanted.getAsInt() / width));
        int first = (int) Math.ceil(part * ALL);
        outer.setWeights(first, ALL - first);
        outerSet = outer.getWeights();
        turn();
    }

    private void turn() {
        Rectangle place = inner.getClientArea();
        if (place.width <= 0 || inner.getChildren().length < 2) {
            return;
        }
        boolean beside = place.width >= Look.of(inner).chars(ROOMY_CHARS);
        int way = beside ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (inner.getOrientation() != way || innerSet == null) {
            inner.setOrientation(way);
            inner.setWeights(beside ? BESIDE : BELOW);
            innerSet = inner.getWeights();
        }
    }

    private static boolean moved(SashForm form, int[] set) {
        return set != null && !Arrays.equals(form.getWeights(), set);
    }
}
