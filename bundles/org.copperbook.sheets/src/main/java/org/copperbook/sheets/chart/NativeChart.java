package org.copperbook.sheets.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.copperbook.sheets.page.CellText;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTLineChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.STMarkerStyle;

/**
 * A chart of the spreadsheet's own in a workbook, drawn from numbers in cells, so that whoever opens the file can read
 * and change it. Black and grey with different marks, because records are printed.
 */
public final class NativeChart {

    private static final PresetColor[] INKS = {PresetColor.BLACK, PresetColor.DIM_GRAY, PresetColor.DARK_BLUE,
        PresetColor.SADDLE_BROWN, PresetColor.DARK_GREEN};
    private static final MarkerStyle[] MARKS = {MarkerStyle.CIRCLE, MarkerStyle.SQUARE, MarkerStyle.TRIANGLE,
        MarkerStyle.DIAMOND, MarkerStyle.X};

    private static final MathContext FIGURES = new MathContext(8);
    private static final double NOTHING = 1e-12;

    private final Chart chart;
    private final XSSFSheet data;
    private int row;
    private XSSFCellStyle wrapped;

    private NativeChart(Chart chart, XSSFSheet data, int row) {
        this.chart = chart;
        this.data = data;
        this.row = row;
    }

    /**
     * Puts a chart over some cells of a sheet and its numbers into another.
     *
     * @param sheet    sheet that shows the chart
     * @param anchor   cells that it covers
     * @param data     sheet that takes its numbers, from a row on
     * @param firstRow first row of the numbers, from 0
     * @return first row after the numbers
     */
    public static int put(Chart chart, XSSFSheet sheet, XSSFClientAnchor anchor, XSSFSheet data, int firstRow) {
        return new NativeChart(chart, data, firstRow).draw(sheet, anchor);
    }

    private int draw(XSSFSheet sheet, XSSFClientAnchor anchor) {
        XSSFChart drawn = sheet.createDrawingPatriarch().createChart(anchor);
        drawn.setTitleText(chart.title());
        drawn.setTitleOverlay(false);
        XDDFChartLegend legend = drawn.getOrAddLegend();
        legend.setPosition(LegendPosition.BOTTOM);
        text(chart.title(), "", "");
        if (chart.x().places().isEmpty()) {
            numbers(drawn);
        } else {
            places(drawn);
        }
        // A chart of several plots names its axes itself; spreadsheets draw missing values as gaps.
        drawn.displayBlanksAs(DisplayBlanks.GAP);
        inkMarks(drawn.getCTChart().getPlotArea());
        return row + 1;
    }

    private void numbers(XSSFChart drawn) {
        XDDFValueAxis below = drawn.createValueAxis(AxisPosition.BOTTOM);
        XDDFValueAxis left = drawn.createValueAxis(AxisPosition.LEFT);
        below.setTitle(chart.x().label());
        left.setTitle(chart.y().label());
        ends(below, chart.xScale());
        ends(left, chart.yScale());
        XDDFScatterChartData plot = (XDDFScatterChartData) drawn.createData(ChartTypes.SCATTER, below, left);
        plot.setStyle(ScatterStyle.LINE_MARKER);
        List<Series> all = new ArrayList<>(chart.series().stream().filter(s -> !s.points().isEmpty()).toList());
        all.addAll(limitLines(chart.xScale().from(), chart.xScale().to()));
        int i = 0;
        for (Series s : all) {
            CellRangeAddress[] cells = write(s);
            XDDFScatterChartData.Series series = (XDDFScatterChartData.Series) plot.addSeries(
                    XDDFDataSourcesFactory.fromNumericCellRange(data, cells[0]),
                    XDDFDataSourcesFactory.fromNumericCellRange(data, cells[1]));
            series.setTitle(s.title(), null);
            series.setSmooth(false);
            series.setMarkerStyle(s.marked() ? MARKS[i % MARKS.length] : MarkerStyle.NONE);
            series.setShapeProperties(look(series.getShapeProperties(), s, i));
            i++;
        }
        drawn.plot(plot);
    }

