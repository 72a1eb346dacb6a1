package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.copperbook.desk.Desk;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RegisterWorkbook;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** One register: its buttons above, what it holds below, and what it says at the bottom. */
abstract class RegisterPane {

    private final ShopEditing editing;
    private final DeskSession session;
    private final Words words;
    private final String name;
    private final Composite box;
    private final Composite bar;
    private final Composite body;
    private final Label said;

    /** @param name under which its texts stand, as "instruments" */
    RegisterPane(Composite parent, ShopEditing editing, DeskSession session, Words words, String name) {
        this.editing = editing;
        this.session = session;
        this.words = words;
        this.name = name;
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
    }

    /** The buttons that every register has; to be called after those of its own. */
    final void commonButtons() {
        button("copy", "registers.copy", () -> {
            CopiedBlock block = block();
            block.toClipboard(box.getDisplay());
            say(words.text("registers.copied", block.rows().size() - 1));
        });
        button("import", "registers.import", this::importTable);
        button("workbook", "registers.workbook", this::writeWorkbook);
        button("history", "registers.history", this::showHistory);
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

    final void say(String text) {
        said.setText(text);
        box.layout(true, true);
    }

    /** Whether it shows a part. */
    abstract boolean owns(PartKey key);

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

    /** Its columns in tables. */
    abstract RegisterShape shape();

    /** What it shows, headings first. */
    abstract CopiedBlock block();

    /** Its rows for a table. */
    abstract List<Map<String, Object>> rows();

    abstract void importTable();

    /** The row of a list that is meant, or a new one at its end. */
    static ObjectNode row(ArrayNode list, Predicate<JsonNode> meant) {
        for (JsonNode row : list) {
            if (meant.test(row)) {
                return (ObjectNode) row;
            }
        }
        return list.addObject();
    }

    private void showHistory() {
        Optional<PartKey> key = key();
        if (key.isEmpty()) {
            say(words.text("registers.chooseFirst"));
            return;
        }
        new HistoryWindow(box.getShell(), session, words, title(), key.get(), part -> {
            editing.document().put(key.get(), part);
            say(words.text("history.back"));
        }).open();
    }

    private void writeWorkbook() {
        List<Map<String, Object>> rows = rows();
        RegisterShape shape = shape();
        Path folder = WorkbookFolder.current();
        Path target = folder.resolve(words.text("registers.file", title().toLowerCase(java.util.Locale.getDefault())));
        new DeskJob(words.text("registers.writing"), monitor -> {
            String outcome;
            try {
                Files.createDirectories(folder);
                new RegisterWorkbook(shape).write(rows, target);
                outcome = words.text("month.written", target);
            } catch (WorkbookNotWrittenException e) {
                outcome = e.getMessage();
            } catch (IOException e) {
                outcome = words.text("month.noFolder", folder, String.valueOf(e.getMessage()));
            }
            String told = outcome;
            box.getDisplay().asyncExec(() -> {
                if (!box.isDisposed()) {
                    say(told);
                }
            });
        }).schedule();
    }
}
