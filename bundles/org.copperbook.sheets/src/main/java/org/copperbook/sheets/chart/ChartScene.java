package org.copperbook.sheets.chart;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.copperbook.sheets.picture.Mark;
import org.copperbook.sheets.picture.Point;
import org.copperbook.sheets.picture.Scene;
import org.copperbook.sheets.picture.ScenePalette;

/** Draws a chart as a scene: frame, grid, limits, series each with its own mark and line, and a legend below. */
public final class ChartScene {

    /** The size for which text and marks are made. */
    public static final double WIDTH = 720;
    public static final double HEIGHT = 420;

    private static final double FONT = 13;
    private static final double TITLE = 15;
    private static final double LINE = 20;
    private static final double LINE_OF_PLACE = 16;
    private static final double EDGE = 12;
    private static final double GAP = 4;
    private static final double MARK = 4.2;

    private final Chart chart;
    private final double width;
    private final double height;
    private final List<Mark> marks = new ArrayList<>();
    private final List<LegendRow> legend;
    private final List<String> note;
    private final PlotArea plot;
    private final char decimal;
    /** Whether the names of places stand on two lines, since they would run into each other on one. */
    private final boolean broken;

    private record LegendItem(double x, String title, String style, Series.Shape shape, int index) {
    }

    private record LegendRow(List<LegendItem> items) {
    }

    private ChartScene(Chart chart, double width, double height, char decimal) {
        this.chart = chart;
        this.width = width;
        this.height = height;
        this.decimal = decimal;
        legend = legend();
        note = wrapped(chart.note(), width - 2 * EDGE);
        Scale y = chart.yScale();
        double widest = y.ticks().stream().mapToDouble(t -> text("", ScenePalette.TEXT, 0, 0, Mark.Anchor.END, tick(y, t))
                .width()).max().orElse(20);
        double left = widest + 18;
        double top = 2 * LINE + 16;
        broken = tooWide(width - left - 22);
        double below = 2 * LINE + 8 + (broken ? LINE : 0) + legend.size() * LINE + note.size() * LINE;
        plot = new PlotArea(left, top, Math.max(10, width - left - 22), Math.max(10, height - top - below), chart.xScale(), y);
    }

    /** A chart in a picture of the usual size, decimal marks of the locale. */
    public static Scene of(Chart chart) {
        return of(chart, WIDTH, HEIGHT);
    }

    /** A chart in a picture of a size of its own, decimal marks of the locale. */
    public static Scene of(Chart chart, double width, double height) {
        return new ChartScene(chart, width, height, mark()).draw();
    }

    /** Where the plot lies in the picture of that size; the crosshair needs it. */
    public static PlotArea plot(Chart chart, double width, double height) {
        return new ChartScene(chart, width, height, mark()).plot;
    }

    /** How much of a picture's height a note takes beyond its first line, so that a long one need not squeeze the plot. */
    public static double longNote(Chart chart, double width) {
        return LINE * Math.max(0, wrapped(chart.note(), width - 2 * EDGE).size() - 1);
    }

