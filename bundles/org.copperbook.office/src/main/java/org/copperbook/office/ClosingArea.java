package org.copperbook.office;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.EnterMovesOn;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.booking.Standing.Closure;
import org.copperbook.jobs.booking.Standing.How;
import org.copperbook.jobs.check.HandingBack;
import org.copperbook.jobs.check.Merging;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Closes a job: how it ended and why, put down as one step so that no half of it is ever on record. */
final class ClosingArea {

    private static final String CLOSURE = "/closure";
    private static final int LABEL_CHARS = 14;

    private final PageSite site;
    private final Words words;
    private final Combo how;
    private final Text reason;
    private final Text into;
    private final Button close;
    private final Label said;
    private boolean saidClosed;

    ClosingArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(area);
        how = look.as(Look.Role.TEXT, new Combo(area, SWT.READ_ONLY));
        for (How h : How.values()) {
            how.add(words.of(h));
        }
        how.setData(Desk.ID, "closing.how");
        SpokenName.give(how, words.text("closing.howName"));
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.BEGINNING, SWT.CENTER).applyTo(how);
        reason = text(area, look, "closing.reason");
        into = text(area, look, "closing.into");
        close = look.as(Look.Role.STRONG, new Button(area, SWT.PUSH));
        close.setText(words.text("closing.close"));
        close.setData(Desk.ID, "closing.close");
        close.addListener(SWT.Selection, e -> close());
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.BEGINNING, SWT.CENTER).applyTo(close);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "closing.said");
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        how.addListener(SWT.Selection, e -> into.setEnabled(chosen() == How.MERGED));
        into.setEnabled(false);
    }

    /** Shows how the job stands now. */
    void show() {
        Optional<Closure> closure = site.document().part(site.key(), Standing.class).map(Standing::closure);
        boolean open = closure.isEmpty() && site.blocked().isEmpty();
        how.setEnabled(open);
        reason.setEnabled(open);
        into.setEnabled(open && chosen() == How.MERGED);
        close.setEnabled(open);
        if (closure.isEmpty() && saidClosed) {
            say("");
        }
        saidClosed = closure.isPresent();
        closure.ifPresent(c -> say(words.text(c.into() == null ? "closing.closed" : "closing.closedInto", c.how() == null ? "" : words.of(c.how()),
                c.at() == null ? "" : Days.ofLocale().moment(c.at()),
                c.reason() == null ? "" : c.reason(), c.into())));
    }

    private How chosen() {
        return how.getSelectionIndex() < 0 ? null : How.values()[how.getSelectionIndex()];
    }

    private void close() {
        How chosen = chosen();
        if (chosen == null) {
            say(words.text("closing.howFirst"));
            return;
        }
        if (reason.getText().isBlank() && (chosen == How.CANCELLED || chosen == How.MERGED)) {
            say(words.text("closing.reasonFirst"));
            return;
        }
        Optional<String> refused = new HandingBack(site.document().job()).refused(chosen, reason.getText());
        if (refused.isPresent()) {
            say(refused.get());
            return;
        }
        if (chosen == How.MERGED) {
            merge(reason.getText().strip(), into.getText().strip());
        } else {
            put(chosen, reason.getText().strip(), null);
        }
    }

    /** Looks at the other job outside the window's thread before this one is made void. */
    private void merge(String why, String number) {
        if (number.isEmpty()) {
            Merging.refused(site.document().job(), number, Optional.empty()).ifPresent(this::say);
            into.setFocus();
            return;
        }
        JobStore store = site.store();
        Job here = site.document().job();
        Display display = close.getDisplay();
        close.setEnabled(false);
        say(words.text("closing.looking", number));
        new DeskJob(words.text("closing.looking", number), monitor -> {
            String answer;
            String found = number;
            try {
                Optional<Job> other = store.idOf(number).map(store::load);
                answer = Merging.refused(here, number, other).orElse(null);
                found = other.map(Job::number).orElse(number);
            } catch (StoreException e) {
                answer = e.getMessage();
            }
            String refused = answer;
            String into = found;
            display.asyncExec(() -> looked(refused, why, into));
        }).schedule();
    }

    private void looked(String refused, String why, String number) {
        if (close.isDisposed()) {
            return;
        }
        show();
        if (refused != null) {
            say(refused);
        } else if (site.blocked().isPresent()) {
            say(site.blocked().get());
        } else {
            put(How.MERGED, why, number);
        }
    }

    private void put(How chosen, String why, String number) {
        ObjectNode closure = site.json().mapper().createObjectNode().put("how", chosen.name());
        if (!why.isEmpty()) {
            closure.put("reason", why);
        }
        if (number != null) {
            closure.put("into", number);
        }
        closure.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        site.who().ifPresent(w -> closure.put("by", w));
        site.document().change(site.key(), CLOSURE, tree -> {
            tree.set("closure", closure);
            return tree;
        }).ifPresent(this::say);
    }

    /** A line with its words before it, which wrap so that the line has room in a narrow page. */
    private Text text(Composite area, Look look, String key) {
        Label label = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        label.setText(words.text(key));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(look.chars(LABEL_CHARS), SWT.DEFAULT).applyTo(label);
        Text t = EnterMovesOn.from(look.as(Look.Role.TEXT, new Text(area, SWT.BORDER)));
        t.setData(Desk.ID, key);
        SpokenName.give(t, words.text(key));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(t);
        return t;
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }
}
