package org.copperbook.inspection.fault;

import java.util.List;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Rows;
import org.copperbook.jobs.faults.FaultReport;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The suspects, the likeliest first; below them what speaks for and against the marked one, and all that was counted. */
final class SuspectsArea {

    private static final int NAME_CHARS = 34;
    private static final int FIGURE_CHARS = 14;

    private final Words words;
    private final Table table;
    private final Label evidence;
    private final Label taken;
    private FaultReport shown;

    SuspectsArea(Composite area, Words words) {
        this.words = words;
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        Look look = Look.of(area);
        table = look.as(Look.Role.TEXT, new Table(area, SWT.FULL_SELECTION | SWT.BORDER | SWT.SINGLE));
        table.setHeaderVisible(true);
        table.setData(Desk.ID, "fault.table");
        SpokenName.give(table, words.text("fault.suspects"));
        Rows.dress(table, column -> false);
        column("fault.suspect", look.chars(NAME_CHARS));
        column("fault.probability", look.chars(FIGURE_CHARS));
        table.addListener(SWT.Selection, e -> explain());
        evidence = NextStepArea.line(area, Look.Role.TEXT, "fault.evidence");
        taken = NextStepArea.line(area, Look.Role.TEXT, "fault.taken");
        taken.setForeground(look.palette().muted());
    }

    private void column(String key, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(words.text(key));
        column.setWidth(width);
    }

    void show(FaultReport report) {
        if (report.equals(shown) || table.isDisposed()) {
            return;
        }
        shown = report;
        table.setItemCount(0);
        for (FaultReport.SuspectLine s : report.suspects()) {
            new TableItem(table, SWT.NONE).setText(new String[] {s.inWords(),
                    words.text("fault.percent", 100 * s.probability())});
        }
        table.setSelection(0);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, table.getHeaderHeight()
                + Math.max(table.getItemHeight(), Look.of(table).rowHeight())
                * (report.suspects().size() + 1)).applyTo(table);
        String counted = report.taken().isEmpty() ? words.text("fault.takenNone")
                : "\u2022 " + String.join("\n\u2022 ", report.taken().stream().map(t -> t.from().isEmpty() ? t.inWords()
                        : words.text("fault.takenFrom", t.inWords(), t.from())).toList());
        taken.setText(words.text("fault.taken") + "\n" + counted + "\n" + words.text("fault.origin", report.origin()));
        explain();
    }

    private void explain() {
        int row = Math.max(0, table.getSelectionIndex());
        if (row < shown.suspects().size()) {
            FaultReport.SuspectLine s = shown.suspects().get(row);
            evidence.setText(words.text("fault.evidence", s.inWords(), sentences(s.speaksFor()),
                    sentences(s.speaksAgainst())));
        }
        Grown.tell(table);
    }

    private String sentences(List<String> of) {
        return of.isEmpty() ? words.text("fault.noEvidence") : String.join(" ", of);
    }
}
