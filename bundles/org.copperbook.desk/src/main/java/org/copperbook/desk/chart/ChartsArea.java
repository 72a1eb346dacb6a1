package org.copperbook.desk.chart;

import java.util.LinkedHashMap;
import java.util.Map;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.sheets.chart.Chart;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The charts of a page, one for each name; one whose points are gone goes too. */
public final class ChartsArea {

    private final Composite area;
    private final Runnable relayout;
    private final Label none;
    private final Map<String, ChartArea> charts = new LinkedHashMap<>();

    /**
     * @param words    texts of the page; the one under "charts.none" stands there while there are no charts
     * @param relayout lays the page out anew when the number of charts changes
     */
    public ChartsArea(Composite area, Words words, Runnable relayout) {
        this.area = area;
        this.relayout = relayout;
        GridLayoutFactory.fillDefaults().numColumns(1).spacing(12, 12).applyTo(area);
        none = Look.of(area).as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        none.setText(words.text("charts.none"));
        GridDataFactory.fillDefaults().grab(true, false).hint(Look.of(area).wrapping(), SWT.DEFAULT).applyTo(none);
    }

    /** Shows these charts by name. */
    public void show(Map<String, Chart> now) {
        boolean changed = charts.keySet().removeIf(name -> {
            boolean gone = !now.containsKey(name);
            if (gone) {
                charts.get(name).dispose();
            }
            return gone;
        });
        for (Map.Entry<String, Chart> e : now.entrySet()) {
            if (!charts.containsKey(e.getKey())) {
                ChartArea made = new ChartArea(area, "chart." + e.getKey());
                GridDataFactory.fillDefaults().grab(true, false).applyTo(made);
                charts.put(e.getKey(), made);
                changed = true;
            }
            charts.get(e.getKey()).show(e.getValue());
        }
        if (changed) {
            none.setVisible(charts.isEmpty());
            ((org.eclipse.swt.layout.GridData) none.getLayoutData()).exclude = !charts.isEmpty();
            area.layout(true, true);
            relayout.run();
        }
    }
}
