package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.copperbook.desk.editor.ShopEditing;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.LabourRates;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.eclipse.swt.widgets.Composite;

/** What an hour of each trade costs before mark-up, with the day from which it counts. */
final class RatesPane extends TradesPane<LabourRates> {

    private static final PartKey KEY = PartKey.of(PartKind.LABOUR_RATES);

    RatesPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "rates", KEY, LabourRates.none());
    }

    @Override
    void build(Form here) {
        grid(here, "rates.grid", "/rates", columns -> columns
                .mark("/trade", "rates.trade")
                .price("/perHour", "rates.perHour")
                .date("/validFrom", "rates.validFrom")
                .text("/note", "rates.note"), () -> emptyRow().put("validFrom", LocalDate.now().toString()));
        here.section("rates.today").computed("rates.now", "rates.now", this::today);
    }

    /** What counts today, trade by trade. */
    private String today() {
        Map<String, String> now = new LinkedHashMap<>();
        for (LabourRates.Rate r : now().rates()) {
            if (r.trade() != null && !r.trade().isBlank()) {
                now().perHour(r.trade(), LocalDate.now()).ifPresent(p -> now.put(r.trade().strip(), words().text(
                        "rates.one", r.trade().strip(), p.toPlainString(), session().shop().workshop().currency())));
            }
        }
        return String.join("; ", now.values());
    }

    @Override
    Optional<String> problem() {
        Set<String> known = new HashSet<>();
        for (LabourRates.Rate r : now().rates()) {
            boolean trade = r.trade() != null && !r.trade().isBlank();
            if (trade && r.perHour() != null && r.perHour().signum() < 0) {
                return Optional.of(words().text("rates.negative", r.trade()));
            }
            if (trade != (r.perHour() != null)) {
                return Optional.of(words().text("rates.half"));
            }
            if (trade && !known.add(r.trade().strip().toLowerCase(Locale.ROOT) + " " + r.validFrom())) {
                return Optional.of(words().text("rates.twice", r.trade().strip()));
            }
        }
        return Optional.empty();
    }

    @Override
    RegisterShape shape() {
        return new RegisterShape(title(), List.of(
                tradeField().needed(),
                RegisterField.number("perHour", words().text("rates.perHour"), words().text("rates.perHourTitles"),
                        BigDecimal.ZERO, null).needed(),
                RegisterField.date("validFrom", words().text("rates.validFrom"), words().text("rates.validFromTitles")),
                RegisterField.text("note", words().text("rates.note"), words().text("registers.noteTitles"))),
                List.of("trade", "validFrom"));
    }

    @Override
    List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (LabourRates.Rate r : now().rates()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("trade", r.trade());
            row.put("perHour", r.perHour());
            row.put("validFrom", r.validFrom());
            row.put("note", r.note());
            rows.add(row);
        }
        return rows;
    }

    /** A rate of a trade from a day takes the place of the one from that day. */
    @Override
    void put(ObjectNode tree, RegisterRow row) {
        ObjectNode one = entry(tree.withArray("rates"), row, o -> o.path("validFrom").asText("").equals(from(row)));
        one.put("perHour", row.number("perHour").orElseThrow());
        if (!from(row).isEmpty()) {
            one.put("validFrom", from(row));
        }
        row.text("note").ifPresent(n -> one.put("note", n));
    }

    private static String from(RegisterRow row) {
        return row.date("validFrom").map(LocalDate::toString).orElse("");
    }
}
