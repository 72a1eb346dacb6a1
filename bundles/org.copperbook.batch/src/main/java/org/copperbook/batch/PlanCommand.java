package org.copperbook.batch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.jobs.check.PlannedStep;
import org.copperbook.jobs.check.TestPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints the test plan of a job's run-up: what is tested, at what level, in which order, and where each step stands. */
@Command(name = "plan", mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    PlanCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Judged judged = common.withStore(context, store -> Judged.of(store, number));
        List<PlannedStep> steps = TestPlan.of(judged.job(), judged.shop(), judged.verdicts());
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("number", judged.job().number());
            document.put("steps", steps);
            CommonOptions.print(context, document);
            return ExitCode.DONE;
        }
        int n = 1;
        for (PlannedStep s : steps) {
            context.out().println(OneLine.of(BatchText.of(s.required() ? "plan.line" : "plan.line-agreed", Integer.toString(n++),
                    s.title(), s.stateWord(), s.level().isEmpty() ? "" : BatchText.of("plan.level", s.level()))));
            s.cautionTitle().ifPresent(c -> context.out().println("    " + OneLine.of(BatchText.of("plan.cautions", c))));
            if (!s.source().isEmpty()) {
                context.out().println("    " + OneLine.of(BatchText.of("verdicts.source", s.source())));
            }
        }
        return ExitCode.DONE;
    }
}
