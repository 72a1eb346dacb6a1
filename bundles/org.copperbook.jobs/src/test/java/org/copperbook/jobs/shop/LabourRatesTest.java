package org.copperbook.jobs.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which rate counts on a day. Expected: the test's own inputs. */
class LabourRatesTest {

    private static LabourRates.Rate rate(String trade, String perHour, String from) {
        return new LabourRates.Rate(trade, new BigDecimal(perHour), from == null ? null : LocalDate.parse(from), null,
                Map.of());
    }

    private static final LabourRates RATES = new LabourRates(1, List.of(rate("winder", "60", "2026-01-01"),
            rate("winder", "52", null), rate("winder", "64.50", "2026-07-01"), rate("fitter", "48", "2026-01-01")), Map.of());

    @ParameterizedTest
    @CsvSource({"winder,2025-12-31,52", "winder,2026-01-01,60", " Winder ,2026-06-30,60", "WINDER,2026-07-01,64.50",
        "winder,2030-01-01,64.50", "fitter,2025-12-31,", "fitter,2026-01-01,48", "painter,2026-01-01,"})
    void theLatestThatHasBegunCounts(String trade, String day, BigDecimal perHour) {
        assertEquals(Optional.ofNullable(perHour), RATES.perHour(trade, LocalDate.parse(day)));
    }

    @Test
    void whatIsWrittenIsReadBack() throws Exception {
        PartJson json = new PartJson();
        assertEquals(RATES, json.read(PartKey.of(PartKind.LABOUR_RATES), json.write(RATES)));
        assertTrue(LabourRates.none().perHour(null, LocalDate.EPOCH).isEmpty());
    }
}
