package org.copperbook.sheets.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.check.FoundAndLeft;
import org.copperbook.sheets.JobRecordWorkbook;
import org.copperbook.sheets.chart.Axis;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartLimit;
import org.copperbook.sheets.chart.ChartPoint;
import org.copperbook.sheets.chart.Series;
import org.copperbook.sheets.page.Words;

/**
 * Resistance as left against as found as a chart: the change of every phase and coil group in per cent of what was found,
 * on one temperature, with expanded uncertainties and the band of the limit. The screen and the record draw the same.
 */
public final class ResistanceChart {

    private static final double PERCENT = 100;
    /** How far the two stand beside the middle of their place, so that neither hides the other. */
    private static final double BESIDE = 0.16;

    private ResistanceChart() {
    }

    /**
     * The chart of one winding.
     *
     * @param winding          the winding in words
     * @param rows             its phases and groups
     * @param referenceCelsius temperature to which all are brought
     * @param locale           language of titles and notes
     * @return empty while nothing has been read both as found and since
     */
    public static Optional<Chart> of(String winding, List<FoundAndLeft> rows, double referenceCelsius, Locale locale) {
        Words words = new Words(JobRecordWorkbook.class, "record", locale);
        List<FoundAndLeft> both = rows.stream().filter(r -> r.found() != null && r.left() != null && r.found().ohms() > 0)
                .toList();
        if (both.isEmpty()) {
            return Optional.empty();
        }
        List<String> places = new ArrayList<>();
        List<ChartPoint> found = new ArrayList<>();
        List<ChartPoint> held = new ArrayList<>();
        List<ChartPoint> unheld = new ArrayList<>();
        Set<ChartLimit> bands = new LinkedHashSet<>();
        for (FoundAndLeft r : both) {
            places.add(r.label().substring(r.label().lastIndexOf(' ') + 1));
            int x = places.size();
            String id = r.verdict() == null ? null : r.verdict().path();
            Double foundU = r.found().expandedU() == null ? null : r.found().expandedU() / r.found().ohms() * PERCENT;
            found.add(new ChartPoint(x - BESIDE, 0, foundU, id));
            boolean judged = r.verdict() != null && r.verdict().outcome() != Outcome.NO_LIMIT_SET;
            Double u = r.verdict() == null || r.verdict().expandedU() == null ? null : r.verdict().expandedU() * PERCENT;
            (judged ? held : unheld).add(new ChartPoint(x + BESIDE, (r.left().ohms() / r.found().ohms() - 1) * PERCENT, u, id));
            band(r, words).ifPresent(bands::add);
        }
        List<Series> series = new ArrayList<>(List.of(new Series(words.get("resistance-chart.found"), Series.Shape.DOTS,
                found)));
        if (!held.isEmpty()) {
            series.add(new Series(words.get("resistance-chart.left"), Series.Shape.DOTS, held));
        }
        if (!unheld.isEmpty()) {
            series.add(new Series(words.get("resistance-chart.unheld"), Series.Shape.DOTS, unheld));
        }
        String at = Amounts.number(referenceCelsius, 4);
        return Optional.of(new Chart(words.get("resistance-chart.title", winding, at),
                Axis.of(words.get("resistance-chart.places"), places), Axis.of(words.get("resistance-chart.change"), "%"),
                series, List.copyOf(bands), words.get("resistance-chart.note")));
    }

    private static Optional<ChartLimit> band(FoundAndLeft r, Words words) {
        return Optional.ofNullable(r.verdict()).map(v -> v.bounds())
                .filter(b -> b.lower() != null && b.upper() != null)
                .map(b -> new ChartLimit.Band(words.get("resistance-chart.limit", r.verdict().limitText(),
                        r.verdict().source()), b.lower() * PERCENT, b.upper() * PERCENT));
    }
}
