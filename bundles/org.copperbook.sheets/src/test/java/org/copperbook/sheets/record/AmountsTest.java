package org.copperbook.sheets.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.page.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounding as JCGM 100:2008, 7.2.6, has it: the uncertainty to two figures, the value to the same decimal. */
class AmountsTest {

    private final Amounts amounts = new Amounts(new Words(JobRecordWorkbook.class, "record", Locale.ENGLISH));

    @ParameterizedTest
    @CsvSource({"1.1123, 0.0046, ohm, 1.1123 ± 0.0046 Ω", "0.026013, 0.00006, ohm, 26.013 ± 0.060 mΩ",
        "3.8e9, 3.04e8, ohm, 3.80 ± 0.30 GΩ", "-0.0009974, 0.0056, 1, -0.10 ± 0.56 %", "2.2e-18, 0.021, 1, 0.0 ± 2.1 %",
        "1.31, 0.0839, mm/s, 1.310 ± 0.084 mm/s", "398.54, 12.3, V, 399 ± 12 V"})
    void valueAndUncertaintyEndAtTheSameDecimal(double value, double u, String unit, String shown) {
        assertEquals(shown, amounts.valueOf(new Verdict("x", PartKey.parse("run-up"), "x", Outcome.MEETS, value, u, null, unit, "", "",
                "", "", "", true)));
    }

    @ParameterizedTest
    @CsvSource({"0.0455, 1, 4.55 %", "0.42e6, ohm, 420 kΩ", "76.25, degC, 76.25 °C", "12.5, N m, 12.5 N m", "2, '', 2"})
    void valuesWithoutUncertaintyStandInTheirUnit(double value, String unit, String shown) {
        assertEquals(shown, amounts.in(value, unit));
    }
}
