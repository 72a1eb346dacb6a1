package org.copperbook.sheets.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Random;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChartTest {

    private static final Chart CURVE = new Chart("Open-circuit curve", Axis.fromZero("Field", "A"),
            Axis.fromZero("Line voltage", "V"), List.of(
            new Series("rising", Series.Shape.JOINED, List.of(ChartPoint.of(0, 8), ChartPoint.of(1, 210),
                    new ChartPoint(2, 380, 4.5, "/points/3"))),
            new Series("air-gap line, \"lower\" half", Series.Shape.DASHED, List.of(ChartPoint.of(0, 0), ChartPoint.of(2, 420)))),
            List.of(new ChartLimit.Line("rated", 400)), "");

    private static final Chart BARS = new Chart("Vibration", Axis.of("Place", List.of("DE horizontal", "DE vertical")),
            Axis.fromZero("Velocity", "mm/s"), List.of(new Series("as left", Series.Shape.BARS,
            List.of(ChartPoint.of(1, 1.2), ChartPoint.of(2, 0.9)))), List.of(new ChartLimit.Line("grade A", 1.6)), "");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aScaleHoldsEveryValueInRoundSteps(long seed) {
        Random random = new Random(seed);
        double size = Math.pow(10, random.nextInt(10) - 4);
        double[] values = random.doubles(7, -size, 3 * size).toArray();
        Scale scale = Scale.over(Axis.of("x", ""), values, false);
        for (double v : values) {
            assertTrue(v >= scale.from() - 1e-9 * size && v <= scale.to() + 1e-9 * size, v + " in " + scale);
        }
        double mantissa = scale.step() / Math.pow(10, Math.floor(Math.log10(scale.step()) + 1e-9));
        assertTrue(List.of(1L, 2L, 5L).contains(Math.round(mantissa)) && Math.abs(mantissa - Math.round(mantissa)) < 1e-6);
        assertTrue(scale.ticks().size() >= 3 && scale.ticks().size() <= 14, scale.ticks().toString());
        assertEquals(scale.to(), scale.ticks().get(scale.ticks().size() - 1), 1e-9 * size);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void aPlaceInThePlotLeadsBackToItsValue(long seed) {
        Random random = new Random(seed);
        PlotArea plot = new PlotArea(60, 20, 500, 300, CURVE.xScale(), CURVE.yScale());
        for (int i = 0; i < 50; i++) {
            double x = random.nextDouble() * 2;
            double y = random.nextDouble() * 400;
            assertEquals(x, plot.xAt(plot.placeOfX(x)), 1e-9);
            assertEquals(y, plot.yAt(plot.placeOfY(y)), 1e-9);
        }
        assertTrue(plot.placeOfY(400) < plot.placeOfY(0), "larger values stand higher");
    }

    @Test
    void theCrosshairTellsReadingsFromValuesBetweenThem() {
        ChartReading there = ChartReading.at(CURVE, 2);
        assertEquals(List.of(new ChartReading.Value("rising", 380, true),
                new ChartReading.Value("air-gap line, \"lower\" half", 420, false)), there.values());
        ChartReading between = ChartReading.at(CURVE, 0.5);
        assertEquals(109, between.values().get(0).y(), 1e-9);
        assertEquals(false, between.values().get(0).read());
        assertEquals(List.of(0.0, 1.0, 2.0), ChartReading.stops(CURVE));
    }

    @Test
    void theCsvQuotesWhatNeedsItAndEndsLinesAsTheStandardSays() {
        String csv = ChartCsv.of(CURVE);
        List<String> lines = List.of(csv.split("\r\n"));
        assertEquals("series,Field (A),Line voltage (V),expanded uncertainty (k = 2)", lines.get(0));
        assertEquals("rising,2,380,4.5", lines.get(3));
        assertEquals("\"air-gap line, \"\"lower\"\" half\",2,420,", lines.get(5));
        assertEquals("rated,,400,", lines.get(6));
        assertTrue(csv.endsWith("\r\n"));
        assertTrue(ChartCsv.of(BARS).contains("as left,DE horizontal,1.2,"));
    }

    @Test
    void aWorkbookHoldsTheChartWithItsNumbersInCells() throws Exception {
        try (XSSFWorkbook book = reopened(CURVE)) {
            XSSFChart chart = book.getSheetAt(0).getDrawingPatriarch().getCharts().get(0);
            XDDFChartData plot = chart.getChartSeries().get(0);
            assertEquals(3, plot.getSeriesCount(), "two series and the limit");
            assertEquals(List.of("0", "1", "2"), List.of(text(plot, 0), text(plot, 1), text(plot, 2)));
            assertEquals(380.0, plot.getSeries(0).getValuesData().getPointAt(2));
            assertEquals("Open-circuit curve", chart.getTitleText().getString());
            assertEquals(4.5, book.getSheetAt(1).getRow(4).getCell(3).getNumericCellValue());
        }
    }

    @Test
    void barsStandOverNamedPlacesInAWorkbook() throws Exception {
        try (XSSFWorkbook book = reopened(BARS)) {
            XSSFChart chart = book.getSheetAt(0).getDrawingPatriarch().getCharts().get(0);
            assertEquals(2, chart.getChartSeries().size(), "bars, and lines for the limit");
            assertEquals("DE vertical", chart.getChartSeries().get(0).getSeries(0).getCategoryData().getPointAt(1));
            assertEquals(1.6, chart.getChartSeries().get(1).getSeries(0).getValuesData().getPointAt(1));
        }
    }

    @Test
    void readingsStandOverNamedPlacesWithTheirUncertainties() throws Exception {
        Chart readings = new Chart("change", Axis.of("group", List.of("1", "2", "3")), Axis.of("change", "%"),
                List.of(new Series("as left", Series.Shape.DOTS, List.of(new ChartPoint(1.2, -0.4, 0.6, null),
                        new ChartPoint(3.2, 0.5, null, null)))), List.of(new ChartLimit.Band("limit", -2, 2)), "");
        try (XSSFWorkbook book = reopened(readings)) {
            XSSFChart chart = book.getSheetAt(0).getDrawingPatriarch().getCharts().get(0);
            XDDFChartData plot = chart.getChartSeries().get(0);
            assertEquals(3, plot.getSeriesCount(), "the readings and both ends of the band");
            XDDFLineChartData.Series left = (XDDFLineChartData.Series) plot.getSeries(0);
            assertEquals("3", left.getCategoryData().getPointAt(2));
            assertEquals(-0.4, left.getValuesData().getPointAt(0));
            assertEquals(null, book.getSheetAt(1).getRow(3).getCell(1), "no reading of the second");
            assertEquals(0.5, book.getSheetAt(1).getRow(4).getCell(1).getNumericCellValue());
            assertEquals(0.6, left.getErrorBars().getPlus().getPointAt(0));
            assertEquals(0.6, left.getErrorBars().getMinus().getPointAt(0));
            assertEquals(-2.0, plot.getSeries(1).getValuesData().getPointAt(2));
        }
    }

    private static String text(XDDFChartData plot, int i) {
        double x = Double.parseDouble(plot.getSeries(0).getCategoryData().getPointAt(i).toString());
        return Long.toString((long) x);
    }

    private static XSSFWorkbook reopened(Chart chart) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet shown = book.createSheet("Charts");
            XSSFSheet data = book.createSheet("Numbers");
            NativeChart.put(chart, shown, new XSSFClientAnchor(0, 0, 0, 0, 0, 0, 8, 20), data, 0);
            book.write(bytes);
        }
        return new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()));
    }
}
