package org.copperbook.desk.verdict;

import java.util.List;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Palette;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** The interval bar beside a judged reading, with its word; empty and without size when nothing is judged there. */
public final class IntervalBar extends Canvas {

    /** Width of the bar itself where there is room for it, in average characters. */
    static final int BAR_CHARS = 14;
    private static final int GAP = 8;

    private Verdict verdict;

    public IntervalBar(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        addListener(SWT.Paint, e -> paint(e.gc));
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = spoken();
            }
        });
    }

    /** Shows the heaviest of the verdicts that stand here; none clears the bar. */
    public void show(List<Verdict> here) {
        List<Verdict> heavy = VerdictWords.byWeight(here);
        verdict = heavy.isEmpty() ? null : heavy.get(0);
        setToolTipText(verdict == null ? null : spoken());
        redraw();
    }

    /** The verdict shown, or null. */
    public Verdict verdict() {
        return verdict;
    }

    /** What the bar says in words. */
    public String spoken() {
        if (verdict == null) {
            return "";
        }
        return DeskWords.text("verdict.spoken", verdict.title(), VerdictWords.value(verdict),
                VerdictWords.of(verdict.outcome()), verdict.limitText() == null ? "" : verdict.limitText());
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        Look look = Look.of(this);
        if (verdict == null) {
            return new Point(0, look.rowHeight());
        }
        GC gc = new GC(this);
        try {
            gc.setFont(look.font(Look.Role.TEXT));
            int word = gc.textExtent(VerdictWords.of(verdict.outcome())).x;
            boolean bar = verdict.bounds() != null && !verdict.bounds().isEmpty();
            return new Point((bar ? look.chars(BAR_CHARS) + GAP : 0) + word + GAP, look.rowHeight());
        } finally {
            gc.dispose();
        }
    }

    private void paint(GC gc) {
        if (verdict == null) {
            return;
        }
        Look look = Look.of(this);
        Palette palette = look.palette();
        Rectangle all = getClientArea();
        paint(gc, all, verdict, look, palette);
    }

    /** Draws bar and word into an area; grids use it in their cells. */
    public static void paint(GC gc, Rectangle all, Verdict verdict, Look look, Palette palette) {
        gc.setFont(look.font(Look.Role.TEXT));
        String word = VerdictWords.of(verdict.outcome());
        Point extent = gc.textExtent(word);
        IntervalScale scale = IntervalScale.of(verdict.value(), verdict.expandedU(), verdict.bounds());
        int bar = scale.isEmpty() ? 0 : Math.min(look.chars(BAR_CHARS), Math.max(0, all.width - extent.x - 2 * GAP));
        if (bar > 0) {
            IntervalPainter.paint(gc, new Rectangle(all.x + GAP / 2, all.y, bar, all.height), scale,
                    verdict.outcome(), palette);
        }
        gc.setForeground(palette.of(verdict.outcome()));
        gc.drawText(word, all.x + bar + (bar > 0 ? GAP : 0), all.y + (all.height - extent.y) / 2, true);
    }
}
