package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterImport;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RegisterWorkbook;
import org.copperbook.sheets.registers.RowRefusedException;

/** Instruments as rows of a table: one row for each range, so an instrument with three ranges has three. */
final class InstrumentRows {

    private static final List<String> QUANTITIES = List.of("ohm", "V", "A", "W", "Hz", "degC", "r/min", "N m", "mm/s",
            "mm");
    private static final List<String> OF_INSTRUMENT = List.of("name", "kind", "fourWire", "leadOhm", "leadOhmU",
            "certificate", "laboratory", "calibrated", "due", "note");
    /** Of two leads with their clips, in ohms. */
    private static final List<String> LEADS = List.of("leadOhm", "leadOhmU");

    private static final String CALIBRATION = "calibration";
    private static final String QUANTITY = "quantity";

    private final Words words;
    private final RegisterShape shape;

    InstrumentRows(Words words, String title) {
        this.words = words;
        Map<String, String> kinds = new LinkedHashMap<>();
        for (Instrument.Kind k : Instrument.Kind.values()) {
            kinds.put(words.of(k), k.name());
        }
        Map<String, String> yesNo = new LinkedHashMap<>();
        for (String yes : words.text("registers.yes").split("\\|")) {
            yesNo.put(yes, "TRUE");
        }
        for (String no : words.text("registers.no").split("\\|")) {
            yesNo.put(no, "FALSE");
        }
        shape = new RegisterShape(title, List.of(
                RegisterField.text("id", words.text("instruments.id"), words.text("instruments.idTitles")).needed(),
                RegisterField.text("name", words.text("instruments.name"), words.text("instruments.nameTitles")),
                RegisterField.choice("kind", words.text("instruments.kind"), words.text("instruments.kindTitles"), kinds),
                RegisterField.choice("fourWire", words.text("instruments.fourWire"),
                        words.text("instruments.fourWireTitles"), yesNo),
                number("leadOhm", "instruments.leadOhmHead", "instruments.leadOhmTitles"),
                number("leadOhmU", "instruments.leadOhmUHead", "instruments.leadOhmUTitles"),
                RegisterField.text("certificate", words.text("instruments.certificate"),
                        words.text("instruments.certificateTitles")),
                RegisterField.text("laboratory", words.text("instruments.laboratory"),
                        words.text("instruments.laboratoryTitles")),
                RegisterField.date("calibrated", words.text("instruments.calibrated"),
                        words.text("instruments.calibratedTitles")),
                RegisterField.date("due", words.text("instruments.due"), words.text("instruments.dueTitles")),
                quantity(quantities()),
                number("upTo", "instruments.upTo", "instruments.upToTitles"),
                number("resolution", "instruments.resolution", "instruments.resolutionTitles"),
                number("percentOfReading", "instruments.percent", "instruments.percentTitles"),
                number("digits", "instruments.digits", "instruments.digitsTitles"),
                RegisterField.text("note", words.text("rates.note"), words.text("registers.noteTitles"))), List.of());
    }

    private RegisterField number(String key, String label, String titles) {
        return RegisterField.number(key, words.text(label), words.text(titles), BigDecimal.ZERO, null);
    }

    static Map<String, String> quantities() {
        Map<String, String> all = new LinkedHashMap<>();
        QUANTITIES.forEach(q -> all.put(q, q));
        return all;
    }

    /**
     * The columns of a table that is taken in.
     *
     * @param kept instruments of the register: what their ranges measure is understood too, so that every list written here can
     *             be taken in
     */
    RegisterShape shape(List<Instrument> kept) {
        Map<String, String> known = quantities();
        kept.stream().flatMap(i -> i.ranges().stream()).map(Instrument.Range::quantity)
                .filter(q -> q != null && !q.isBlank()).forEach(q -> known.put(q, q));
        return new RegisterShape(shape.name(), shape.fields().stream().map(f -> f.key().equals(QUANTITY) ? quantity(known) : f)
                .toList(), shape.unique());
    }

    private RegisterField quantity(Map<String, String> known) {
        return RegisterField.choice(QUANTITY, words.text("instruments.quantity"), words.text("instruments.quantityTitles"),
                known);
    }

    /** The columns with what follows from them: whether the calibration holds. */
    RegisterShape shapeOut() {
        List<RegisterField> fields = new ArrayList<>(shape.fields());
        int afterDue = fields.indexOf(shape.field("due").orElseThrow()) + 1;
        fields.add(afterDue, RegisterField.text(CALIBRATION, words.text("instruments.calibration"), ""));
        return new RegisterShape(shape.name(), fields, shape.unique());
    }

