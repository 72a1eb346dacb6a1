package org.copperbook.rectifier;

import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.Desk;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.check.Verdict;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says what follows from the readings as found for the set as a whole, and begins the record of a new one. */
final class SetProposal {

    private final PageSite site;
    private final Words words;
    private final Label said;
    private final Button begin;

    SetProposal(Composite area, PageSite site, Words words) {
        this.site = site;
        this.words = words;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        said = look.as(Look.Role.STRONG, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(said);
        begin = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        begin.setText(words.text("set.begin"));
        begin.setData(Desk.ID, "rectifier.completeSet");
        begin.addListener(SWT.Selection, e -> begin());
    }

    void judged(List<Verdict> ofJob) {
        boolean fitted = site.document().value(site.key(), "/fitted").isObject();
        Verdict set = ofJob.stream().filter(v -> v.id().equals("rectifier.complete-set")).findFirst().orElse(null);
        boolean propose = set != null && set.outcome() == Outcome.FAILS && !fitted;
        said.setText(set == null ? words.text("set.notRead") : set.reason());
        said.setForeground(set == null ? Look.of(said).palette().muted() : Look.of(said).palette().of(set.outcome()));
        begin.setEnabled(propose && site.blocked().isEmpty());
        said.requestLayout();
    }

    private void begin() {
        site.document().change(site.key(), "/fitted/complete", t -> {
            t.withObject("/fitted").put("complete", true);
            if (!t.hasNonNull("reasonForChange")) {
                t.put("reasonForChange", words.text("set.reason"));
            }
            return t;
        });
        begin.setEnabled(false);
    }
}
