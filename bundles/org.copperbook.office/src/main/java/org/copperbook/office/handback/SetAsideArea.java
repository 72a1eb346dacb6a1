package org.copperbook.office.handback;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.Desk;
import org.copperbook.desk.editor.DeskJob;
import org.copperbook.desk.form.PushButton;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.stock.StockItem;
import org.copperbook.jobs.stock.StockMovement;
import org.copperbook.office.AfterChanges;
import org.copperbook.store.JobStore;
import org.copperbook.store.StoreException;
import org.copperbook.store.stock.StockMove;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** Says what of the stock is set aside for the job, and gives it free for others, as when the job ends. */
public final class SetAsideArea {

    private static final int PAUSE = 400;

    private record Aside(String code, String name, BigDecimal amount, String unit) {
    }

    private final PageSite site;
    private final Words words;
    private final Display display;
    private final Label said;
    private final Button release;
    private final JobStore.Listening listening;
    private List<Aside> aside = List.of();
    private boolean asked;
    private boolean ended;

    public SetAsideArea(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).extendedMargins(0, 0, 0, 10).applyTo(area);
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        said.setData(Desk.ID, "aside.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        release = PushButton.in(area, words, "aside.release", this::release);
        release.setEnabled(false);
        said.setText(words.text("aside.none"));
        display = area.getDisplay();
        AfterChanges again = new AfterChanges(area, PAUSE, this::read);
        listening = site.store().onChange(c -> {
            if (c.part() != null && c.part().startsWith(PartKind.STOCK_ITEM.word() + "/")) {
                later(again::changed);
            }
        });
        area.addDisposeListener(e -> listening.close());
    }

    /** Shows what is set aside, in other words once the job has ended. */
    public void show() {
        boolean now = site.document().job().standing().map(s -> s.isClosed()).orElse(false);
        if (!asked) {
            asked = true;
            ended = now;
            read();
        } else if (now != ended) {
            ended = now;
            tell();
        }
    }

    private void read() {
        JobStore store = site.store();
        String job = site.document().id();
        new DeskJob(words.text("aside.looking"), monitor -> {
            try {
                List<Aside> found = store.stock().items().stream().map(s -> (StockItem) s.part())
                        .filter(i -> i.reservedFor(job).signum() > 0)
                        .map(i -> new Aside(i.code(), i.name(), i.reservedFor(job), i.unit().sign())).toList();
                later(() -> answered(found, null));
            } catch (StoreException e) {
                later(() -> answered(List.of(), e.getMessage()));
            }
        }).schedule();
    }

    private void answered(List<Aside> found, String problem) {
        aside = found;
        tell();
        if (problem != null) {
            say(problem);
        }
    }

    private void tell() {
        release.setEnabled(!aside.isEmpty());
        // The stock is read once more for what was just given free.
        if (aside.isEmpty() && said.getText().equals(words.text("aside.released"))) {
            return;
        }
        String all = aside.stream().map(a -> words.text("aside.one", a.amount().stripTrailingZeros().toPlainString(), a.unit(),
                a.code(), a.name() == null ? "" : a.name())).collect(Collectors.joining("; "));
        say(aside.isEmpty() ? words.text("aside.none") : words.text(ended ? "aside.ended" : "aside.some", all));
    }

    private void release() {
        Optional<String> who = site.who();
        if (who.isEmpty()) {
            say(words.text("stock.whoFirst"));
            return;
        }
        JobStore store = site.store();
        String job = site.document().id();
        List<StockMove> moves = aside.stream().map(a -> new StockMove(a.code(),
                StockMovement.of(StockMovement.Kind.RELEASE, a.amount(), job, Instant.now()))).toList();
        release.setEnabled(false);
        new DeskJob(words.text("aside.looking"), monitor -> {
            String problem = null;
            try {
                store.stock().move(moves, who.get());
            } catch (StoreException e) {
                problem = e.getMessage();
            }
            String answer = problem;
            later(() -> released(answer));
        }).schedule();
    }

    private void released(String problem) {
        if (problem == null) {
            aside = List.of();
            say(words.text("aside.released"));
        } else {
            read();
            say(problem);
        }
    }

    private void later(Runnable then) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!said.isDisposed()) {
                    then.run();
                }
            });
        }
    }

    private void say(String text) {
        if (!text.equals(said.getText())) {
            said.setText(text);
            said.requestLayout();
        }
    }
}
