package org.copperbook.office.hours;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.work.Hours;
import org.copperbook.office.AfterChanges;
import org.copperbook.store.JobStore;
import org.copperbook.store.RunningWork;
import org.copperbook.store.Saved;
import org.copperbook.store.StoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/**
 * Says who works on the job now, and whether whoever works at the screen works on another job at the same time; that work can be
 * stopped from here. The store is asked outside the window's thread.
 */
final class RunningArea {

    private static final PartKey HOURS = PartKey.of(PartKind.HOURS);
    private static final int PAUSE = 400;

    private final PageSite site;
    private final Words words;
    private final Display display;
    private final Label here;
    private final Label elsewhere;
    private final Button stop;
    private List<RunningWork> others = List.of();
    private String asked;
    private Instant askedAbout;

    RunningArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        display = area.getDisplay();
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        here = label(area, "hours.running");
        elsewhere = label(area, "hours.elsewhere");
        stop = PushButton.in(area, words, "hours.stopOther", this::stopOther);
        stop.setEnabled(false);
        AfterChanges again = new AfterChanges(area, PAUSE, this::read);
        JobStore.Listening listening = site.store().onChange(c -> {
            if (HOURS.toString().equals(c.part())) {
                later(again::changed);
            }
        });
        area.addDisposeListener(e -> listening.close());
    }

    private static Label label(Composite area, String id) {
        Look look = Look.of(area);
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        l.setData(Desk.ID, id);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(l);
        return l;
    }

    /** Shows who works here, and looks at the other jobs when that or who works at the screen has changed. */
    void show() {
        List<Hours.Running> running = site.document().part(site.key(), Hours.class).map(Hours::running).orElse(List.of());
        say(here, running.isEmpty() ? words.text("hours.nobody") : words.text("hours.working", running.stream()
                .map(this::named).collect(Collectors.joining("; "))));
        String now = site.who().orElse("") + running;
        if (!now.equals(asked)) {
            asked = now;
            read();
        }
    }

    private String named(Hours.Running r) {
        return words.text("hours.oneWorks", r.who() == null ? "" : site.shop().nameOf(r.who()), r.trade() == null ? "" : r.trade(),
                r.since() == null ? "" : Timer.time(r.since()));
    }

    private void read() {
        JobStore store = site.store();
        String job = site.document().id();
        String who = site.who().orElse("");
        new DeskJob(words.text("hours.lookingElsewhere"), monitor -> {
            try {
                List<RunningWork> found = who.isEmpty() ? List.of() : store.runningWork().stream()
                        .filter(r -> !r.jobId().equals(job) && who.equals(r.running().who()) && r.running().since() != null)
                        .toList();
                later(() -> answered(found));
            } catch (StoreException e) {
                later(() -> say(elsewhere, e.getMessage()));
            }
        }).schedule();
    }

    private void answered(List<RunningWork> found) {
        others = found;
        stop.setEnabled(!found.isEmpty());
        say(elsewhere, found.isEmpty() ? "" : words.text("hours.alsoOn", found.stream().map(r -> words.text("hours.onJob",
                r.number(), Timer.time(r.running().since()))).collect(Collectors.joining("; "))));
    }

    /** Stops the work on the first of the other jobs; what is too long to be so is asked about first. */
    private void stopOther() {
        Optional<String> who = site.who();
        if (who.isEmpty() || others.isEmpty()) {
            return;
        }
        RunningWork other = others.get(0);
        Instant since = other.running().since();
        BigDecimal worked = WorkStop.hoursSince(since, Instant.now());
        if (WorkStop.tooLong(worked) && !since.equals(askedAbout)) {
            askedAbout = since;
            say(elsewhere, words.text("hours.longOther", worked, Timer.time(since), WorkStop.LONGEST, other.number()));
            return;
        }
        JobStore store = site.store();
        stop.setEnabled(false);
        new DeskJob(words.text("hours.lookingElsewhere"), monitor -> {
            String said;
            try {
                said = stopped(store, other, worked, who.get());
            } catch (StoreException | BadRecordException e) {
                said = e.getMessage();
            }
            String answer = said;
            later(() -> {
                say(elsewhere, answer);
                others = List.of();
            });
        }).schedule();
    }

    private String stopped(JobStore store, RunningWork other, BigDecimal worked, String who) throws BadRecordException {
        Saved now = store.current(other.jobId(), HOURS).orElseThrow();
        Hours hours = (Hours) now.part();
        if (hours.running().stream().noneMatch(r -> Objects.equals(r.who(), who))) {
            return words.text("hours.otherStopped", other.number());
        }
        ObjectNode next = WorkStop.put(site.json().tree(hours), other.running(), worked);
        store.save(other.jobId(), HOURS, site.json().read(HOURS, next), now.number(), who, "");
        return words.text("hours.stoppedOther", worked, other.number());
    }

    private void later(Runnable then) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!here.isDisposed()) {
                    then.run();
                }
            });
        }
    }

    private static void say(Label label, String text) {
        if (!text.equals(label.getText())) {
            label.setText(text);
            label.requestLayout();
        }
    }
}
