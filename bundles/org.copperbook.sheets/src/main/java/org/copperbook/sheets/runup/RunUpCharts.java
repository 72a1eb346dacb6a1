package org.copperbook.sheets.runup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.copperbook.calc.OutOfRange;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.HeatRunCurve;
import org.copperbook.jobs.check.RunUpCurves;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.runup.HeatRun;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.chart.Axis;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartLimit;
import org.copperbook.sheets.chart.ChartPoint;
import org.copperbook.sheets.chart.Series;
import org.copperbook.sheets.page.Words;

/** The charts of a job's run-up; the page and the workbook show the same ones. */
public final class RunUpCharts {

    private static final Words WORDS = new Words(RunUpCharts.class, "charts", Locale.ENGLISH);

    private final Job job;
    private final Shop shop;
    private final List<Verdict> verdicts;

    private RunUpCharts(Job job, Shop shop, List<Verdict> verdicts) {
        this.job = job;
        this.shop = shop;
        this.verdicts = verdicts;
    }

    /** The charts that have something to show, by name: open-circuit, short-circuit, heat-run-1 ..., bearing, vibration. */
    public static Map<String, Chart> of(Job job, Shop shop, List<Verdict> verdicts) {
        return new RunUpCharts(job, shop, verdicts).charts();
    }

    private Map<String, Chart> charts() {
        Map<String, Chart> charts = new LinkedHashMap<>();
        RunUp run = job.runUp().orElse(null);
        if (run == null) {
            return charts;
        }
        RunUpCurves curves = RunUpCurves.of(job, shop);
        put(charts, "open-circuit", openCircuit(curves));
        put(charts, "short-circuit", shortCircuit(curves));
        for (int i = 0; i < run.heatRuns().size(); i++) {
            put(charts, "heat-run-" + (i + 1), heatRun(run.heatRuns().get(i), i));
        }
        put(charts, "bearing", bearing(run));
        put(charts, "vibration", vibration(run));
        return charts;
    }

    private static void put(Map<String, Chart> charts, String name, Chart chart) {
        if (!chart.isEmpty()) {
            charts.put(name, chart);
        }
    }

    private static List<ChartPoint> points(List<RunUpCurves.Node> nodes) {
        return nodes.stream().map(n -> n.index() < 0 ? ChartPoint.of(n.field(), n.value())
                : ChartPoint.of(n.field(), n.value(), "points/" + n.index())).toList();
    }

    private String fieldAxis(RunUpCurves curves) {
        return WORDS.get(curves.mainField() ? "axis.main-field" : "axis.exciter-field");
    }

    private Chart openCircuit(RunUpCurves curves) {
        List<Series> series = new ArrayList<>();
        add(series, "series.rising", Series.Shape.JOINED, points(curves.rising()));
        add(series, "series.falling", Series.Shape.JOINED, points(curves.falling()));
        curves.airGapSlope().ifPresent(slope -> {
            double top = curves.openCircuit().orElseThrow().highestVolts();
            add(series, "series.air-gap", Series.Shape.DASHED, List.of(ChartPoint.of(0, 0), ChartPoint.of(top / slope, top)));
        });
        if (!series.isEmpty()) {
            String source = job.runUp().map(RunUp::storedCurve).map(RunUp.StoredCurve::source).orElse("");
            add(series, source.isBlank() ? WORDS.get("series.stored") : WORDS.get("series.stored-from", source),
                    points(curves.stored()), Series.Shape.JOINED);
        }
        List<ChartLimit> limits = new ArrayList<>();
        job.nameplate().map(p -> p.voltageV()).filter(v -> v > 0)
                .ifPresent(v -> limits.add(new ChartLimit.Line(WORDS.get("limit.rated-volts"), v)));
        String note = curves.nominalRpm().isPresent() ? WORDS.get("note.nominal", curves.nominalRpm().getAsDouble()) : "";
        return new Chart(WORDS.get("title.open-circuit"), Axis.fromZero(fieldAxis(curves), "A"),
                Axis.fromZero(WORDS.get("axis.line-volts"), "V"), series, limits, note);
    }

    private Chart shortCircuit(RunUpCurves curves) {
        List<Series> series = new ArrayList<>();
        add(series, "series.shorted", Series.Shape.JOINED, points(curves.shorted()));
        List<ChartLimit> limits = new ArrayList<>();
        job.nameplate().map(p -> p.currentA()).filter(v -> v > 0)
                .ifPresent(v -> limits.add(new ChartLimit.Line(WORDS.get("limit.rated-amps"), v)));
        return new Chart(WORDS.get("title.short-circuit"), Axis.fromZero(fieldAxis(curves), "A"),
                Axis.fromZero(WORDS.get("axis.short-amps"), "A"), series, limits, "");
    }

