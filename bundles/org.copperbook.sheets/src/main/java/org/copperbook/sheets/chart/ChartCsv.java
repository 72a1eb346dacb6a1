package org.copperbook.sheets.chart;

import java.util.Locale;
import org.copperbook.sheets.page.CellText;

/** A chart as comma-separated values (RFC 4180): one row for every point, numbers with a decimal point. */
public final class ChartCsv {

    private ChartCsv() {
    }

    /** The text of the file, lines ended by CR LF. */
    public static String of(Chart chart) {
        StringBuilder out = new StringBuilder();
        row(out, "series", chart.x().label(), chart.y().label(), "expanded uncertainty (k = 2)");
        for (Series s : chart.series()) {
            for (ChartPoint p : s.points()) {
                row(out, s.title(), place(chart.x(), p.x()), number(p.y()), p.expandedU() == null ? "" : number(p.expandedU()));
            }
        }
        for (ChartLimit l : chart.limits()) {
            if (l instanceof ChartLimit.Band b) {
                row(out, b.title(), "", number(b.from()), "");
                row(out, b.title(), "", number(b.to()), "");
            } else if (l instanceof ChartLimit.Line line) {
                row(out, line.title(), "", number(line.value()), "");
            }
        }
        return out.toString();
    }

    /** A place of an axis as people read it: its name, or its number. */
    static String place(Axis axis, double value) {
        int i = (int) Math.round(value) - 1;
        boolean named = i >= 0 && i < axis.places().size() && Math.abs(value - Math.round(value)) < 0.45;
        return named ? axis.places().get(i) : number(value);
    }

    private static String number(double v) {
        return v == Math.rint(v) && Math.abs(v) < 1e15 ? Long.toString((long) v)
                : String.format(Locale.ROOT, "%.7g", v).replaceAll("(\\.\\d*?)0+(e|$)", "$1$2").replaceAll("\\.(e|$)", "$1");
    }

    private static void row(StringBuilder out, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            out.append(i == 0 ? "" : ",").append(quoted(CellText.neutral(cells[i])));
        }
        out.append("\r\n");
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