    /** @param today the day by which a calibration holds or is overdue */
    List<Map<String, Object>> rows(List<Instrument> instruments, LocalDate today) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Instrument i : instruments) {
            Map<String, Object> head = new LinkedHashMap<>();
            head.put("id", i.id());
            head.put("name", i.name());
            head.put("kind", i.kind() == null ? null : i.kind().name());
            head.put("fourWire", i.fourWire() == null ? null : i.fourWire() ? "TRUE" : "FALSE");
            head.put("leadOhm", decimal(i.leadOhm()));
            head.put("leadOhmU", decimal(i.leadOhmU()));
            head.put("certificate", i.certificate());
            head.put("laboratory", i.certificates().stream().filter(c -> c.date() != null
                    && c.date().equals(i.calibrated())).map(Instrument.Certificate::laboratory).findFirst().orElse(null));
            head.put("calibrated", i.calibrated());
            head.put("due", i.calibrationDue());
            CalibrationWords calibration = CalibrationWords.of(i, today, words);
            head.put(CALIBRATION, calibration.warning() ? new RegisterWorkbook.Warning(calibration.state())
                    : calibration.state());
            head.put("note", i.note());
            if (i.ranges().isEmpty()) {
                rows.add(head);
            }
            for (Instrument.Range r : i.ranges()) {
                Map<String, Object> row = new LinkedHashMap<>(head);
                row.put(QUANTITY, r.quantity());
                row.put("upTo", decimal(r.upTo()));
                row.put("resolution", decimal(r.resolution()));
                row.put("percentOfReading", decimal(r.percentOfReading()));
                row.put("digits", decimal(r.digits()));
                rows.add(row);
            }
        }
        return rows;
    }

    private static BigDecimal decimal(Double d) {
        return d == null ? null : BigDecimal.valueOf(d);
    }

    /** Refuses a row that says of an instrument something else than a row before it, or runs out before it began. */
    RegisterImport.Maker<RegisterRow> checked() {
        Map<String, RegisterRow> first = new HashMap<>();
        return row -> {
            String id = row.text("id").orElseThrow().strip().toLowerCase(Locale.ROOT);
            // The table is read anew from its top when a column is meant otherwise.
            RegisterRow before = first.get(id);
            if (before == null || before.number() >= row.number()) {
                first.put(id, row);
                before = row;
            }
            for (String key : OF_INSTRUMENT) {
                Object mine = row.values().get(key);
                Object theirs = before.values().get(key);
                if (mine != null && theirs != null && !mine.equals(theirs)) {
                    throw new RowRefusedException(key, words.text("instruments.otherRow", row.text("id").orElseThrow(),
                            theirs, Integer.toString(before.number())));
                }
            }
            LocalDate from = row.date("calibrated").orElse(null);
            LocalDate due = row.date("due").orElse(null);
            if (from != null && due != null && due.isBefore(from)) {
                throw new RowRefusedException("due", words.text("instruments.dueBefore"));
            }
            return row;
        };
    }

    /** An instrument that is there gets the ranges of the table in place of its own, and a new certificate beside the old. */
    ObjectNode with(ObjectNode tree, List<RegisterRow> rows) {
        ArrayNode list = tree.withArray("instruments");
        Set<String> begun = new HashSet<>();
        for (RegisterRow r : rows) {
            String id = r.text("id").orElseThrow().strip();
            ObjectNode one = RegisterPane.row(list, o -> o.path("id").asText("").strip().equalsIgnoreCase(id));
            if (!one.has("id")) {
                one.put("id", id);
            }
            for (String key : List.of("name", "kind", "note")) {
                r.text(key).ifPresent(t -> one.put(key, t));
            }
            r.text("fourWire").ifPresent(t -> one.put("fourWire", t.equals("TRUE")));
            LEADS.forEach(key -> r.number(key).ifPresent(n -> one.put(key, n)));
            certificate(one, r);
            if (r.text(QUANTITY).isPresent()) {
                if (begun.add(id.toLowerCase(Locale.ROOT))) {
                    one.remove("ranges");
                }
                ObjectNode range = one.withArray("ranges").addObject().put(QUANTITY, r.text(QUANTITY).get());
                for (String key : List.of("upTo", "resolution", "percentOfReading", "digits")) {
                    r.number(key).ifPresent(n -> range.put(key, n));
                }
            }
        }
        return tree;
    }

    private static void certificate(ObjectNode one, RegisterRow r) {
        if (r.date("calibrated").isEmpty() && r.text("certificate").isEmpty()) {
            return;
        }
        if (!one.has("certificates") && one.has("calibrated")) {
            ObjectNode old = one.withArray("certificates").addObject();
            old.set("date", one.get("calibrated"));
            if (one.has("certificate")) {
                old.set("number", one.get("certificate"));
            }
            if (one.has("calibrationDue")) {
                old.set("due", one.get("calibrationDue"));
            }
        }
        String number = r.text("certificate").orElse("");
        String date = r.date("calibrated").map(LocalDate::toString).orElse("");
        ObjectNode kept = RegisterPane.row(one.withArray("certificates"), c -> c.path("number").asText("").equals(number)
                && c.path("date").asText("").equals(date));
        r.text("certificate").ifPresent(t -> kept.put("number", t));
        r.date("calibrated").ifPresent(d -> kept.put("date", d.toString()));
        r.date("due").ifPresent(d -> kept.put("due", d.toString()));
        r.text("laboratory").ifPresent(t -> kept.put("laboratory", t));
    }
}
