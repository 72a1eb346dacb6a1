package org.copperbook.runup.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.runup.LogQuantity;
import org.copperbook.sheets.log.LogColumn;
import org.copperbook.sheets.log.LogHead;
import org.copperbook.sheets.log.LogMapping;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Which column of a log carries what: one line for each column, with its first cells as an example. */
final class LogMappingArea {

    private static final int EXAMPLES = 3;

    private final Composite area;
    private final Words words;
    private final List<Combo> quantities = new ArrayList<>();
    private final List<Text> units = new ArrayList<>();
    private LogHead head;
    private double second = 1;

    LogMappingArea(Composite parent, Words words) {
        this.words = words;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(10, 4).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
    }

    void show(LogHead found, LogMapping mapping) {
        head = found;
        second = mapping.second();
        quantities.clear();
        units.clear();
        for (Control c : area.getChildren()) {
            c.dispose();
        }
        label("log.column", Look.Role.STRONG);
        label("log.carries", Look.Role.STRONG);
        label("log.unit", Look.Role.STRONG);
        label("log.example", Look.Role.STRONG);
        for (int i = 0; i < found.titles().size(); i++) {
            row(i, mapping);
        }
        area.requestLayout();
    }

    private void row(int index, LogMapping mapping) {
        Look look = Look.of(area);
        Label title = look.as(Look.Role.TEXT, new Label(area, SWT.NONE));
        title.setText(head.titles().get(index).replace("&", "&&"));
        Combo what = look.as(Look.Role.TEXT, new Combo(area, SWT.READ_ONLY));
        what.setData(Desk.ID, "log.quantity." + index);
        what.add(words.text("log.aside"));
        what.add(words.text("log.clock"));
        Arrays.stream(LogQuantity.values()).forEach(q -> what.add(words.of(q)));
        LogColumn column = mapping.columns().stream().filter(c -> c.index() == index).findFirst().orElse(null);
        boolean clock = mapping.clock() == index;
        what.select(clock ? 1 : column == null || column.quantity() == null ? 0 : 2 + column.quantity().ordinal());
        quantities.add(what);
        Text unit = look.as(Look.Role.TEXT, new Text(area, SWT.BORDER));
        unit.setData(Desk.ID, "log.unit." + index);
        unit.setText(column == null || column.unit() == null ? head.units().get(index) : column.unit());
        GridDataFactory.fillDefaults().hint(look.chars(10), SWT.DEFAULT).applyTo(unit);
        units.add(unit);
        Label example = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(look.chars(20), SWT.DEFAULT)
                .applyTo(example);
        example.setForeground(look.palette().muted());
        example.setText(String.join(", ", head.sample().stream().limit(EXAMPLES)
                .map(r -> index < r.size() ? r.get(index) : "").toList()).replace("&", "&&"));
    }

    private void label(String key, Look.Role role) {
        Label l = Look.of(area).as(role, new Label(area, SWT.NONE));
        l.setText(words.text(key));
    }

    /** The mapping as it is chosen now. */
    LogMapping chosen() {
        List<LogColumn> columns = new ArrayList<>();
        int clock = 0;
        for (int i = 0; i < quantities.size(); i++) {
            int choice = quantities.get(i).getSelectionIndex();
            clock = choice == 1 ? i : clock;
            columns.add(new LogColumn(i, head.titles().get(i), choice < 2 ? null : LogQuantity.values()[choice - 2],
                    units.get(i).getText().strip()));
        }
        return new LogMapping(head.titles(), clock, second, columns);
    }
}
