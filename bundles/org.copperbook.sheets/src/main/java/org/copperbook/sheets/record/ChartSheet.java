package org.copperbook.sheets.record;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.copperbook.calc.OutOfRange;
import org.copperbook.jobs.check.FoundAndLeft;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.NativeChart;
import org.copperbook.sheets.page.Book;
import org.copperbook.sheets.insulation.InsulationCharts;
import org.copperbook.sheets.page.SheetPage;
import org.copperbook.sheets.runup.RunUpCharts;

/**
 * The charts of insulation over time, of the run-up and of resistance as left against as found, as charts of the spreadsheet's own, two on a page,
 * and their numbers on a sheet behind them.
 */
public final class ChartSheet implements RecordSheet {

    /** Rows of eight points that one chart takes. */
    private static final int ROWS = 40;
    private static final int COLUMNS = 12;

    @Override
    public void write(RecordContext c, Book book) {
        Map<String, Chart> charts = new LinkedHashMap<>(InsulationCharts.of(c.job(), c.shop(), c.verdicts().all()));
        charts.putAll(RunUpCharts.of(c.job(), c.shop(), c.verdicts().all()));
        charts.putAll(resistances(c));
        if (charts.isEmpty()) {
            return;
        }
        SheetPage shown = Sheet12.portrait(c, book, c.say("charts.sheet")).page();
        SheetPage data = book.portrait(c.say("charts.data"), 36, 22, 22, 22);
        data.title(c.title() + " – " + c.say("charts.data"));
        data.repeat(1);
        if (c.demo()) {
            data.warning(c.say("demo.long"));
        }
        int row = data.nextRow() + 1;
        int count = 0;
        for (Chart chart : charts.values()) {
            if (count > 0 && count % 2 == 0) {
                shown.pageBreak();
            }
            shown.gap();
            int first = shown.nextRow();
            for (int i = 0; i < ROWS; i++) {
                shown.gap();
            }
            row = NativeChart.put(chart, shown.sheet(), new XSSFClientAnchor(0, 0, 0, 0, 0, first, COLUMNS, first + ROWS - 1),
                    data.sheet(), row);
            count++;
            if (!chart.note().isEmpty()) {
                shown.note(chart.note());
            }
        }
    }

    /** Resistance as left against as found, for each winding read both times in more places than one. */
    private static Map<String, Chart> resistances(RecordContext c) {
        Map<String, Chart> charts = new LinkedHashMap<>();
        for (WindingRole role : WindingRole.values()) {
            try {
                ResistanceChart.of(c.words().of(role), FoundAndLeft.of(c.job(), c.shop(), role),
                        c.shop().workshop().referenceCelsius(), Locale.ENGLISH)
                        .filter(chart -> chart.x().places().size() > 1)
                        .ifPresent(chart -> charts.put("resistance-" + role.word(), chart));
            } catch (OutOfRange e) {
                // The comparison sheet says which reading is out of range; there is nothing to draw of it.
                continue;
            }
        }
        return charts;
    }
}