    private static char mark() {
        return DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT)).getDecimalSeparator();
    }

    private Scene draw() {
        marks.add(new Mark.Text("", ScenePalette.TEXT, new Point(12, 16), Mark.Anchor.START, TITLE, false, chart.title()));
        bands();
        grid();
        axes();
        int index = 0;
        for (Series s : chart.series()) {
            series(s, ScenePalette.series(index), index);
            index++;
        }
        limits();
        drawLegend();
        return new Scene(chart.title(), width, height, marks);
    }

    private void bands() {
        for (ChartLimit l : chart.limits()) {
            if (l instanceof ChartLimit.Band b) {
                double top = plot.placeOfY(b.to());
                double bottom = plot.placeOfY(b.from());
                marks.add(new Mark.Line("", ScenePalette.BAND, 0, true, List.of(new Point(plot.left(), top),
                        new Point(right(), top), new Point(right(), bottom), new Point(plot.left(), bottom))));
            }
        }
    }

    private double right() {
        return plot.left() + plot.width();
    }

    private double bottom() {
        return plot.top() + plot.height();
    }

    private void grid() {
        for (double t : plot.y().ticks()) {
            double y = plot.placeOfY(t);
            line(ScenePalette.FAINT, 0.5, plot.left(), y, right(), y);
            marks.add(text("", ScenePalette.TEXT, plot.left() - 6, y, Mark.Anchor.END, tick(plot.y(), t)));
        }
        for (double t : plot.x().ticks()) {
            double x = plot.placeOfX(t);
            line(ScenePalette.FAINT, 0.5, x, plot.top(), x, bottom());
            marks.add(text("", ScenePalette.TEXT, x, bottom() + 12, Mark.Anchor.MIDDLE, tick(plot.x(), t)));
        }
        for (int i = 0; i < chart.x().places().size(); i++) {
            double y = bottom() + 12;
            for (String line : onLines(chart.x().places().get(i))) {
                marks.add(text("", ScenePalette.TEXT, plot.placeOfX(i + 1.0), y, Mark.Anchor.MIDDLE, line));
                y += LINE_OF_PLACE;
            }
        }
    }

    private boolean tooWide(double room) {
        List<String> places = chart.x().places();
        return places.stream().anyMatch(p -> p.indexOf(' ') > 0
                && text("", "", 0, 0, Mark.Anchor.MIDDLE, p).width() > room / places.size() - GAP);
    }

    private List<String> onLines(String place) {
        int cut = place.indexOf(' ');
        return broken && cut > 0 ? List.of(place.substring(0, cut), place.substring(cut + 1)) : List.of(place);
    }

    /** Where what stands under the names of the axis begins. */
    private double underPlaces() {
        return bottom() + 12 + (broken ? LINE : 0);
    }

    private String tick(Scale scale, double t) {
        return scale.text(t).replace('.', decimal);
    }

    private void axes() {
        line(ScenePalette.TEXT, 1.2, plot.left(), plot.top(), plot.left(), bottom());
        line(ScenePalette.TEXT, 1.2, plot.left(), bottom(), right(), bottom());
        marks.add(text("", ScenePalette.MUTED, 12, plot.top() - 18, Mark.Anchor.START, chart.y().label()));
        marks.add(text("", ScenePalette.MUTED, right(), underPlaces() + LINE, Mark.Anchor.END, chart.x().label()));
    }

    private void series(Series s, String style, int index) {
        if (s.shape() == Series.Shape.BARS) {
            bars(s, style, index);
            return;
        }
        List<Point> places = s.points().stream().map(p -> new Point(plot.placeOfX(p.x()), plot.placeOfY(p.y()))).toList();
        if (s.joined() && places.size() > 1) {
            marks.add(new Mark.Line("", style, s.shape() == Series.Shape.DASHED ? 1.2 : 1.8, false, places));
        }
        for (int i = 0; s.marked() && i < places.size(); i++) {
            ChartPoint p = s.points().get(i);
            if (p.expandedU() != null && p.expandedU() > 0) {
                double low = plot.placeOfY(p.y() - p.expandedU());
                double high = plot.placeOfY(p.y() + p.expandedU());
                line(style, 1.2, places.get(i).x(), low, places.get(i).x(), high);
                line(style, 1.2, places.get(i).x() - 3, low, places.get(i).x() + 3, low);
                line(style, 1.2, places.get(i).x() - 3, high, places.get(i).x() + 3, high);
            }
            sign(p.id() == null ? "" : p.id(), style, index, places.get(i));
        }
    }

    /** Each series has a mark of its own, so that colour is not needed to tell them apart. */
    private void sign(String id, String style, int index, Point at) {
        switch (index % 4) {
            case 0 -> marks.add(Mark.Arc.circle(id, style, 1.4, true, at, MARK));
            case 1 -> shape(id, style, false, at, -1, -1, 1, -1, 1, 1, -1, 1);
            case 2 -> shape(id, style, true, at, 0, -1.2, 1.1, 0.9, -1.1, 0.9);
            default -> shape(id, style, false, at, 0, -1.3, 1.3, 0, 0, 1.3, -1.3, 0);
        }
    }

    private void shape(String id, String style, boolean filled, Point at, double... corners) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= corners.length; i += 2) {
            int k = i % corners.length;
            points.add(new Point(at.x() + MARK * corners[k], at.y() + MARK * corners[k + 1]));
        }
        if (!filled) {
            marks.add(new Mark.Line("", ScenePalette.PAPER, 0, true, points));
        }
        marks.add(new Mark.Line(id, style, 1.6, filled, points));
    }

    private void bars(Series s, String style, int index) {
        long groups = chart.series().stream().filter(o -> o.shape() == Series.Shape.BARS).count();
        long before = chart.series().subList(0, index).stream().filter(o -> o.shape() == Series.Shape.BARS).count();
        double place = chart.x().places().isEmpty() ? 24 : plot.width() / chart.x().places().size();
        double wide = place * 0.6 / groups;
        for (ChartPoint p : s.points()) {
            double left = plot.placeOfX(p.x()) - wide * groups / 2 + before * wide + 1;
            double top = plot.placeOfY(p.y());
            double zero = plot.placeOfY(0);
            List<Point> box = List.of(new Point(left, top), new Point(left + wide - 2, top),
                    new Point(left + wide - 2, zero), new Point(left, zero), new Point(left, top));
            boolean filled = before == 0;
            marks.add(new Mark.Line(p.id() == null ? "" : p.id(), style, 1.4, filled, box));
        }
    }

    private void limits() {
        for (ChartLimit l : chart.limits()) {
            if (l instanceof ChartLimit.Line limit) {
                limit(limit.title(), limit.value());
            } else if (l instanceof ChartLimit.Band b) {
                limit(b.title(), b.to());
                line(ScenePalette.LIMIT, 1.4, plot.left(), plot.placeOfY(b.from()), right(), plot.placeOfY(b.from()));
            }
        }
    }

    private void limit(String title, double value) {
        double y = plot.placeOfY(value);
        line(ScenePalette.LIMIT, 1.4, plot.left(), y, right(), y);
        // above the line, unless the frame is too near
        double beside = y - plot.top() < FONT + 4 ? y + 9 : y - 9;
        marks.add(new Mark.Text("", ScenePalette.LIMIT, new Point(right() - 4, beside), Mark.Anchor.END, FONT - 1, true, title));
    }

    private List<LegendRow> legend() {
        List<LegendRow> rows = new ArrayList<>();
        List<LegendItem> row = new ArrayList<>();
        double x = 14;
        int index = 0;
        for (Series s : chart.series()) {
            double wide = 34 + text("", "", 0, 0, Mark.Anchor.START, s.title()).width() + 18;
            if (x + wide > width && !row.isEmpty()) {
                rows.add(new LegendRow(List.copyOf(row)));
                row.clear();
                x = 14;
            }
            row.add(new LegendItem(x, s.title(), ScenePalette.series(index), s.shape(), index));
            x += wide;
            index++;
        }
        if (!row.isEmpty()) {
            rows.add(new LegendRow(row));
        }
        return rows;
    }

    private void drawLegend() {
        double y = underPlaces() + 2 * LINE;
        for (LegendRow row : legend) {
            for (LegendItem i : row.items()) {
                Series like = new Series(i.title(), i.shape(), List.of());
                if (i.shape() == Series.Shape.BARS) {
                    boolean first = chart.series().subList(0, i.index()).stream().noneMatch(s -> s.shape() == Series.Shape.BARS);
                    marks.add(new Mark.Line("", i.style(), 1.4, first, List.of(new Point(i.x() + 8, y - 5),
                            new Point(i.x() + 20, y - 5), new Point(i.x() + 20, y + 5), new Point(i.x() + 8, y + 5),
                            new Point(i.x() + 8, y - 5))));
                }
                if (like.joined()) {
                    line(i.style(), 1.6, i.x(), y, i.x() + 28, y);
                }
                if (like.marked()) {
                    sign("", i.style(), i.index(), new Point(i.x() + 14, y));
                }
                marks.add(text("", ScenePalette.TEXT, i.x() + 34, y, Mark.Anchor.START, i.title()));
            }
            y += LINE;
        }
        for (String line : note) {
            marks.add(text("", ScenePalette.MUTED, 12, y, Mark.Anchor.START, line));
            y += LINE;
        }
    }

    /** A text in lines no wider than the picture; a single word that is wider stands by itself. */
    private static List<String> wrapped(String text, double most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.isBlank() ? new String[0] : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && text("", ScenePalette.MUTED, 0, 0, Mark.Anchor.START, longer).width() > most) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private void line(String style, double wide, double x1, double y1, double x2, double y2) {
        marks.add(new Mark.Line("", style, wide, false, List.of(new Point(x1, y1), new Point(x2, y2))));
    }

    private static Mark.Text text(String id, String style, double x, double y, Mark.Anchor anchor, String text) {
        return new Mark.Text(id, style, new Point(x, y), anchor, FONT, false, text);
    }
}
