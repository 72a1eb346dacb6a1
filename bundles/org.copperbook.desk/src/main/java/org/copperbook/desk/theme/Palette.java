package org.copperbook.desk.theme;

import org.copperbook.calc.verdict.Outcome;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/**
 * The colours of the desk: one accent and the three that repeat what a verdict's shape and word say. They follow the
 * system's light or dark theme; each has at least 4.5 : 1 contrast to the background it is used on (WCAG 2.1, 1.4.3).
 */
public final class Palette {

    /** Least contrast of text (WCAG 2.1, success criterion 1.4.3). */
    static final double READABLE = 4.5;

    private static final RGB LIGHT_PAPER = new RGB(255, 255, 255);
    private static final RGB DARK_PAPER = new RGB(45, 45, 45);

    private final boolean dark;
    private final Display display;

    private Palette(Display display, boolean dark) {
        this.display = display;
        this.dark = dark;
    }

    /** The palette that fits the theme a display shows now. */
    public static Palette of(Display display) {
        RGB back = display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
        return new Palette(display, luminance(back) < 0.3);
    }

    /** Whether the theme is dark. */
    public boolean isDark() {
        return dark;
    }

    /** Text as the system writes it in lists and fields. */
    public Color text() {
        return display.getSystemColor(SWT.COLOR_LIST_FOREGROUND);
    }

    /** Background of lists and fields. */
    public Color paper() {
        return display.getSystemColor(SWT.COLOR_LIST_BACKGROUND);
    }

    /** Text of the chosen row of a list. */
    public Color chosenText() {
        return display.getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT);
    }

    /** Background of the chosen row: the system's, darker where its own text could not be read on it. */
    public Color chosen() {
        return new Color(readable(display.getSystemColor(SWT.COLOR_LIST_SELECTION).getRGB(), chosenText().getRGB()));
    }

    /** Less important text. */
    public Color muted() {
        return new Color(muted(dark));
    }

    /** Lines, ticks, frames. */
    public Color line() {
        return new Color(dark ? new RGB(140, 140, 140) : new RGB(120, 120, 120));
    }

    /** The one accent: the field and the cell that typing goes to. */
    public Color accent() {
        return new Color(accent(dark));
    }

    /** Something is wrong with what was typed. */
    public Color problem() {
        return of(Outcome.FAILS);
    }

    /** The colour that repeats a verdict's word. */
    public Color of(Outcome outcome) {
        return new Color(outcome(outcome, dark));
    }

    /** Band that says that this is not a real workshop. */
    public Color demoBand() {
        return new Color(new RGB(255, 212, 71));
    }

    /** Text on that band. */
    public Color demoText() {
        return new Color(new RGB(40, 30, 0));
    }

    static RGB accent(boolean dark) {
        return dark ? new RGB(255, 165, 110) : new RGB(156, 74, 20);
    }

    static RGB muted(boolean dark) {
        return dark ? new RGB(190, 190, 190) : new RGB(85, 85, 85);
    }

    static RGB outcome(Outcome outcome, boolean dark) {
        return switch (outcome) {
            case MEETS -> dark ? new RGB(120, 210, 140) : new RGB(20, 110, 50);
            case DOUBTFUL -> dark ? new RGB(240, 200, 90) : new RGB(133, 88, 0);
            case FAILS -> dark ? new RGB(255, 150, 140) : new RGB(176, 20, 20);
            case NOT_MEASURED, NO_LIMIT_SET -> muted(dark);
        };
    }

    static RGB paper(boolean dark) {
        return dark ? DARK_PAPER : LIGHT_PAPER;
    }

    /** A background of the same hue on which a text has its contrast: darker under light text, lighter under dark. */
    static RGB readable(RGB back, RGB text) {
        int towards = luminance(text) > luminance(back) ? 0 : 255;
        RGB now = back;
        for (int percent = 2; contrast(now, text) < READABLE && percent <= 100; percent += 2) {
            now = new RGB(mixed(back.red, towards, percent), mixed(back.green, towards, percent),
                    mixed(back.blue, towards, percent));
        }
        return now;
    }

    private static int mixed(int from, int to, int percent) {
        return from + (to - from) * percent / 100;
    }

    /** Contrast ratio of two colours, 1 to 21 (WCAG 2.1, definition of contrast ratio). */
    static double contrast(RGB a, RGB b) {
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
