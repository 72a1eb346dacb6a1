package org.copperbook.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the workbooks of a job. */
@Command(name = "workbooks", mixinStandardHelpOptions = true)
final class WorkbooksCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "", descriptionKey = "workbooks.out")
    private Path out;

    @Option(names = "--quote-template", paramLabel = "FILE", descriptionKey = "workbooks.quote-template")
    private Path template;

    WorkbooksCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        List<String> written = common.withStore(context, store -> new JobWorkbooks(store, out, template)
                .write(Judged.of(store, number)).stream().map(Path::toString).toList());
        if (common.json()) {
            CommonOptions.print(context, Map.of("number", number, "workbooks", written));
        } else {
            written.forEach(context.out()::println);
        }
        return ExitCode.DONE;
    }
}
