package org.copperbook.desk.form;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.copperbook.desk.Desk;
import org.copperbook.desk.document.PartTree;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Cautions;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.jobs.signoff.SignOffs.CautionAcknowledged;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * The cautions of a step that can hurt, shown where the step is taken. Where the step asks for it, what stands behind
 * stays closed until somebody has acknowledged them by name; the acknowledgement is kept in the job's sign-offs.
 */
final class CautionGate {

    private static final PartKey SIGN_OFFS = PartKey.of(PartKind.SIGN_OFFS);
    private static final int CHARS = 80;

    private final PageSite site;
    private final Hazardous step;
    private final Clock clock;
    private final Label said;
    private final Button acknowledge;

    CautionGate(Composite parent, PageSite site, Hazardous step, Clock clock) {
        this.site = site;
        this.step = step;
        this.clock = clock;
        Look look = Look.of(parent);
        Composite frame = new Composite(parent, SWT.NONE);
        frame.setBackground(look.palette().problem());
        frame.setData(Desk.ID, "caution/" + step.word());
        GridLayoutFactory.fillDefaults().extendedMargins(4, 0, 0, 0).applyTo(frame);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(frame);
        Composite box = new Composite(frame, SWT.NONE);
        box.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND));
        GridLayoutFactory.fillDefaults().margins(10, 6).spacing(0, 2).applyTo(box);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(box);
        Label title = look.as(Look.Role.STRONG, new Label(box, SWT.NONE));
        title.setText(DeskWords.text("caution.title", Cautions.title(step)));
        for (String caution : Cautions.requiredFor(step)) {
            Label line = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
            line.setText("\u2022 " + caution);
            GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(line);
        }
        said = look.as(Look.Role.TEXT, new Label(box, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(CHARS), SWT.DEFAULT).applyTo(said);
        acknowledge = step.acknowledgedByName() ? look.as(Look.Role.TEXT, new Button(box, SWT.PUSH)) : null;
        if (acknowledge != null) {
            acknowledge.setData(Desk.ID, "caution/" + step.word() + "/acknowledge");
            acknowledge.addListener(SWT.Selection, e -> acknowledge());
        }
    }

    /** Whether what stands behind may be opened. */
    boolean isOpen() {
        return !step.acknowledgedByName() || last().isPresent();
    }

    /** Shows who has acknowledged, or who could. */
    void refresh() {
        if (acknowledge == null || acknowledge.isDisposed()) {
            return;
        }
        Optional<CautionAcknowledged> last = last();
        said.setText(last.map(c -> DeskWords.text("caution.acknowledged", site.shop().nameOf(c.by()),
                String.valueOf(c.at()))).orElseGet(() -> DeskWords.text("caution.closed")));
        acknowledge.setText(site.who().map(k -> DeskWords.text("caution.acknowledge", site.shop().nameOf(k)))
                .orElseGet(() -> DeskWords.text("caution.nobody")));
        acknowledge.setEnabled(site.who().isPresent());
        acknowledge.setVisible(last.isEmpty());
    }

    private void acknowledge() {
        ObjectNode entry = site.json().mapper().createObjectNode().put("step", step.word())
                .put("by", site.who().orElseThrow())
                .put("at", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString());
        site.document().change(SIGN_OFFS, "/cautions",
                t -> PartTree.withRow(t, "/cautions", PartTree.size(t, "/cautions"), entry))
                .ifPresent(problem -> said.setText(problem));
    }

    private Optional<CautionAcknowledged> last() {
        return site.document().part(SIGN_OFFS, SignOffs.class).flatMap(s -> s.cautions().stream()
                .filter(c -> step.word().equals(c.step())).reduce((a, b) -> b));
    }
}
