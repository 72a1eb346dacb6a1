package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.form.Section;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.faults.DefaultFaultTables;
import org.copperbook.jobs.faults.FaultTables;
import org.copperbook.jobs.faults.FaultTables.SuspectRow;
import org.copperbook.jobs.faults.FaultTables.TestRow;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** By what the fault finder ranks: the tables that ship, or the workshop's own copy of them, a question at a time. */
final class FaultTablesPane extends RegisterPane {

    private static final PartKey KEY = PartKey.of(PartKind.FAULT_TABLES);
    private static final int CHOICE_CHARS = 60;

    private final FaultTablesRows table;
    private final Button copy;
    private final Button back;
    private final Label inForce;
    private final Combo shown;
    private Form form;
    private List<String> built = List.of();

    FaultTablesPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "faults");
        table = new FaultTablesRows(words, title());
        copy = button("copyShipped", "faults.copyShipped", () -> put(shipped(), "faults.copied"));
        back = button("back", "faults.back", () -> put(FaultTables.none(), "faults.wentBack"));
        commonButtons();
        Look look = Look.of(parent);
        inForce = look.as(Look.Role.TEXT, new Label(body(), SWT.WRAP));
        inForce.setData(Desk.ID, id("inForce"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(inForce);
        Composite choice = new Composite(body(), SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(choice);
        look.as(Look.Role.TEXT, new Label(choice, SWT.NONE)).setText(words.text("faults.show"));
        shown = look.as(Look.Role.TEXT, new Combo(choice, SWT.DROP_DOWN | SWT.READ_ONLY));
        shown.setData(Desk.ID, id("shown"));
        SpokenName.give(shown, words.text("faults.show"));
        GridDataFactory.fillDefaults().hint(look.chars(CHOICE_CHARS), SWT.DEFAULT).applyTo(shown);
        shown.addListener(SWT.Selection, e -> changed());
        changed();
        editing.open(KEY, FaultTables.none(), this::changed);
    }

    private FaultTables shipped() {
        return DefaultFaultTables.load(session().json());
    }

    /** The workshop's own as they stand on the screen, which may be none. */
    private FaultTables own() {
        return editing().document().part(KEY, FaultTables.class).orElse(FaultTables.none());
    }

    private FaultTables inForce() {
        FaultTables own = own();
        return own.isThere() ? own : shipped();
    }

    private void put(FaultTables tables, String told) {
        editing().document().put(KEY, tables);
        say(words().text(told));
    }

    @Override
    Optional<PartKey> key() {
        return Optional.of(KEY);
    }

    @Override
    void changed() {
        FaultTables own = own();
        copy.setEnabled(!own.isThere());
        back.setEnabled(own.isThere());
        inForce.setText(words().text(own.isThere() ? "faults.own" : "faults.shipped"));
        offer(own);
        List<String> wanted = builtFor(own);
        if (!wanted.equals(built)) {
            built = wanted;
            rebuild(own);
        }
        if (form != null) {
            form.refresh();
        }
        body().layout(true, true);
    }

    /** Keeps what is shown when only its words changed. */
    private void offer(FaultTables own) {
        String[] all = FaultTablesRows.choices(own, words());
        shown.getParent().setVisible(own.isThere());
        if (!List.of(all).equals(List.of(shown.getItems()))) {
            int at = Math.max(0, Math.min(shown.getSelectionIndex(), all.length - 1));
            shown.setItems(all);
            shown.select(at);
        }
    }

    /** What the form is built for: which question, and which parts stand in its headings. */
    private List<String> builtFor(FaultTables own) {
        if (!own.isThere()) {
            return List.of();
        }
        List<String> all = new ArrayList<>(List.of(String.valueOf(shown.getSelectionIndex())));
        if (shown.getSelectionIndex() > 0) {
            own.suspects().forEach(s -> all.add(s.id() + "=" + s.inWords()));
        }
        return all;
    }

    private void rebuild(FaultTables own) {
        if (form != null) {
            form.control().dispose();
            form = null;
        }
        if (!own.isThere()) {
            return;
        }
        form = new Form(body(), editing().site(KEY), words());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
        int test = shown.getSelectionIndex() - 1;
        if (test < 0) {
            shares(form);
        } else {
            question(form, own, test);
        }
        Look.of(body()).dress(body());
    }

    private void shares(Form here) {
        here.grid("faults.suspects", "/suspects", columns -> columns
                .text("/inWords", "faults.part")
                .number("/share", "faults.share", FieldUnit.FRACTION_AS_PERCENT));
        here.section("faults.check").computed("faults.sum", "faults.sum", () -> table.sumOfShares(own()));
        here.section("faults.whence").longText("/origin", "faults.origin")
                .number("/settledAt", "faults.settledAt", FieldUnit.FRACTION_AS_PERCENT);
    }

    private void question(Form here, FaultTables own, int test) {
        String pointer = "/tests/" + test;
        here.grid("faults.outcomes", pointer + "/outcomes", columns -> {
            columns.text("/inWords", "faults.outcome");
            for (SuspectRow s : own.suspects()) {
                columns.titledNumber("/likelihoods/" + s.id(), FaultTablesRows.onTwoLines(s.inWords()),
                        FieldUnit.FRACTION_AS_PERCENT);
            }
        });
        here.section("faults.check").computed("faults.sum", "faults.sum", () -> table.sumsOf(own(), test));
        Section asked = here.section("faults.asked").text(pointer + "/question", "faults.words")
                .number(pointer + "/minutes", "faults.minutes", FieldUnit.MINUTE);
        TestRow row = own.tests().get(test);
        if (!row.cautions().isEmpty()) {
            asked.computed("faults.cautions", "faults.cautions", () -> String.join("\n", row.cautions()));
        }
    }

    @Override
    Optional<String> problem() {
        FaultTables own = own();
        return own.isThere() ? own.problems().stream().findFirst().map(p -> words().text("faults.wrong", p)) : Optional.empty();
    }

    @Override
    void setFocus() {
        if (form != null) {
            form.focusFirst();
        } else {
            copy.setFocus();
        }
    }

    @Override
    void resized() {
        built = List.of();
        changed();
    }

    @Override
    RegisterShape shape() {
        return table.shape(inForce());
    }

    @Override
    RegisterShape shapeOut() {
        return table.shapeOut(inForce());
    }

    @Override
    List<Map<String, Object>> rows() {
        return table.rows(inForce());
    }

    @Override
    CopiedBlock block() {
        return table.block(inForce());
    }

    /** A table changes likelihoods; questions, answers and parts have to be there. The first one makes the copy. */
    @Override
    void importTable() {
        FaultTables now = inForce();
        new ImportWindow<RegisterRow>(control().getShell(), words(), title(), shape(), table.maker(now), rows -> {
            editing().document().put(KEY, FaultTablesRows.with(now, rows));
            say(words().text("import.putIn", rows.size()));
        }).open();
    }
}
