package org.copperbook.desk.tests.look;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * Text against what it stands on, measured from the pixels of the screen: the commonest colour is the background, the
 * colour farthest from it the text. At least 4.5 : 1 (WCAG 2.1, success criterion 1.4.3); what cannot be used at the
 * moment is exempt there.
 */
final class Contrast {

    static final double LEAST = 4.5;
    private static final int FRAME = 4;
    private static final int ROWS_LOOKED_AT = 20;

    private final ImageData screen;
    private final int scale;
    private final Set<Object> judged;

    /** @param screen the whole screen; its width against the display's gives the scale of its pixels */
    Contrast(ImageData screen, int displayWidth) {
        this(screen, displayWidth, new HashSet<>());
    }

    /** @param judged what was judged on an earlier screen of a form that is scrolled, and need not be again; grows */
    Contrast(ImageData screen, int displayWidth, Set<Object> judged) {
        this.judged = judged;
        this.screen = screen;
        this.scale = Math.max(1, screen.width / displayWidth);
    }

    List<Flaw> below(Control root) {
        List<Flaw> flaws = new ArrayList<>();
        for (Control c : Controls.below(root)) {
            if (!c.isEnabled()) {
                continue;
            }
            boolean shows = c instanceof Label || c instanceof Button || c instanceof Text || c instanceof Combo;
            // Text that is marked has the system's own colours.
            boolean marked = c instanceof Text t && t.getSelectionCount() > 0;
            if (shows && !marked && !Controls.words(c).isBlank()) {
                judge(c, Controls.place(c), inside(Controls.onScreen(c), c instanceof Label ? 0 : FRAME), flaws);
            } else if (c instanceof Table t) {
                cells(t, flaws);
            }
        }
        return flaws;
    }

    private void cells(Table t, List<Flaw> flaws) {
        Rectangle seen = Controls.onScreen(t);
        int first = t.getTopIndex();
        for (int row = first; row < Math.min(t.getItemCount(), first + ROWS_LOOKED_AT); row++) {
            TableItem item = t.getItem(row);
            for (int column = 0; column < Math.max(1, t.getColumnCount()); column++) {
                Rectangle whole = t.getDisplay().map(t, null, item.getTextBounds(column));
                Rectangle cell = whole.intersection(seen);
                // Of a cell that is partly out of sight the text may stand in the other part.
                if (!item.getText(column).isBlank() && cell.width == whole.width) {
                    judge(List.of(item, column), Controls.place(t) + " cell \"" + item.getText(column) + "\"", inside(cell, 1), flaws);
                }
            }
        }
    }

    private void judge(Object what, String where, Rectangle area, List<Flaw> flaws) {
        // A sliver left over by scrolling may hold no letter at all.
        if (area.width < 8 || area.height < 10 || !judged.add(what)) {
            return;
        }
        double found = of(area);
        if (found < LEAST) {
            flaws.add(new Flaw(where, String.format(java.util.Locale.ROOT, "contrast %.2f : 1 at %s", found, area)));
        }
    }

    /** The contrast inside an area of the display; 21 when the area shows one colour only and so no text at all. */
    private double of(Rectangle area) {
        Map<Integer, Integer> counts = new HashMap<>();
        int left = Math.max(0, area.x * scale);
        int wide = Math.min(screen.width, (area.x + area.width) * scale) - left;
        if (wide <= 0) {
            return 21;
        }
        int[] line = new int[wide];
        for (int y = Math.max(0, area.y * scale); y < (area.y + area.height) * scale && y < screen.height; y++) {
            screen.getPixels(left, y, wide, line, 0);
            count(line, counts);
        }
        if (counts.size() < 2) {
            return 21;
        }
        int back = counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
        RGB paper = screen.palette.getRGB(back);
        return counts.keySet().stream().mapToDouble(p -> ratio(paper, screen.palette.getRGB(p))).max().orElseThrow();
    }

    /** Runs of one colour are counted at once: most of a page is its ground. */
    private static void count(int[] line, Map<Integer, Integer> counts) {
        int from = 0;
        for (int x = 1; x <= line.length; x++) {
            if (x == line.length || line[x] != line[from]) {
                counts.merge(line[from], x - from, Integer::sum);
                from = x;
            }
        }
    }

    private static Rectangle inside(Rectangle r, int frame) {
        return new Rectangle(r.x + frame, r.y + frame, r.width - 2 * frame, r.height - 2 * frame);
    }

    /** Contrast ratio of two colours, 1 to 21 (WCAG 2.1, definition of contrast ratio). */
    static double ratio(RGB a, RGB b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(RGB c) {
        return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
    }

    private static double linear(int channel) {
        double s = channel / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}
