package org.copperbook.office.registers;

import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** Parts of the shop: buttons above, what it holds below, and what it says at the bottom. */
abstract class ShopPane {

    private final ShopEditing editing;
    private final DeskSession session;
    private final Words words;
    private final String name;
    private final Display display;
    private final Composite box;
    private final Composite bar;
    private final Composite body;
    private final Label said;

    /** @param name under which its texts stand, as "instruments" */
    ShopPane(Composite parent, ShopEditing editing, DeskSession session, Words words, String name) {
        this.editing = editing;
        this.session = session;
        this.words = words;
        this.name = name;
        display = parent.getDisplay();
        Look look = Look.of(parent);
        box = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(box);
        bar = new Composite(box, SWT.NONE);
        RowLayoutFactory.fillDefaults().wrap(true).spacing(8).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        body = new Composite(box, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        said.setData(Desk.ID, id("said"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        Runnable told = () -> later(this::somebodyIsKnown);
        session.onShop(told);
        box.addDisposeListener(e -> session.removeOnShop(told));
    }

    final Button button(String id, String textKey, Runnable does) {
        return PushButton.in(bar, id(id), words.text(textKey), does);
    }

    /** Name of a control for tests and screen readers. */
    final String id(String control) {
        return name + "." + control;
    }

    final String title() {
        return words.text(name + ".title");
    }

    final Composite control() {
        return box;
    }

    final Composite body() {
        return body;
    }

    final Words words() {
        return words;
    }

    final ShopEditing editing() {
        return editing;
    }

    final DeskSession session() {
        return session;
    }

    /** What it says of a change holds until the next one, until it is undone or saved. */
    final void say(String text) {
        if (!text.equals(said.getText())) {
            said.setText(text);
            box.layout(true, true);
        }
    }

    /** Who works here, for what is to carry the name; says so when nobody has said it yet. */
    final Optional<String> whoOrSay() {
        Optional<String> who = session.who();
        if (who.isEmpty()) {
            say(words.text("load.whoFirst"));
        }
        return who;
    }

    /** What asked who works here has been answered. */
    private void somebodyIsKnown() {
        if (session.who().isPresent() && said.getText().equals(words.text("load.whoFirst"))) {
            say("");
        }
    }

    /** Does something in the window's thread unless the pane is gone by then; from any thread. */
    final void later(Runnable does) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!box.isDisposed()) {
                    does.run();
                }
            });
        }
    }

    /** Whether it shows a part: its only one, unless it shows several. */
    boolean owns(PartKey part) {
        return key().filter(part::equals).isPresent();
    }

    /** The part that undo goes by. */
    abstract Optional<PartKey> key();

    /** Chooses a part that it shows, where it shows several. */
    void show(PartKey part) {
    }

    /** Something of it was changed, here or elsewhere. */
    abstract void changed();

    /** What keeps it from being saved, in words. */
    Optional<String> problem() {
        return Optional.empty();
    }

    abstract void setFocus();

    /** Sizes of fonts and rows have changed. */
    void resized() {
    }

    /** The button for what was saved of the part before. */
    final void historyButton() {
        button("history", "registers.history", this::showHistory);
    }

    private void showHistory() {
        Optional<PartKey> key = key();
        if (key.isEmpty()) {
            say(words.text("registers.chooseFirst"));
            return;
        }
        new HistoryWindow(box.getShell(), session, words, title(), key.get(), !goesBack() ? null : part -> {
            editing.document().put(key.get(), part);
            say(words.text("history.back"));
        }).open();
    }

    /** Whether an older revision can be put on the screen again. */
    boolean goesBack() {
        return true;
    }
}
