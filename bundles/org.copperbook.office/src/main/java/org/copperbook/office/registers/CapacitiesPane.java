package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Capacities;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.eclipse.swt.widgets.Composite;

/** How many hours a week each trade can work, and the weeks that differ. */
final class CapacitiesPane extends FormPane {

    private static final PartKey KEY = PartKey.of(PartKind.CAPACITIES);
    /** Hours a week of a trade; more is a slip of the pen. */
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);

    CapacitiesPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "capacities", KEY, none());
    }

    private static Capacities none() {
        return new Capacities(Capacities.SCHEMA, List.of(), Map.of());
    }

    @Override
    void build(Form here) {
        here.grid("capacities.usual", "/trades", columns -> columns
                .mark("/trade", "rates.trade")
                .decimal("/hoursPerWeek", "capacities.hours"))
                .newRow(() -> session().json().mapper().createObjectNode());
        here.grid("capacities.weeks", "/weeks", columns -> columns
                .date("/week", "capacities.week")
                .mark("/trade", "capacities.trade")
                .decimal("/hours", "capacities.weekHours")
                .text("/note", "rates.note"))
                .newRow(() -> session().json().mapper().createObjectNode());
    }

    private Capacities capacities() {
        return editing().document().part(KEY, Capacities.class).orElse(none());
    }

    @Override
    Optional<String> problem() {
        for (Capacities.OfTrade t : capacities().trades()) {
            if (t.trade() == null || t.trade().isBlank() || outside(t.hoursPerWeek())) {
                return Optional.of(words().text("capacities.half"));
            }
        }
        for (Capacities.Week w : capacities().weeks()) {
            if (w.week() == null || outside(w.hours())) {
                return Optional.of(words().text("capacities.weekHalf"));
            }
        }
        return Optional.empty();
    }

    private static boolean outside(BigDecimal hours) {
        return hours == null || hours.signum() < 0 || hours.compareTo(MOST) > 0;
    }

    @Override
    RegisterShape shape() {
        return new RegisterShape(title(), List.of(
                RegisterField.text("trade", words().text("rates.trade"), words().text("rates.tradeTitles")).needed(),
                RegisterField.number("hours", words().text("capacities.hours"), words().text("capacities.hoursTitles"),
                        BigDecimal.ZERO, MOST).needed()), List.of("trade"));
    }

    @Override
    List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Capacities.OfTrade t : capacities().trades()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("trade", t.trade());
            row.put("hours", t.hoursPerWeek());
            rows.add(row);
        }
        return rows;
    }

    @Override
    ObjectNode with(ObjectNode tree, List<RegisterRow> rows) {
        ArrayNode list = tree.withArray("trades");
        for (RegisterRow r : rows) {
            row(list, o -> o.path("trade").asText("").strip().equalsIgnoreCase(r.text("trade").orElseThrow()))
                    .put("trade", r.text("trade").orElseThrow()).put("hoursPerWeek", r.number("hours").orElseThrow());
        }
        return tree;
    }
}
