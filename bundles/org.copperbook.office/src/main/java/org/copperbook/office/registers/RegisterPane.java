package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RegisterWorkbook;
import org.eclipse.swt.widgets.Composite;

/** One register: a list that goes out to tables and comes in from them. */
abstract class RegisterPane extends ShopPane {

    /** @param name under which its texts stand, as "instruments" */
    RegisterPane(Composite parent, ShopEditing editing, DeskSession session, Words words, String name) {
        super(parent, editing, session, words, name);
    }

    /** The buttons that every register has; to be called after those of its own. */
    final void commonButtons() {
        button("copy", "registers.copy", () -> {
            CopiedBlock block = block();
            block.toClipboard(control().getDisplay());
            say(words().text("registers.copied", block.rows().size() - 1));
        });
        button("import", "registers.import", this::importTable);
        button("workbook", "registers.workbook", this::writeWorkbook);
        historyButton();
    }

    /** Its columns in tables that are taken in. */
    abstract RegisterShape shape();

    /** Its columns in workbooks: those that can be taken in again, and what follows from them. */
    RegisterShape shapeOut() {
        return shape();
    }

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

    private void writeWorkbook() {
        List<Map<String, Object>> rows = rows();
        RegisterWorkbook workbook = new RegisterWorkbook(shapeOut(), session().shop().workshop(), LocalDate.now());
        Path folder = WorkbookFolder.current();
        Path target = folder.resolve(words().text("registers.file", title().toLowerCase(java.util.Locale.getDefault())));
        new DeskJob(words().text("registers.writing"), monitor -> {
            String outcome;
            try {
                Files.createDirectories(folder);
                workbook.write(rows, target);
                outcome = words().text("month.written", target);
            } catch (WorkbookNotWrittenException e) {
                outcome = e.getMessage();
            } catch (IOException e) {
                outcome = words().text("month.noFolder", folder, String.valueOf(e.getMessage()));
            }
            String told = outcome;
            later(() -> say(told));
        }).schedule();
    }
}
