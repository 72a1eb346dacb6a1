package org.copperbook.jobs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.copperbook.jobs.report.Workload.Due;
import org.copperbook.jobs.shop.Capacities;
import org.junit.jupiter.api.Test;

/** Sums worked out by hand from the test's own inputs. 6 May 2026 is a Wednesday. */
class WorkloadTest {

    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 5, 6);
    private static final Capacities NONE = new Capacities(1, List.of(), Map.of());

    private static BigDecimal hours(String text) {
        return new BigDecimal(text);
    }

    private static void same(String expected, BigDecimal actual) {
        assertEquals(0, hours(expected).compareTo(actual), expected + " and not " + actual);
    }

    @Test
    void hoursStandInTheWeekInWhichTheyArePromised() {
        Workload w = Workload.of(List.of(new Due("winder", WEDNESDAY.minusDays(1), 1_500),
                new Due("winder", WEDNESDAY, 2_000), new Due("Winder ", LocalDate.of(2026, 5, 10), 3_000),
                new Due("winder", LocalDate.of(2026, 5, 11), 4_000), new Due("winder", LocalDate.of(2026, 5, 25), 5_000),
                new Due("winder", null, 6_000)), NONE, WEDNESDAY, 2);
        assertEquals(LocalDate.of(2026, 5, 4), w.monday());
        Workload.Line line = w.trades().get(0);
        assertEquals(1, w.trades().size());
        same("1.5", line.overdue());
        same("5", line.weeks().get(0));
        same("4", line.weeks().get(1));
        same("5", line.later());
        same("6", line.noDate());
        assertEquals(Optional.empty(), line.capacity());
        same("0", line.over(0));
    }

    @Test
    void whatIsOverdueAndNotDoneInOneWeekPressesOnTheNext() {
        Capacities forty = NONE.with("winder", hours("40"));
        Workload.Line line = Workload.of(List.of(new Due("winder", LocalDate.of(2026, 4, 1), 30_000),
                new Due("winder", WEDNESDAY, 30_000), new Due("winder", WEDNESDAY.plusWeeks(1), 15_000)), forty,
                WEDNESDAY, 3).trades().get(0);
        same("20", line.over(0));
        same("0", line.over(1));
        same("0", line.over(2));
    }

    @Test
    void aTradeWithoutWorkAndWorkWithoutATradeBothHaveALine() {
        Workload w = Workload.of(List.of(new Due("", WEDNESDAY, 1_000)), NONE.with("fitter", hours("38.5")), WEDNESDAY, 4);
        assertEquals(List.of("", "fitter"), w.trades().stream().map(Workload.Line::trade).toList());
        same("38.5", w.trades().get(1).capacity().orElseThrow());
    }

    @Test
    void noHourIsLostWhateverTheDates() {
        Random random = new Random(4);
        for (int round = 0; round < 200; round++) {
            List<Due> ahead = new ArrayList<>();
            long all = 0;
            for (int i = random.nextInt(40); i > 0; i--) {
                long h = random.nextInt(90_000);
                all += h;
                ahead.add(new Due(List.of("", "winder", "WINDER", "fitter").get(random.nextInt(4)),
                        random.nextInt(5) == 0 ? null : WEDNESDAY.plusDays(random.nextInt(200) - 60), h));
            }
            BigDecimal sum = BigDecimal.ZERO;
            for (Workload.Line l : Workload.of(ahead, NONE, WEDNESDAY, 1 + random.nextInt(8)).trades()) {
                sum = l.weeks().stream().reduce(sum, BigDecimal::add).add(l.overdue()).add(l.later()).add(l.noDate());
            }
            same(BigDecimal.valueOf(all, 3).toPlainString(), sum);
        }
    }

    @Test
    void aCapacityTakesThePlaceOfTheOneBefore() {
        Capacities c = NONE.with("winder", hours("40")).with("Winder", hours("32"));
        assertEquals(1, c.trades().size());
        same("32", c.of(" winder").orElseThrow());
    }
}