    private Chart heatRun(HeatRun run, int index) {
        List<Series> series = new ArrayList<>();
        add(series, "series.read", Series.Shape.DOTS, HeatRunCurve.readings(run, job, shop).stream()
                .map(p -> ChartPoint.of(p[0], p[1])).toList());
        Optional<HeatRunCurve> curve;
        try {
            curve = HeatRunCurve.of(run, job, shop);
        } catch (OutOfRange e) {
            curve = Optional.empty();
        }
        curve.ifPresent(c -> add(series, "series.cooling", Series.Shape.LINE, c.curve().stream()
                .map(p -> ChartPoint.of(p[0], p[1])).toList()));
        List<ChartLimit> limits = new ArrayList<>();
        verdicts.stream().filter(v -> v.id().equals("heat-run." + (index + 1)) && v.bounds() != null
                && v.bounds().upper() != null && run.coolantCelsius() != null).findFirst()
                .ifPresent(v -> limits.add(new ChartLimit.Line(WORDS.get("limit.rise", v.bounds().upper()),
                        run.coolantCelsius() + v.bounds().upper())));
        String winding = run.winding() == null ? "" : " \u2013 " + run.winding().word().replace('-', ' ');
        return new Chart(WORDS.get("title.heat-run") + winding, Axis.fromZero(WORDS.get("axis.shutdown"), "s"),
                Axis.of(WORDS.get("axis.winding"), "\u00b0C"), series, limits, "");
    }

    private Chart bearing(RunUp run) {
        List<Series> series = new ArrayList<>();
        add(series, "series.drive-end", Series.Shape.JOINED, temperatures(run, RunUp.BearingTemperature::driveEndCelsius));
        add(series, "series.other-end", Series.Shape.JOINED, temperatures(run, RunUp.BearingTemperature::nonDriveEndCelsius));
        add(series, "series.air", Series.Shape.JOINED, temperatures(run, RunUp.BearingTemperature::ambientCelsius));
        List<ChartLimit> limits = new ArrayList<>();
        verdicts.stream().filter(v -> v.id().equals("bearing.temperature") && v.bounds() != null && v.bounds().upper() != null)
                .findFirst().ifPresent(v -> limits.add(new ChartLimit.Line(WORDS.get("limit.bearing"), v.bounds().upper())));
        return new Chart(WORDS.get("title.bearing"), Axis.fromZero(WORDS.get("axis.minutes"), "min"),
                Axis.of(WORDS.get("axis.temperature"), "\u00b0C"), series, limits, "");
    }

    private static List<ChartPoint> temperatures(RunUp run, java.util.function.Function<RunUp.BearingTemperature, Double> which) {
        return run.bearingTemperatures().stream().filter(t -> t.minutes() != null && which.apply(t) != null)
                .map(t -> ChartPoint.of(t.minutes(), which.apply(t))).toList();
    }

    private Chart vibration(RunUp run) {
        List<String> places = new ArrayList<>();
        List<ChartPoint> points = new ArrayList<>();
        for (RunUp.End end : RunUp.End.values()) {
            for (RunUp.Direction direction : RunUp.Direction.values()) {
                places.add(WORDS.get("place." + end) + " " + WORDS.get("place." + direction));
                for (int i = run.vibration().size() - 1; i >= 0; i--) {
                    RunUp.Vibration v = run.vibration().get(i);
                    if (v.end() == end && v.direction() == direction && v.mmPerSecond() != null) {
                        points.add(ChartPoint.of(places.size(), v.mmPerSecond(), "vibration/" + i));
                        break;
                    }
                }
            }
        }
        List<Series> series = new ArrayList<>();
        add(series, "series.vibration", Series.Shape.BARS, points);
        List<ChartLimit> limits = new ArrayList<>();
        verdicts.stream().filter(v -> v.id().startsWith("vibration.") && v.bounds() != null && v.bounds().upper() != null)
                .findFirst().ifPresent(v -> limits.add(new ChartLimit.Line(v.limitText(), v.bounds().upper())));
        return new Chart(WORDS.get("title.vibration"), Axis.of(WORDS.get("axis.place"), places),
                Axis.fromZero(WORDS.get("axis.velocity"), "mm/s rms"), series, limits, "");
    }

    private static void add(List<Series> series, String key, Series.Shape shape, List<ChartPoint> points) {
        add(series, WORDS.get(key), points, shape);
    }

    private static void add(List<Series> series, String title, List<ChartPoint> points, Series.Shape shape) {
        if (!points.isEmpty()) {
            series.add(new Series(title, shape, points));
        }
    }
}
