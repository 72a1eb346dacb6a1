package org.copperbook.desk.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.Signing;
import org.copperbook.jobs.signoff.SignOffs;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * The cautions of a step that can hurt somebody. Records of the step can be begun only after the person at the screen
 * has acknowledged them by name, today and for this job; what is already on record stays readable.
 */
public final class CautionsGate {

    private final PageSite site;
    private final Hazardous step;
    private final List<Runnable> waiting = new ArrayList<>();
    private final Composite area;
    private boolean open;
    private Button button;
    private Label said;

    /** Puts the cautions on a form, before the records that they open. */
    public CautionsGate(Form here, String titleKey, PageSite site, Hazardous step) {
        this.site = site;
        this.step = step;
        area = here.area(titleKey);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(area);
        Look look = Look.of(area);
        for (String caution : Cautions.requiredFor(step)) {
            line(look, "\u2022 " + caution).setForeground(look.palette().muted());
        }
        open = acknowledgedToday();
        if (open) {
            line(look, acknowledged());
        } else {
            button = look.as(Look.Role.STRONG, new Button(area, SWT.PUSH));
            button.setText(DeskWords.text("gate.acknowledge"));
            button.setData(Desk.ID, "cautions." + step.word());
            button.addListener(SWT.Selection, e -> acknowledge());
            said = line(look, DeskWords.text("gate.first"));
        }
    }

    /** Does something once, as soon as the records of the step may be begun. */
    public void opens(Runnable records) {
        if (open) {
            records.run();
        } else {
            waiting.add(records);
        }
    }

    /** Person key of who acknowledged the cautions at this screen; empty while nobody has. */
    public Optional<String> acknowledgedBy() {
        return acknowledgedToday() ? site.who() : Optional.empty();
    }

    private String acknowledged() {
        return DeskWords.text("gate.done", site.people().getOrDefault(site.who().get(), site.who().get()));
    }

    private Label line(Look look, String text) {
        Label l = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        l.setText(text);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(l);
        return l;
    }

    private boolean acknowledgedToday() {
        LocalDate today = LocalDate.now();
        return site.who().isPresent() && site.document().job().signOffs().stream()
                .flatMap(s -> s.cautions().stream())
                .anyMatch(c -> step.word().equals(c.step()) && site.who().get().equals(c.by()) && c.at() != null
                        && today.equals(LocalDate.ofInstant(c.at(), ZoneId.systemDefault())));
    }

    private void acknowledge() {
        if (site.who().isEmpty()) {
            said.setText(DeskWords.text("gate.whoFirst"));
            said.requestLayout();
            return;
        }
        Signing.Result result = Signing.acknowledge(site.document().job(), site.shop(), step, site.who().get(),
                Instant.now().truncatedTo(ChronoUnit.SECONDS));
        if (result instanceof Signing.Result.Done done) {
            SignOffs next = done.signOffs();
            site.document().put(PartKey.of(PartKind.SIGN_OFFS), next);
            button.setEnabled(false);
            said.setText(acknowledged());
            open = true;
            waiting.forEach(Runnable::run);
            waiting.clear();
        } else if (result instanceof Signing.Result.Refused refused) {
            said.setText(String.join("\n", refused.reasons()));
        }
        said.requestLayout();
    }
}
