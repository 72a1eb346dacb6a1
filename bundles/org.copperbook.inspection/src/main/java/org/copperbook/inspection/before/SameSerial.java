package org.copperbook.inspection.before;

import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterRow;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** Says on the plate's page when its serial number stands on other jobs too: the same machine, or one number misread. */
public final class SameSerial {

    /** More than these nobody reads in one sentence; the newest are named. */
    private static final int MOST_NAMED = 8;
    private static final int LEAST_CHARS = 2;
    private static final int MOST_CHARS = 200;
    private static final int PAUSE = 150;

    private final Composite area;
    private final PageSite site;
    private final Words words;
    private final Label said;
    private final Runnable whenQuiet = this::ask;
    private String asked = "";

    public SameSerial(Composite area, PageSite site, Words words) {
        this.area = area;
        this.site = site;
        this.words = words;
        GridLayoutFactory.fillDefaults().applyTo(area);
        Look look = Look.of(area);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "plate.sameSerial");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        say("");
    }

    /** Looks again when the serial number has changed. */
    public void follow() {
        if (!serial().equals(asked)) {
            area.getDisplay().timerExec(PAUSE, whenQuiet);
        }
    }

    private String serial() {
        return site.document().part(site.key(), Nameplate.class).map(Nameplate::serial).map(String::strip)
                .filter(s -> s.length() >= LEAST_CHARS && s.length() <= MOST_CHARS).orElse("");
    }

    private void ask() {
        String serial = area.isDisposed() ? asked : serial();
        if (serial.equals(asked)) {
            return;
        }
        asked = serial;
        if (serial.isEmpty()) {
            said(serial, List.of());
            return;
        }
        JobStore store = site.store();
        Display display = area.getDisplay();
        new DeskJob(words.text("before.looking"), monitor -> {
            List<RegisterRow> rows = store.withSerial(serial);
            display.asyncExec(() -> said(serial, rows));
        }).schedule();
    }

    private void said(String serial, List<RegisterRow> rows) {
        if (area.isDisposed() || !serial.equals(asked)) {
            return;
        }
        List<RegisterRow> others = rows.stream().filter(r -> !r.jobId().equals(site.document().id())).toList();
        String jobs = others.stream().limit(MOST_NAMED)
                .map(r -> words.text("plate.onJob", r.number(), r.machine(), r.customer())).collect(Collectors.joining("; "))
                + (others.size() > MOST_NAMED ? "; " + words.text("plate.onMore", others.size() - MOST_NAMED) : "");
        say(jobs.isEmpty() ? "" : words.text("plate.sameSerial", serial, jobs));
        Grown.tell(area);
    }

    private void say(String text) {
        said.setText(text);
        said.setVisible(!text.isEmpty());
        ((org.eclipse.swt.layout.GridData) said.getLayoutData()).exclude = text.isEmpty();
    }
}
