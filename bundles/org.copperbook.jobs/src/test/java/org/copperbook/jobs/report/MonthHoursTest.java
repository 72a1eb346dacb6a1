package org.copperbook.jobs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.report.MonthFact.Kind;
import org.copperbook.jobs.shop.Capacities;
import org.junit.jupiter.api.Test;

/** Expected: counted by hand on a calendar. February 2027 begins on a Monday and has four whole weeks; May 2026 begins on a Friday. */
class MonthHoursTest {

    private static MonthReport.Line line(Kind kind, String trade, String hours) {
        return new MonthReport.Line(kind, trade, 1, new BigDecimal(hours));
    }

    private static Capacities capacities(Capacities.Week... weeks) {
        return new Capacities(1, List.of(new Capacities.OfTrade("winder", BigDecimal.valueOf(40), Map.of())), List.of(weeks),
                Map.of());
    }

    private static MonthHours.Row row(MonthHours hours, String trade) {
        return hours.rows().stream().filter(r -> r.trade().equals(trade)).findFirst().orElseThrow();
    }

    private static void same(String expected, BigDecimal actual) {
        assertEquals(0, new BigDecimal(expected).compareTo(actual), actual + " instead of " + expected);
    }

    @Test
    void fourWholeWeeksAreFourTimesTheHoursOfOne() {
        MonthHours hours = MonthHours.of(new MonthReport(YearMonth.of(2027, 2), List.of(line(Kind.HOURS, "Winder", "60"),
                line(Kind.WORKED, "winder", "40"))), capacities());
        assertEquals(1, hours.rows().size(), "one trade, however it is written");
        MonthHours.Row winder = hours.rows().get(0);
        same("160", winder.capacity());
        same("40", winder.worked());
        same("60", winder.agreed());
        same("25", winder.percent().orElseThrow());
    }

    @Test
    void aWeekAtTheEdgeCountsWithItsDaysAndOneThatDiffersAsSaid() {
        Capacities.Week holiday = new Capacities.Week(LocalDate.of(2026, 5, 13), null, BigDecimal.TEN, null, Map.of());
        MonthHours hours = MonthHours.of(new MonthReport(YearMonth.of(2026, 5), List.of(line(Kind.WORKED, "winder", "1"),
                line(Kind.WORKED, "", "2"))), capacities(holiday));
        // Friday the 1st, three whole weeks of 40 and one of 10: 8 + 120 + 10.
        same("138", row(hours, "winder").capacity());
        assertEquals(null, row(hours, "").capacity());
        assertEquals(Optional.empty(), row(hours, "").percent());
    }

    @Test
    void aMonthWithoutHoursHasNone() {
        assertEquals(List.of(), MonthHours.of(new MonthReport(YearMonth.of(2026, 5), List.of(line(Kind.BOOKED, "", "0"))),
                capacities()).rows());
    }
}
