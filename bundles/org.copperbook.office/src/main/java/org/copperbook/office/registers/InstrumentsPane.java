package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.CopiedBlock;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.sheets.registers.RegisterShape;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;

/** The shop's instruments: accuracy range by range, certificates, and until when the calibration holds. */
final class InstrumentsPane extends RegisterPane {

    private static final PartKey KEY = PartKey.of(PartKind.INSTRUMENTS);
    private static final String LIST = "/instruments";
    private static final String[] HEADS =
            {"instruments.id", "instruments.name", "instruments.kind", "instruments.calibration"};

    private final ChosenList list;
    private final InstrumentRows table;
    private Form form;
    private int at = -1;
    private int certificate = -1;

    InstrumentsPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "instruments");
        table = new InstrumentRows(words, title());
        button("add", "instruments.add", this::add);
        button("use", "instruments.use", this::outOfUseOrBack);
        commonButtons();
        list = new ChosenList(body(), words, "instruments", HEADS, this::chosen);
        editing.open(KEY, new Instruments(Instruments.SCHEMA, List.of(), Map.of()), () -> {
            changed();
            if (at < 0 && !instruments().isEmpty()) {
                list.choose("0");
            }
        });
    }

    private List<Instrument> instruments() {
        return editing().document().part(KEY, Instruments.class).map(Instruments::instruments).orElse(List.of());
    }

    private void add() {
        int next = instruments().size();
        editing().document().change(KEY, LIST + "/" + next, tree -> {
            tree.withArray("instruments").addObject().put("id", "");
            return tree;
        });
        list.choose(Integer.toString(next));
        form.focusFirst();
    }

    private void outOfUseOrBack() {
        if (at < 0 || at >= instruments().size()) {
            say(words().text("registers.chooseFirst"));
            return;
        }
        boolean out = instruments().get(at).inUse();
        editing().document().change(KEY, LIST + "/" + at, tree -> {
            ObjectNode one = (ObjectNode) tree.withArray("instruments").get(at);
            if (out) {
                one.put("outOfUse", true);
            } else {
                one.remove("outOfUse");
            }
            return tree;
        });
        say(words().text(out ? "instruments.nowOut" : "instruments.nowBack", instruments().get(at).id()));
    }

    private void chosen(String key) {
        at = key.isEmpty() ? -1 : Integer.parseInt(key);
        rebuild();
    }

    private void rebuild() {
        if (form != null) {
            form.control().dispose();
            form = null;
        }
        if (at >= 0 && at < instruments().size()) {
            certificate = -1;
            form = new Form(body(), editing().site(KEY), words());
            GridDataFactory.fillDefaults().grab(true, true).applyTo(form.control());
            build(form, LIST + "/" + at);
            form.refresh();
        }
        body().layout(true, true);
    }

    private void build(Form here, String one) {
        here.section("instruments.what")
                .text(one + "/id", "instruments.id")
                .text(one + "/name", "instruments.name")
                .choice(one + "/kind", "instruments.kind", Instrument.Kind.class)
                .flag(one + "/fourWire", "instruments.fourWire")
                .number(one + "/leadOhm", "instruments.leadOhm", FieldUnit.OHM)
                .number(one + "/leadOhmU", "instruments.leadOhmU", FieldUnit.OHM)
                .text(one + "/note", "rates.note");
        here.grid("instruments.ranges", one + "/ranges", columns -> columns
                .proposals("/quantity", "instruments.quantity", InstrumentRows::quantities)
                .decimal("/upTo", "instruments.upTo")
                .decimal("/resolution", "instruments.resolution")
                .decimal("/percentOfReading", "instruments.percent")
                .decimal("/digits", "instruments.digits"))
                .newRow(() -> session().json().mapper().createObjectNode());
        RecordGrid certificates = here.grid("instruments.certificates", one + "/certificates", columns -> columns
                .mark("/number", "instruments.certificate")
                .text("/laboratory", "instruments.laboratory")
                .date("/date", "instruments.calibrated")
                .date("/due", "instruments.due")
                .text("/note", "rates.note"))
                .newRow(this::newCertificate);
        certificates.onRow(row -> {
            certificate = row;
            form.refresh();
        });
        here.photos("instruments.scans", () -> certificate < 0 || at < 0 || at >= instruments().size()
                || certificate >= instruments().get(at).certificates().size() ? Optional.empty()
                        : Optional.of(one + "/certificates/" + certificate + "/scans"));
        here.section("instruments.calibration").computed("instruments.calibration", "instruments.calibration",
                () -> at < 0 || at >= instruments().size() ? ""
                        : CalibrationWords.of(instruments().get(at), LocalDate.now(), words()).text());
    }

    /** The first certificate is the one that was only named so far. */
    private ObjectNode newCertificate() {
        ObjectNode row = session().json().mapper().createObjectNode();
        Instrument i = instruments().get(at);
        if (i.certificates().isEmpty() && i.calibrated() != null) {
            row.put("number", i.certificate()).put("date", i.calibrated().toString());
            if (i.calibrationDue() != null) {
                row.put("due", i.calibrationDue().toString());
            }
        }
        return row;
    }

    @Override
    Optional<PartKey> key() {
        return Optional.of(KEY);
    }

    @Override
    void changed() {
        List<ChosenList.Entry> entries = new ArrayList<>();
        LocalDate today = LocalDate.now();
        for (int i = 0; i < instruments().size(); i++) {
            Instrument one = instruments().get(i);
            CalibrationWords calibration = CalibrationWords.of(one, today, words());
            entries.add(new ChosenList.Entry(Integer.toString(i), List.of(said(one.id()), said(one.name()),
                    one.kind() == null ? "" : words().of(one.kind()), calibration.text()),
                    said(one.certificate()) + " " + said(one.note()), calibration.warning()));
        }
        list.show(entries);
        if (at >= entries.size()) {
            at = -1;
            rebuild();
        } else if (form != null) {
            form.refresh();
        }
    }

    private static String said(String text) {
        return text == null ? "" : text;
    }

    @Override
    Optional<String> problem() {
        Instruments all = new Instruments(Instruments.SCHEMA, instruments(), Map.of());
        if (all.anyWithoutId()) {
            return Optional.of(words().text("instruments.withoutId"));
        }
        return all.idsTwice().isEmpty() ? Optional.empty()
                : Optional.of(words().text("instruments.twice", String.join(", ", all.idsTwice())));
    }

    @Override
    void setFocus() {
        list.focus();
    }

    @Override
    void resized() {
        list.fit();
        rebuild();
    }

    @Override
    RegisterShape shape() {
        return table.shape(instruments());
    }

    @Override
    RegisterShape shapeOut() {
        return table.shapeOut();
    }

    @Override
    CopiedBlock block() {
        return list.block();
    }

    @Override
    List<Map<String, Object>> rows() {
        return table.rows(instruments(), LocalDate.now());
    }

    @Override
    void importTable() {
        new ImportWindow<>(control().getShell(), words(), title(), shape(), table.checked(), rows -> {
            Optional<String> problem = editing().document().change(KEY, LIST, tree -> table.with(tree, rows));
            say(problem.orElseGet(() -> words().text("import.putIn", rows.size())));
        }).open();
    }
}
