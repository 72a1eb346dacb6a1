package org.copperbook.sheets.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.FoundAndLeft;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartLimit;
import org.copperbook.sheets.chart.Series;
import org.junit.jupiter.api.Test;

class ResistanceChartTest {

    /** 40 mohm found and 41 mohm left are 2.5 % more; 0.1 mohm of 40 is 0.25 % (arithmetic). */
    @Test
    void theChangeStandsInPercentWithItsUncertaintyAndBand() {
        Chart chart = ResistanceChart.of("Main stator", List.of(pair("coil group 1", 0.040, 0.041, 0.003,
                Bounds.between(-0.05, 0.05), Outcome.MEETS)), 20, Locale.ENGLISH).orElseThrow();
        assertEquals(List.of("1"), chart.x().places());
        Series found = chart.series().get(0);
        Series left = chart.series().get(1);
        assertEquals(0, found.points().get(0).y(), 1e-12);
        assertEquals(0.25, found.points().get(0).expandedU(), 1e-9);
        assertEquals(2.5, left.points().get(0).y(), 1e-9);
        assertEquals(0.3, left.points().get(0).expandedU(), 1e-9);
        ChartLimit.Band band = (ChartLimit.Band) chart.limits().get(0);
        assertEquals(-5, band.from(), 1e-9);
        assertEquals(5, band.to(), 1e-9);
        assertTrue(chart.title().contains("20"), chart.title());
    }

    @Test
    void whatWasFoundFaultyIsNoYardstickAndStandsApart() {
        Chart chart = ResistanceChart.of("Main stator", List.of(
                pair("coil group 1", 0.040, 0.040, 0.003, Bounds.between(-0.05, 0.05), Outcome.MEETS),
                pair("coil group 2", 0.030, 0.040, 0.003, null, Outcome.NO_LIMIT_SET)), 20, Locale.ENGLISH).orElseThrow();
        assertEquals(3, chart.series().size());
        assertEquals(1, chart.series().get(1).points().size());
        assertEquals(1, chart.series().get(2).points().size());
    }

    @Test
    void withoutBothThereIsNoPicture() {
        FoundAndLeft only = new FoundAndLeft("phase U", false, new FoundAndLeft.At(1, null), null, null, null);
        assertTrue(ResistanceChart.of("Main stator", List.of(only), 20, Locale.ENGLISH).isEmpty());
    }

    private static FoundAndLeft pair(String label, double found, double left, Double u, Bounds bounds, Outcome outcome) {
        Verdict v = new Verdict("id." + label, PartKey.windingAsWound(WindingRole.MAIN_STATOR), label, outcome,
                left / found - 1, u, bounds, "1", "\u00b15 %", "common practice, no source", "", "", "/groups/0/resistance",
                true);
        return new FoundAndLeft(label, true, new FoundAndLeft.At(found, 0.0001), new FoundAndLeft.At(left, 0.0001),
                Reading.State.IN_PROCESS, v);
    }
}
