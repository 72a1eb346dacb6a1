package org.copperbook.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.editor.JobInput;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.Closure;
import org.copperbook.jobs.booking.Standing.How;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PlatformUI;

/** Leads from a job merged into another to that one, and from there to all that were merged into it, with what they hold. */
final class MergedJobs {

    private static final int MOST = 50;

    /** A job at the other end of a merging. */
    private record Link(String jobId, String number, String words) {
    }

    private final Composite area;
    private final PageSite site;
    private final Words words;
    private List<Link> shown = List.of();
    private String askedFor;

    MergedJobs(Composite area, PageSite site, Words words) {
        this.area = area;
        this.site = site;
        this.words = words;
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(area);
    }

    /** Looks for the jobs at the other end when there may be others than were shown. */
    void follow() {
        String number = site.document().number();
        String into = site.document().part(site.key(), Standing.class).map(Standing::closure)
                .filter(c -> c.how() == How.MERGED).map(Closure::into).orElse("");
        String now = number + ">" + into;
        if (number.isEmpty() || now.equals(askedFor)) {
            return;
        }
        askedFor = now;
        JobStore store = site.store();
        Display display = area.getDisplay();
        new DeskJob(words.text("merged.looking"), monitor -> {
            List<Link> links = new ArrayList<>();
            if (!into.isEmpty()) {
                store.idOf(into).ifPresent(id -> links.add(new Link(id, into, words.text("merged.into", into))));
            }
            for (RegisterRow row : store.register(new RegisterQuery(number, 0, MOST, null)).rows()) {
                if (row.voided() && isMergedInto(number, store, row.jobId())) {
                    links.add(new Link(row.jobId(), row.number(), words.text("merged.from", row.number())));
                }
            }
            display.asyncExec(() -> show(now, links));
        }).schedule();
    }

    private static boolean isMergedInto(String number, JobStore store, String jobId) {
        return store.current(jobId, PartKey.of(PartKind.STANDING)).map(s -> ((Standing) s.part()).closure())
                .filter(Objects::nonNull).filter(c -> c.how() == How.MERGED && number.equals(c.into())).isPresent();
    }

    private void show(String asked, List<Link> links) {
        if (area.isDisposed() || !asked.equals(askedFor) || links.equals(shown)) {
            return;
        }
        shown = links;
        for (var c : area.getChildren()) {
            c.dispose();
        }
        Look look = Look.of(area);
        for (Link link : links) {
            Label said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
            said.setText(link.words());
            said.setData(Desk.ID, "merged.said." + link.number());
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER)
                    .hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
            Button open = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
            open.setText(words.text("merged.open", link.number()));
            open.setData(Desk.ID, "merged.open." + link.number());
            open.addListener(SWT.Selection, e -> open(link));
        }
        Reach.ensure(area);
        area.requestLayout();
    }

    private static void open(Link link) {
        new JobInput(link.jobId(), link.number()).openIn(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage());
    }
}
