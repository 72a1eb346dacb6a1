package org.copperbook.inspection.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.copperbook.desk.Desk;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Grown;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.faults.FaultReport;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What to do next, why, and what to mind before it. */
final class NextStepArea {

    private final Words words;
    private final Label step;
    private final Label why;
    private final Label cautions;
    private final Button there;
    private FaultReport shown;
    private String test = "";

    /**
     * @param goTo puts the cursor on the answer of a test
     */
    NextStepArea(Composite area, Words words, Consumer<String> goTo) {
        this.words = words;
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        step = line(area, Look.Role.STRONG, "fault.nextStep");
        why = line(area, Look.Role.TEXT, "fault.why");
        why.setForeground(Look.of(area).palette().muted());
        cautions = line(area, Look.Role.TEXT, "fault.cautions");
        there = Look.of(area).as(Look.Role.TEXT, new Button(area, SWT.PUSH));
        there.setText(words.text("fault.goThere"));
        there.setData(Desk.ID, "fault.goThere");
        there.addListener(SWT.Selection, e -> goTo.accept(test));
    }

    void show(FaultReport report) {
        if (report.equals(shown) || step.isDisposed()) {
            return;
        }
        shown = report;
        test = report.next().map(FaultReport.NextStep::test).orElse("");
        String question = report.next().map(FaultReport.NextStep::question).orElse(words.text("fault.nothingLeft"));
        step.setText(report.verdict().isEmpty() ? question : report.verdict());
        List<String> reasons = new ArrayList<>();
        if (!report.practice().isEmpty()) {
            reasons.add(words.text("fault.practice", report.practice()));
        }
        if (!report.verdict().isEmpty()) {
            report.next().ifPresent(n -> reasons.add(n.question()));
        }
        report.next().ifPresent(n -> reasons.add(n.why()));
        reasons.addAll(report.notes());
        why.setText(String.join("\n", reasons));
        cautions.setText(before(words, report.next().map(FaultReport.NextStep::cautions).orElse(List.of())));
        there.setEnabled(!test.isEmpty());
        Grown.tell(step);
    }

    /** Cautions as they are shown before a step; empty where there are none. */
    static String before(Words words, List<String> cautions) {
        return cautions.isEmpty() ? "" : words.text("fault.cautions") + "\n\u2022 " + String.join("\n\u2022 ", cautions);
    }

    static Label line(Composite area, Look.Role role, String id) {
        Look look = Look.of(area);
        Label label = look.as(role, new Label(area, SWT.WRAP));
        label.setData(Desk.ID, id);
        GridDataFactory.fillDefaults().grab(true, false).hint(look.wrapping(), SWT.DEFAULT).applyTo(label);
        return label;
    }
}
