package org.copperbook.jobs.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.report.Workload;
import org.junit.jupiter.api.Test;

/** Instruments with their certificates, and weeks in which less is worked. Expected: the tests' own inputs. */
class InstrumentsTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 8, 3);

    private static Instrument.Certificate certificate(String number, String date, String due) {
        return new Instrument.Certificate(number, "lab", date == null ? null : LocalDate.parse(date),
                due == null ? null : LocalDate.parse(due), null, null, Map.of());
    }

    private static Instrument instrument(String id, Instrument.Certificate... certificates) {
        return new Instrument(id, "meter", Instrument.Kind.OTHER, null, null, null, null, LocalDate.of(2020, 1, 1),
                LocalDate.of(2021, 1, 1), "old", Arrays.asList(certificates), null, null, Map.of());
    }

    @Test
    void theNewestCertificateSaysUntilWhenTheCalibrationHolds() {
        Instrument i = instrument("A", certificate("c2", "2025-05-01", "2026-05-01"),
                certificate("c3", "2026-05-02", "2027-05-02"), certificate("c1", "2024-05-01", "2030-01-01"));
        assertEquals(LocalDate.of(2027, 5, 2), i.calibrationDue());
        assertEquals("c3", i.certificate());
        assertEquals(LocalDate.of(2026, 5, 2), i.calibrated());
    }

    @Test
    void withoutADatedCertificateWhatWasSaidBeforeStays() {
        Instrument i = instrument("A", certificate("c2", null, "2026-05-01"));
        assertEquals("old", i.certificate());
        assertEquals(LocalDate.of(2021, 1, 1), i.calibrationDue());
    }

    @Test
    void aDayIsJudgedByTheCertificatesOfBeforeIt() {
        Instrument i = instrument("A", certificate("c1", "2024-05-01", "2025-05-01"), certificate("c2", "2026-02-01", "2027-02-01"));
        assertEquals(Optional.empty(), i.lapsedOn(LocalDate.of(2025, 5, 1)));
        assertEquals(Optional.of(new Instrument.Lapse(LocalDate.of(2025, 5, 1), null)), i.lapsedOn(LocalDate.of(2025, 5, 2)));
        assertEquals(Optional.of(new Instrument.Lapse(LocalDate.of(2025, 5, 1), null)), i.lapsedOn(LocalDate.of(2026, 1, 31)),
                "the newer certificate says nothing of the day before it");
        assertEquals(Optional.empty(), i.lapsedOn(LocalDate.of(2026, 2, 1)));
        assertEquals(Optional.of(new Instrument.Lapse(null, LocalDate.of(2024, 5, 1))), i.lapsedOn(LocalDate.of(2024, 4, 30)));
    }

    @Test
    void aNewestCertificateThatDoesNotSayWhenItRunsOutLeavesWhatTheOlderSay() {
        Instrument i = instrument("A", certificate("c1", "2024-05-01", "2025-05-01"), certificate("c2", "2024-06-01", null));
        assertEquals(Optional.of(new Instrument.Lapse(LocalDate.of(2025, 5, 1), null)), i.lapsedOn(LocalDate.of(2025, 6, 1)));
        assertEquals(Optional.empty(), instrument("B", certificate("c2", "2024-06-01", null)).lapsedOn(LocalDate.of(2025, 6, 1)),
                "nobody has said when it runs out");
    }

    @Test
    void theOnlyCalibrationKeptSaysNothingOfTheDaysBeforeIt() {
        Instrument i = instrument("A");
        assertEquals(Optional.of(new Instrument.Lapse(null, LocalDate.of(2020, 1, 1))), i.lapsedOn(LocalDate.of(2019, 12, 31)));
        assertEquals(Optional.empty(), i.lapsedOn(LocalDate.of(2021, 1, 1)));
        assertEquals(Optional.of(new Instrument.Lapse(LocalDate.of(2021, 1, 1), null)), i.lapsedOn(LocalDate.of(2021, 1, 2)));
    }

    @Test
    void anIdThatTwoHaveIsFound() {
        Instruments all = new Instruments(1, List.of(instrument("MM-1"), instrument("B"), instrument(" mm-1")), Map.of());
        assertEquals(List.of("MM-1"), all.idsTwice().stream().map(s -> s.toUpperCase(java.util.Locale.ROOT)).toList());
        assertFalse(all.anyWithoutId());
        assertTrue(new Instruments(1, List.of(instrument(" ")), Map.of()).anyWithoutId());
    }

    @Test
    void whatIsWrittenIsReadBack() throws Exception {
        PartJson json = new PartJson();
        Instruments all = new Instruments(1, List.of(instrument("A", certificate("c", "2026-01-01", null))), Map.of());
        assertEquals(all, json.read(PartKey.of(PartKind.INSTRUMENTS), json.write(all)));
        Capacities c = holiday();
        assertEquals(c, json.read(PartKey.of(PartKind.CAPACITIES), json.write(c)));
    }

    private static Capacities holiday() {
        return new Capacities(1, List.of(new Capacities.OfTrade("winder", new BigDecimal("40"), Map.of()),
                new Capacities.OfTrade("fitter", new BigDecimal("30"), Map.of())), List.of(
                new Capacities.Week(MONDAY.plusDays(3), null, BigDecimal.ZERO, "closed", Map.of()),
                new Capacities.Week(MONDAY, "Winder", BigDecimal.TEN, null, Map.of()),
                new Capacities.Week(MONDAY.plusWeeks(1).plusDays(6), "fitter", new BigDecimal("5"), null, Map.of())),
                Map.of());
    }

    @Test
    void aWeekThatDiffersGoesBeforeTheUsualOneAndATradeBeforeAll() {
        Capacities c = holiday();
        assertEquals(Optional.of(BigDecimal.TEN), c.in(MONDAY, "winder"));
        assertEquals(Optional.of(BigDecimal.ZERO), c.in(MONDAY, "fitter"));
        assertEquals(Optional.of(new BigDecimal("5")), c.in(MONDAY.plusWeeks(1), "fitter"));
        assertEquals(Optional.of(new BigDecimal("40")), c.in(MONDAY.plusWeeks(1), "winder"));
        assertEquals(Optional.empty(), c.in(MONDAY, "painter"));
    }

    @Test
    void theWorkAheadIsHeldAgainstTheHoursOfThoseWeeks() {
        // 30 h due this week, in which 10 can be worked; 55 h up to the next, in which 40 more can.
        Workload.Line line = Workload.of(List.of(new Workload.Due("winder", MONDAY.plusDays(2), 30_000),
                new Workload.Due("winder", MONDAY.plusWeeks(1), 25_000)), holiday(), MONDAY, 2).trades().stream()
                .filter(l -> l.trade().equals("winder")).findFirst().orElseThrow();
        assertEquals(0, new BigDecimal("20").compareTo(line.over(0)));
        assertEquals(0, new BigDecimal("5").compareTo(line.over(1)));
    }
}
