package org.copperbook.runup;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.desk.Desk;
import org.copperbook.desk.form.EnterMovesOn;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.verdict.VerdictWords;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.signoff.Role;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Concessions and judgements: choose a verdict that does not meet, give the reason, sign. */
final class OpenVerdictsArea {

    private final PageSite site;
    private final Words words;
    private final SignOffDesk desk;
    private final Combo verdict;
    private final Combo role;
    private final Text reason;
    private final Button concede;
    private final Button acceptable;
    private final Button notAcceptable;
    private final Label said;
    private final List<Role> roles = new ArrayList<>();
    private List<Verdict> open = List.of();
    private boolean shown;

    OpenVerdictsArea(Composite area, PageSite site, Words words, SignOffDesk desk) {
        this.site = site;
        this.words = words;
        this.desk = desk;
        Look look = Look.of(area);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(area);
        verdict = look.as(Look.Role.TEXT, new Combo(area, SWT.READ_ONLY));
        verdict.setData(Desk.ID, "open.verdict");
        verdict.setVisibleItemCount(20);
        SpokenName.give(verdict, words.text("signoffs.openTitle"));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(verdict);
        role = look.as(Look.Role.TEXT, new Combo(area, SWT.READ_ONLY));
        role.setData(Desk.ID, "open.role");
        SpokenName.give(role, words.text("signoffs.roleName"));
        reason = EnterMovesOn.from(look.as(Look.Role.TEXT, new Text(area, SWT.BORDER)));
        reason.setMessage(words.text("signoffs.reasonHint"));
        reason.setData(Desk.ID, "open.reason");
        SpokenName.give(reason, words.text("signoffs.reasonHint"));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(reason);
        // Beside each other where there is room, else one below the other.
        Composite row = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(8).wrap(true).applyTo(row);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(row);
        concede = button(row, look, "signoffs.concede", "open.concede");
        acceptable = button(row, look, "signoffs.judgeYes", "open.acceptable");
        notAcceptable = button(row, look, "signoffs.judgeNo", "open.notAcceptable");
        said = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(said);
        concede.addListener(SWT.Selection, e -> chosen(v -> desk.concede(v.id(), role(), reason.getText())));
        acceptable.addListener(SWT.Selection, e -> chosen(v -> desk.judge(v.id(), true, role(), reason.getText())));
        notAcceptable.addListener(SWT.Selection,
                e -> chosen(v -> desk.judge(v.id(), false, role(), reason.getText())));
        verdict.addListener(SWT.Selection, e -> enable());
    }

    void show(List<Verdict> ofJob) {
        List<Verdict> now = ofJob.stream().filter(Verdict::blocks)
                .filter(v -> v.outcome() != Outcome.NOT_MEASURED).toList();
        roles.clear();
        roles.addAll(desk.roles().keySet());
        role.setItems(desk.roles().values().toArray(String[]::new));
        role.select(0);
        if (!shown || !now.equals(open)) {
            shown = true;
            open = now;
            verdict.setItems(open.stream().map(v -> VerdictWords.of(v.outcome()) + ": " + v.title())
                    .toArray(String[]::new));
            if (open.isEmpty()) {
                verdict.add(words.text("signoffs.nothingOpen"));
            }
            verdict.select(0);
        }
        enable();
    }

    private void enable() {
        int i = verdict.getSelectionIndex();
        Verdict v = i >= 0 && i < open.size() ? open.get(i) : null;
        boolean noLimit = v != null && v.outcome() == Outcome.NO_LIMIT_SET;
        concede.setEnabled(v != null && !noLimit && v.concedable());
        acceptable.setEnabled(noLimit);
        notAcceptable.setEnabled(noLimit);
        if (v != null && !noLimit && !v.concedable()) {
            say(words.text("signoffs.cannotConcede"));
        } else if (v != null) {
            say(v.reason());
        } else {
            say("");
        }
    }

    private void chosen(java.util.function.Function<Verdict, List<String>> act) {
        int i = verdict.getSelectionIndex();
        if (i >= 0 && i < open.size()) {
            List<String> refused = act.apply(open.get(i));
            if (refused.isEmpty()) {
                reason.setText("");
                say(words.text("signoffs.recorded"));
            } else {
                say(String.join("\n", refused));
            }
        }
    }

    private Role role() {
        return role.getSelectionIndex() < 0 || site.who().isEmpty() ? null : roles.get(role.getSelectionIndex());
    }

    private void say(String text) {
        said.setText(text);
        said.requestLayout();
    }

    private Button button(Composite area, Look look, String key, String id) {
        Button b = look.as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        b.setText(words.text(key));
        b.setData(Desk.ID, id);
        return b;
    }
}