    /** Bars, or readings with their uncertainties, over named places, with limits as lines across them. */
    private void places(XSSFChart drawn) {
        XDDFCategoryAxis below = drawn.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis left = drawn.createValueAxis(AxisPosition.LEFT);
        below.setTitle(chart.x().label());
        left.setTitle(chart.y().label());
        // Names of the places stand at the foot also where readings lie below zero.
        below.setTickLabelPosition(AxisTickLabelPosition.LOW);
        left.setCrosses(AxisCrosses.AUTO_ZERO);
        left.setCrossBetween(AxisCrossBetween.BETWEEN);
        ends(left, chart.yScale());
        XDDFDataSource<String> names = null;
        XDDFBarChartData bars = null;
        XDDFLineChartData lines = null;
        List<Series> all = new ArrayList<>(chart.series().stream().filter(s -> !s.points().isEmpty()).toList());
        all.addAll(limitLines(1, chart.x().places().size()).stream().map(this::everywhere).toList());
        for (int i = 0; i < all.size(); i++) {
            Series s = all.get(i);
            int first = byPlace(s);
            names = names == null ? XDDFDataSourcesFactory.fromStringCellRange(data, cells(first, 0)) : names;
            if (s.shape() == Series.Shape.BARS) {
                bars = bars == null ? (XDDFBarChartData) drawn.createData(ChartTypes.BAR, below, left) : bars;
                XDDFChartData.Series bar = bars.addSeries(names, numbers(first, 1));
                bar.setTitle(s.title(), null);
                XDDFShapeProperties fill = new XDDFShapeProperties();
                fill.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(INKS[i % INKS.length])));
                bar.setShapeProperties(fill);
            } else {
                lines = lines == null ? (XDDFLineChartData) drawn.createData(ChartTypes.LINE, below, left) : lines;
                XDDFLineChartData.Series line = (XDDFLineChartData.Series) lines.addSeries(names, numbers(first, 1));
                line.setTitle(s.title(), null);
                line.setSmooth(false);
                line.setMarkerStyle(s.marked() ? MARKS[i % MARKS.length] : MarkerStyle.NONE);
                line.setShapeProperties(look(line.getShapeProperties(), s, i));
                if (s.points().stream().anyMatch(p -> p.expandedU() != null)) {
                    line.setErrorBars(new UncertaintyBars(numbers(first, 2)));
                }
            }
        }
        if (bars != null) {
            bars.setBarDirection(BarDirection.COL);
            drawn.plot(bars);
        }
        if (lines != null) {
            drawn.plot(lines);
        }
    }

    /** A limit holds at every place. */
    private Series everywhere(Series limit) {
        List<ChartPoint> points = new ArrayList<>();
        for (int i = 1; i <= chart.x().places().size(); i++) {
            points.add(ChartPoint.of(i, limit.points().get(0).y()));
        }
        return new Series(limit.title(), limit.shape(), points);
    }

    /** Writes place, value and uncertainty, a row for each place whether it has a value or not. */
    private int byPlace(Series s) {
        text(s.title(), chart.y().label());
        int first = row;
        chart.x().places().forEach(this::text);
        for (ChartPoint p : s.points()) {
            XSSFRow at = data.getRow(first + (int) Math.round(p.x()) - 1);
            at.createCell(1).setCellValue(figure(p.y()));
            if (p.expandedU() != null) {
                at.createCell(2).setCellValue(figure(p.expandedU()));
            }
        }
        return first;
    }

    private XDDFNumericalDataSource<Double> numbers(int first, int column) {
        return XDDFDataSourcesFactory.fromNumericCellRange(data, cells(first, column));
    }

    private CellRangeAddress cells(int first, int column) {
        return new CellRangeAddress(first, first + chart.x().places().size() - 1, column, column);
    }

    /** Limits as lines across the chart, each between two points. */
    private List<Series> limitLines(double from, double to) {
        List<Series> lines = new ArrayList<>();
        for (ChartLimit l : chart.limits()) {
            if (l instanceof ChartLimit.Band b) {
                lines.add(line(b.title(), from, to, b.from()));
                lines.add(line(b.title(), from, to, b.to()));
            } else if (l instanceof ChartLimit.Line limit) {
                lines.add(line(limit.title(), from, to, limit.value()));
            }
        }
        return lines;
    }

    private static Series line(String title, double from, double to, double y) {
        return new Series(title, Series.Shape.DASHED, List.of(ChartPoint.of(from, y), ChartPoint.of(to, y)));
    }

    private CellRangeAddress[] write(Series s) {
        text(s.title(), chart.x().label(), chart.y().label());
        int first = row;
        for (ChartPoint p : s.points()) {
            XSSFRow cells = data.createRow(row++);
            cells.createCell(1).setCellValue(figure(p.x()));
            cells.createCell(2).setCellValue(figure(p.y()));
            if (p.expandedU() != null) {
                cells.createCell(3).setCellValue(figure(p.expandedU()));
            }
        }
        return new CellRangeAddress[] {new CellRangeAddress(first, row - 1, 1, 1),
            new CellRangeAddress(first, row - 1, 2, 2)};
    }

    /** Digits beyond any measurement are left out: they are noise of the arithmetic, and no two runs of it need agree in them. */
    private static double figure(double value) {
        return Math.abs(value) < NOTHING ? 0 : new BigDecimal(value).round(FIGURES).doubleValue();
    }

    private void text(String... texts) {
        XSSFRow cells = data.createRow(row++);
        for (int i = 0; i < texts.length; i++) {
            if (!texts[i].isEmpty()) {
                XSSFCell cell = cells.createCell(i);
                cell.setCellValue(CellText.storable(texts[i]));
                if (texts.length > 1 && i + 1 < texts.length && !texts[i + 1].isEmpty()) {
                    cell.setCellStyle(wrapped());
                }
            }
        }
    }

    /** The name of a series may be a sentence, for instance where a stored curve comes from. */
    private XSSFCellStyle wrapped() {
        if (wrapped == null) {
            wrapped = data.getWorkbook().createCellStyle();
            wrapped.setWrapText(true);
            wrapped.setVerticalAlignment(VerticalAlignment.TOP);
        }
        return wrapped;
    }

    /** Marks in the ink of their series; left to themselves spreadsheets choose pale ones where no line is drawn. */
    private static void inkMarks(CTPlotArea plot) {
        for (CTLineChart lines : plot.getLineChartList()) {
            for (int i = 0; i < lines.sizeOfSerArray(); i++) {
                ink(lines.getSerArray(i).getMarker(), i);
            }
        }
        for (CTScatterChart lines : plot.getScatterChartList()) {
            for (int i = 0; i < lines.sizeOfSerArray(); i++) {
                ink(lines.getSerArray(i).getMarker(), i);
            }
        }
    }

    private static void ink(CTMarker mark, int i) {
        if (mark == null || mark.getSymbol() == null || mark.getSymbol().getVal() == STMarkerStyle.NONE) {
            return;
        }
        XDDFShapeProperties look = new XDDFShapeProperties(mark.isSetSpPr() ? mark.getSpPr() : mark.addNewSpPr());
        XDDFSolidFillProperties fill = new XDDFSolidFillProperties(XDDFColor.from(INKS[i % INKS.length]));
        look.setFillProperties(fill);
        look.setLineProperties(new XDDFLineProperties(fill));
    }

    private static void ends(XDDFChartAxis axis, Scale scale) {
        axis.setMinimum(scale.from());
        axis.setMaximum(scale.to());
        axis.setMajorUnit(scale.step());
        XDDFLineProperties grid = new XDDFLineProperties(new XDDFSolidFillProperties(
                XDDFColor.from(PresetColor.LIGHT_GRAY)));
        grid.setWidth(0.5);
        axis.getOrAddMajorGridProperties().setLineProperties(grid);
    }

    private static XDDFShapeProperties look(XDDFShapeProperties was, Series s, int i) {
        XDDFShapeProperties look = was == null ? new XDDFShapeProperties() : was;
        XDDFLineProperties line = new XDDFLineProperties();
        if (s.joined()) {
            line.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(INKS[i % INKS.length])));
            line.setWidth(s.shape() == Series.Shape.JOINED ? 1.25 : 1.0);
            if (s.shape() == Series.Shape.DASHED) {
                line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
            }
        } else {
            line.setFillProperties(new XDDFNoFillProperties());
        }
        look.setLineProperties(line);
        return look;
    }
}
