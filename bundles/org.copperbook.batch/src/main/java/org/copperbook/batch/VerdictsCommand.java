package org.copperbook.batch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.check.WindingFigures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the verdicts and the hold points of a job. */
@Command(name = "verdicts", mixinStandardHelpOptions = true)
final class VerdictsCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    @Option(names = "--gating", descriptionKey = "verdicts.gating")
    private boolean gating;

    @Option(names = "--figures", descriptionKey = "verdicts.figures")
    private boolean figures;

    VerdictsCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Judged judged = common.withStore(context, store -> Judged.of(store, number));
        List<Verdict> shown = judged.verdicts().stream().filter(v -> !gating || v.current() && v.point() != null).toList();
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("number", judged.job().number());
            document.put("verdicts", shown);
            document.put("figures", WindingFigures.of(judged.job(), judged.shop()));
            document.put("holdPoints", judged.points());
            CommonOptions.print(context, document);
        } else {
            shown.forEach(this::print);
            if (figures) {
                WindingFigures.of(judged.job(), judged.shop()).forEach(this::print);
            }
            judged.points().stream().filter(HoldPointState::applies).forEach(this::print);
        }
        boolean failed = shown.stream().anyMatch(v -> v.current() && v.outcome() == Outcome.FAILS);
        return failed ? ExitCode.CHECK_FAILED : ExitCode.DONE;
    }

    private void print(Verdict v) {
        String figure = VerdictFigure.of(v);
        context.out().println(OneLine.of(BatchText.of(v.current() ? "verdicts.line" : "verdicts.line-earlier",
                BatchText.of("outcome." + v.outcome()), v.title(),
                figure.isEmpty() ? "" : BatchText.of("verdicts.figure", figure),
                v.limitText() == null || v.limitText().isBlank() ? "" : BatchText.of("verdicts.limit", v.limitText()))));
        say("verdicts.reason", v.reason());
        say("verdicts.settle", v.settle());
        say("verdicts.source", v.source());
    }

    private void print(HoldPointState p) {
        context.out().println(OneLine.of(BatchText.of("verdicts.point", BatchText.of("point." + p.point()),
                BatchText.of("state." + p.state()))));
        p.blockers().forEach(b -> say("verdicts.blocker", b));
        p.toSign().forEach(s -> say("verdicts.to-sign", s));
    }

    private void say(String key, String text) {
        if (text != null && !text.isBlank()) {
            context.out().println("    " + OneLine.of(BatchText.of(key, text)));
        }
    }
}
