package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.JsonNode;
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
final class CapacitiesPane extends TradesPane<Capacities> {

    private static final PartKey KEY = PartKey.of(PartKind.CAPACITIES);
    /** Hours a week of a trade; more is a slip of the pen. */
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);

    CapacitiesPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "capacities", KEY,
                new Capacities(Capacities.SCHEMA, List.of(), Map.of()), "trades");
    }

    @Override
    void build(Form here) {
        grid(here, "capacities.usual", "/trades", columns -> columns
                .mark("/trade", "rates.trade")
                .decimal("/hoursPerWeek", "capacities.hours"), this::emptyRow);
        grid(here, "capacities.weeks", "/weeks", columns -> columns
                .date("/week", "capacities.week")
                .mark("/trade", "capacities.trade")
                .decimal("/hours", "capacities.weekHours")
                .text("/note", "rates.note"), this::emptyRow);
    }

    @Override
    Optional<String> problem() {
        for (Capacities.OfTrade t : now().trades()) {
            if (t.trade() == null || t.trade().isBlank() || outside(t.hoursPerWeek())) {
                return Optional.of(words().text("capacities.half"));
            }
        }
        for (Capacities.Week w : now().weeks()) {
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
                tradeField(),
                RegisterField.number("hours", words().text("capacities.hours"), words().text("capacities.hoursTitles"),
                        BigDecimal.ZERO, MOST).needed()), List.of("trade"));
    }

    @Override
    List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Capacities.OfTrade t : now().trades()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("trade", t.trade());
            row.put("hours", t.hoursPerWeek());
            rows.add(row);
        }
        return rows;
    }

    @Override
    boolean same(JsonNode one, RegisterRow row) {
        return true;
    }

    @Override
    void put(ObjectNode one, RegisterRow row) {
        one.put("hoursPerWeek", row.number("hours").orElseThrow());
    }
}
