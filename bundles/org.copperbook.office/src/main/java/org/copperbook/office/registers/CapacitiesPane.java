package org.copperbook.office.registers;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
import org.copperbook.sheets.registers.RegisterImport;
import org.copperbook.sheets.registers.RegisterRow;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RowRefusedException;
import org.eclipse.swt.widgets.Composite;

/** How many hours a week each trade can work, and the weeks that differ. */
final class CapacitiesPane extends TradesPane<Capacities> {

    private static final PartKey KEY = PartKey.of(PartKind.CAPACITIES);
    private static final String WEEK = "week";
    /** Hours a week of a trade; more is a slip of the pen. */
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);

    CapacitiesPane(Composite parent, ShopEditing editing, DeskSession session, Words words) {
        super(parent, editing, session, words, "capacities", KEY,
                new Capacities(Capacities.SCHEMA, List.of(), Map.of()));
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

    /** Usual weeks and those that differ in one table: the latter name a day in the week. */
    @Override
    RegisterShape shape() {
        return new RegisterShape(title(), List.of(
                tradeField(),
                RegisterField.number("hours", words().text("capacities.hours"), words().text("capacities.hoursTitles"),
                        BigDecimal.ZERO, MOST).needed(),
                RegisterField.date(WEEK, words().text("capacities.weekOf"), words().text("capacities.weekTitles")),
                RegisterField.text("note", words().text("rates.note"), words().text("registers.noteTitles"))),
                List.of("trade", WEEK));
    }

    @Override
    List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Capacities.OfTrade t : now().trades()) {
            rows.add(row(t.trade(), t.hoursPerWeek(), null, null));
        }
        for (Capacities.Week w : now().weeks()) {
            rows.add(row(w.trade(), w.hours(), w.week(), w.note()));
        }
        return rows;
    }

    private static Map<String, Object> row(String trade, BigDecimal hours, LocalDate week, String note) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("trade", trade);
        row.put("hours", hours);
        row.put(WEEK, week);
        row.put("note", note);
        return row;
    }

    @Override
    RegisterImport.Maker<RegisterRow> checked() {
        Map<String, Integer> first = new HashMap<>();
        int[] last = new int[1];
        return row -> {
            if (row.number() <= last[0]) {
                // The table is read anew from its top when a column is meant otherwise.
                first.clear();
            }
            last[0] = row.number();
            Optional<LocalDate> week = row.date(WEEK);
            if (week.isEmpty() && row.text("trade").isEmpty()) {
                throw new RowRefusedException("trade", words().text("capacities.neither"));
            }
            if (week.isEmpty() && row.text("note").isPresent()) {
                throw new RowRefusedException("note", words().text("capacities.usualNote", words().text("capacities.weekOf")));
            }
            if (week.isPresent()) {
                Integer before = first.putIfAbsent(monday(week.get()) + row.text("trade").orElse("").strip()
                        .toLowerCase(Locale.ROOT), row.number());
                if (before != null) {
                    throw new RowRefusedException(WEEK, words().text("capacities.weekTwice", Integer.toString(before)));
                }
            }
            return row;
        };
    }

    /** The usual hours of a trade take the place of those before, and those of a week the ones of any day in it. */
    @Override
    void put(ObjectNode tree, RegisterRow row) {
        BigDecimal hours = row.number("hours").orElseThrow();
        Optional<LocalDate> week = row.date(WEEK);
        if (week.isEmpty()) {
            entry(tree.withArray("trades"), row, o -> true).put("hoursPerWeek", hours);
            return;
        }
        LocalDate monday = monday(week.get());
        ObjectNode one = entry(tree.withArray("weeks"), row, o -> !o.path(WEEK).asText("").isEmpty()
                && monday(LocalDate.parse(o.path(WEEK).asText())).equals(monday));
        one.put(WEEK, week.get().toString()).put("hours", hours);
        row.text("note").ifPresent(n -> one.put("note", n));
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
