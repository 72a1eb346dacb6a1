package org.copperbook.sheets.insulation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.InsulationRun;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.chart.Axis;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartPoint;
import org.copperbook.sheets.chart.Series;
import org.copperbook.sheets.page.Words;

/** Insulation resistance against time, a chart for every run; the page and the workbook show the same ones. */
public final class InsulationCharts {

    private static final Words WORDS = new Words(InsulationCharts.class, "charts", Locale.ENGLISH);
    private static final double MEGOHM = 1e6;
    private static final double MINUTE = 60;

    private InsulationCharts() {
    }

    /** The charts by name: "insulation-main-stator-as-found", with place and number of the run where there are several. */
    public static Map<String, Chart> of(Job job, Shop shop, List<Verdict> verdicts) {
        Map<String, Chart> charts = new LinkedHashMap<>();
        for (InsulationRun run : InsulationRun.of(job, shop, verdicts)) {
            charts.put(name(run), chart(run));
        }
        return charts;
    }

    private static String name(InsulationRun run) {
        return "insulation-" + run.role().word() + "-" + run.state().name().toLowerCase(Locale.ROOT).replace('_', '-')
                + (run.place().isEmpty() ? "" : "-" + run.place()) + (run.runs() == 1 ? "" : "-" + run.number());
    }

    private static Chart chart(InsulationRun run) {
        String title = WORDS.get("title", run.role().word().replace('-', ' '),
                run.place().isEmpty() ? WORDS.get("to-earth") : run.place().toUpperCase(Locale.ROOT),
                WORDS.get("state." + run.state()));
        List<Series> series = new ArrayList<>();
        series.add(new Series(WORDS.get("as-read"), Series.Shape.JOINED, run.points().stream()
                .map(p -> ChartPoint.of(p.seconds() / MINUTE, p.ohms() / MEGOHM, p.path())).toList()));
        List<ChartPoint> at40 = run.points().stream().filter(p -> p.at40() != null)
                .map(p -> ChartPoint.of(p.seconds() / MINUTE, p.at40() / MEGOHM)).toList();
        if (!at40.isEmpty()) {
            series.add(new Series(WORDS.get("at-40"), Series.Shape.JOINED, at40));
        }
        return new Chart(run.runs() == 1 ? title : WORDS.get("title.run", title, run.number()),
                Axis.fromZero(WORDS.get("time"), "min"), Axis.fromZero(WORDS.get("resistance"), "M\u03a9"), series, List.of(),
                run.says() + " " + run.rule());
    }
}
