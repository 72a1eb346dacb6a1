package org.copperbook.desk.grid;

import java.util.function.Consumer;
import org.copperbook.desk.entry.Typed;
import org.copperbook.desk.form.Note;
import org.copperbook.desk.theme.Look;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The line under a grid: what is wrong in the cursor's cell in full, or a question with its answers. */
final class GridSaying {

    private static final int CHARS = 60;
    private static final int AIR = 8;

    private final Composite line;
    private final Consumer<Typed.Understood> answered;
    private final Runnable grown;
    private Note said = new Note.None();

    /** @param grown told when the line has become higher; it never becomes lower again, so that nothing jumps back */
    GridSaying(Composite parent, Consumer<Typed.Understood> answered, Runnable grown) {
        this.answered = answered;
        this.grown = grown;
        line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(6, 0).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, Look.of(parent).rowHeight()).applyTo(line);
    }

    Composite control() {
        return line;
    }

    void say(Note note) {
        if (note.equals(said) || line.isDisposed()) {
            return;
        }
        said = note;
        for (Control c : line.getChildren()) {
            c.dispose();
        }
        if (note instanceof Note.Problem p) {
            text(p.text(), true);
        } else if (note instanceof Note.Explained e) {
            text(e.text(), false);
        } else if (note instanceof Note.Question q) {
            text(q.text(), true);
            for (Typed.Understood a : q.answers()) {
                Button b = Look.of(line).as(Look.Role.TEXT, new Button(line, SWT.PUSH));
                b.setText(a.echo());
                b.addListener(SWT.Selection, e -> answered.accept(a));
            }
        }
        line.layout(true, true);
        GridData data = (GridData) line.getLayoutData();
        int wanted = line.computeSize(line.getSize().x, SWT.DEFAULT, true).y;
        if (line.getSize().x > 0 && wanted > data.heightHint) {
            data.heightHint = wanted;
            grown.run();
        }
    }

    private void text(String words, boolean wrong) {
        Look look = Look.of(line);
        Label l = look.as(Look.Role.TEXT, new Label(line, SWT.WRAP));
        l.setText(words);
        l.setForeground(wrong ? look.palette().problem() : look.palette().muted());
        int natural = l.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        int room = line.getSize().x > 0 ? line.getSize().x - AIR : look.chars(CHARS);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).hint(
                Math.min(natural, said instanceof Note.Question ? look.chars(CHARS) : room), SWT.DEFAULT).applyTo(l);
    }
}
