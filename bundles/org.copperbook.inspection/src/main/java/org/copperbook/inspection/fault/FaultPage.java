package org.copperbook.inspection.fault;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.form.Section;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.inspection.InspectionPage;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.faults.DefaultFaultTables;
import org.copperbook.jobs.faults.FaultFinding;
import org.copperbook.jobs.faults.FaultReport;
import org.copperbook.jobs.faults.FaultTables;

/** Looking for the fault: symptoms and answers, the suspects they leave, and every step with its cautions. */
public final class FaultPage extends PartPage {

    private NextStepArea next;
    private SuspectsArea suspects;

    @Override
    protected Words words() {
        return Words.of(InspectionPage.class);
    }

    @Override
    protected void build(Form here) {
        here.words("fault.intro");
        FaultTables tables = DefaultFaultTables.unlessSound(site().shop().faultTables(), site().json());
        tables.tests().stream().filter(t -> t.id().equals(FaultFinding.SYMPTOMS))
                .forEach(t -> here.section("fault.symptoms").ticked("/symptoms", t.question(), outcomes(t)));
        next = new NextStepArea(here.area("fault.next"), words(), test -> form().reveal(pointer(test)));
        suspects = new SuspectsArea(here.area("fault.suspects"), words());
        Section answers = here.section("fault.answers");
        tables.tests().stream().filter(t -> !t.id().equals(FaultFinding.SYMPTOMS))
                .forEach(t -> answers.asked(pointer(t.id()), t.question(), outcomes(t),
                        NextStepArea.before(words(), FaultReport.cautions(t))));
        here.section("fault.noteTitle").longText("/note", "fault.note");
        show();
    }

    private static String pointer(String test) {
        return test.equals(FaultFinding.SYMPTOMS) ? "/symptoms" : "/answers/" + test;
    }

    private static Map<String, String> outcomes(FaultTables.TestRow test) {
        Map<String, String> labels = new LinkedHashMap<>();
        test.outcomes().forEach(o -> labels.put(o.id(), o.inWords()));
        return labels;
    }

    private void show() {
        FaultReport report = FaultReport.of(document().job(), site().shop(), site().verdicts());
        next.show(report);
        suspects.show(report);
    }

    @Override
    protected void changed() {
        show();
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        show();
    }
}
