package org.copperbook.desk.form;

import java.util.List;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.verdict.IntervalBar;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * What stands around a field's control: its label, the line under it that marks a text not understood, the interval bar
 * of what is judged there, and below it the note that explains or asks.
 */
final class FieldRow {

    /** Lines that a field for longer text shows. */
    private static final int LINES = 3;
    private static final int MARK = 2;
    private static final int GAP = 8;
    private static final int LABEL_DOWN = 6;
    /** Field, interval bar, and what is said beside them. */
    private static final int COLUMNS = 3;
    /** What the gaps between them take, also when nothing stands beside the field. */
    private static final int BESIDE = (COLUMNS - 1) * GAP;
    /** What a field for words wants beside its label. */
    private static final int WORDS_CHARS = 40;

    private final int labelWidth;
    private final Composite box;
    private final Label label;
    private final Composite right;
    private final Composite frame;
    private final IntervalBar bar;
    private final Runnable relayout;
    private Composite note;
    private Note said = new Note.None();
    private String spokenNote = "";
    private String mind = "";
    private boolean widens;
    private int wide = SWT.DEFAULT;
    private boolean beside;

    FieldRow(Composite parent, String labelText, int labelWidth, Runnable relayout) {
        this.relayout = relayout;
        this.labelWidth = labelWidth;
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(box);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(box);
        label = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        label.setText(labelText);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).hint(labelWidth, SWT.DEFAULT)
                .indent(0, LABEL_DOWN).applyTo(label);
        box.addListener(SWT.Resize, e -> stack());
        right = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(GAP, 0).applyTo(right);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(right);
        frame = new Composite(right, SWT.NONE);
        GridLayoutFactory.fillDefaults().extendedMargins(0, 0, 0, MARK).applyTo(frame);
        bar = new IntervalBar(right);
        right.addListener(SWT.Resize, e -> {
            narrow();
            placeBar();
        });
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).minSize(0, 0).applyTo(bar);
    }

    /** Where the control goes. */
    Composite frame() {
        return frame;
    }

    /** Finishes the row round its control. */
    void holds(Control control, String pointer, int widthHint, boolean grab) {
        widens = grab;
        wide = widthHint;
        boolean oneLine = control instanceof Text || control instanceof Combo;
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, oneLine ? target(control) : SWT.DEFAULT)
                .applyTo(control);
        if (grab) {
            GridDataFactory.fillDefaults().grab(true, false).hint(widthHint, SWT.DEFAULT).applyTo(frame);
        } else {
            GridDataFactory.fillDefaults().hint(widthHint, SWT.DEFAULT).applyTo(frame);
        }
        named(control, pointer);
    }

    /** Finishes the row round words that nobody types; they wrap, and their first line stands beside the label. */
    void says(Control words, String pointer) {
        widens = true;
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(box).wrapping(), SWT.DEFAULT)
                .indent(0, LABEL_DOWN).applyTo(words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(frame);
        named(words, pointer);
    }

    /** The row needs another height. */
    void grown() {
        relayout.run();
    }

    private void named(Control control, String pointer) {
        control.setData(Desk.ID, pointer);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = label.getText();
            }

            @Override
            public void getDescription(AccessibleEvent e) {
                e.result = (spokenNote + " " + mind + " " + bar.spoken()).strip();
            }
        });
        control.getAccessible().addRelation(ACC.RELATION_LABELLED_BY, label.getAccessible());
        label.getAccessible().addRelation(ACC.RELATION_LABEL_FOR, control.getAccessible());
    }

    /** Height of a line, or of some lines: as the system says, and large enough to be hit where the size asks for it. */
    private static int target(Control control) {
        Look look = Look.of(control);
        if ((control.getStyle() & SWT.MULTI) != 0) {
            return LINES * look.rowHeight();
        }
        return look.size() == Look.Size.DESK ? SWT.DEFAULT
                : Math.max(control.computeSize(SWT.DEFAULT, SWT.DEFAULT).y, look.rowHeight());
    }

    void show(List<Verdict> here) {
        boolean had = bar.verdict() != null;
        bar.show(here);
        placeBar();
        if (had || bar.verdict() != null) {
            relayout.run();
        }
    }

    /** What to mind before the step that the row asks about stands below it, always and in full. */
    void minds(String words, String id) {
        mind = words;
        Look look = Look.of(box);
        Label line = look.as(Look.Role.TEXT, new Label(right, SWT.WRAP));
        line.setText(words);
        line.setData(Desk.ID, id);
        line.setForeground(look.palette().muted());
        GridDataFactory.fillDefaults().span(COLUMNS, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(line);
    }

    /** A field grows with what it shows, so that no unit is cut and read as another one. */
    void roomFor(Control line) {
        int needed = line.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        if (!widens && needed > wide) {
            wide = needed;
            stack();
            narrow();
        }
    }

    /** Where field and label do not fit beside each other, the label stands above the field, which then has the whole width. */
    private void stack() {
        GridLayout layout = (GridLayout) box.getLayout();
        int wanted = wide > 0 ? wide : Look.of(box).chars(WORDS_CHARS);
        int columns = box.getSize().x < labelWidth + GAP + wanted + BESIDE ? 1 : 2;
        if (box.getSize().x > 0 && layout.numColumns != columns) {
            layout.numColumns = columns;
            relayout.run();
        }
    }

    /** A field that is wider than its place gives way, so that the arrow of a list is never cut off. */
    private void narrow() {
        GridData data = (GridData) frame.getLayoutData();
        int room = right.getSize().x;
        int now = wide > 0 && room > BESIDE ? Math.min(wide, room - BESIDE) : wide;
        if (!widens && data.widthHint != now) {
            data.widthHint = now;
            relayout.run();
        }
    }

    /** The bar stands behind the field, or under it where both do not fit beside each other. */
    private void placeBar() {
        GridData data = (GridData) bar.getLayoutData();
        int hint = ((GridData) frame.getLayoutData()).widthHint;
        int field = hint > 0 ? hint : Look.of(box).wrapping();
        boolean fits = bar.verdict() == null || right.getSize().x <= 0
                || field + GAP + bar.computeSize(SWT.DEFAULT, SWT.DEFAULT).x <= right.getSize().x;
        int span = fits ? 1 : COLUMNS;
        if (data.horizontalSpan != span) {
            data.horizontalSpan = span;
            relayout.run();
        }
    }

    /** Says a note; a question gives its answers to the consumer. */
    void say(Note next, Consumer<Typed.Understood> answered) {
        if (next.equals(said)) {
            return;
        }
        said = next;
        if (note != null) {
            note.dispose();
            note = null;
        }
        Look look = Look.of(box);
        boolean wrong = next instanceof Note.Problem || next instanceof Note.Question;
        frame.setBackground(wrong ? look.palette().problem() : null);
        spokenNote = "";
        if (next instanceof Note.Problem p) {
            problem(p.text());
        } else if (next instanceof Note.Explained e) {
            text(e.text(), false);
        } else if (next instanceof Note.Question q) {
            text(q.text(), true);
            for (Typed.Understood answer : q.answers()) {
                Button b = look.as(Look.Role.TEXT, new Button(note, SWT.PUSH));
                b.setText(answer.echo());
                b.setToolTipText(DeskWords.text("field.means", answer.echo()));
                b.addListener(SWT.Selection, e -> answered.accept(answer));
            }
        }
        relayout.run();
    }

    /** Takes away what was said and keeps its place below the field, so that nothing moves under a typing hand. */
    void quiet() {
        if (note == null || beside) {
            say(new Note.None(), a -> { });
        } else {
            note.setVisible(false);
            frame.setBackground(null);
            spokenNote = "";
            said = null;
        }
    }

    /** What stands before the field. */
    String label() {
        return label.getText();
    }

    /** Puts the cursor on the first answer, if a question stands here. */
    boolean focusAnswer() {
        if (note != null) {
            for (Control c : note.getChildren()) {
                if (c instanceof Button b) {
                    return b.setFocus();
                }
            }
        }
        return false;
    }

    /** Says beside the field what is wrong, where the row has the room; else below it. */
    private void problem(String words) {
        text(words, true);
        int room = right.getSize().x - frame.getSize().x - (bar.verdict() == null ? 0 : bar.getSize().x) - 2 * GAP;
        boolean barUnder = ((GridData) bar.getLayoutData()).horizontalSpan > 1;
        Label line = (Label) note.getChildren()[0];
        int height = frame.getSize().y;
        beside = !widens && !barUnder && room > 0 && line.computeSize(room, SWT.DEFAULT).y <= height;
        if (beside) {
            GridDataFactory.fillDefaults().hint(room, height).applyTo(note);
            GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).span(4, 1).grab(true, true).applyTo(line);
        }
    }

    private void text(String words, boolean wrong) {
        Look look = Look.of(box);
        beside = false;
        spokenNote = words;
        note = new Composite(right, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 2).applyTo(note);
        GridDataFactory.fillDefaults().span(COLUMNS, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(note);
        Label line = look.as(Look.Role.TEXT, new Label(note, SWT.WRAP));
        line.setText(words);
        line.setForeground(wrong ? look.palette().problem() : look.palette().muted());
        GridDataFactory.fillDefaults().span(4, 1).grab(true, false).applyTo(line);
    }
}
