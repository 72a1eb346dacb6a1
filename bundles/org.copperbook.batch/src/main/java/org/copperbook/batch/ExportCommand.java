package org.copperbook.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.store.files.DurableFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a job as a job file. */
@Command(name = "export", mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "export.out")
    private Path out;

    ExportCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        String text = common.withStore(context, store -> {
            String id = CommonOptions.jobId(store, number);
            List<String> unknown = store.unknownParts(id);
            if (!unknown.isEmpty()) {
                context.err().println(OneLine.of(BatchText.of("export.unknown-parts", number, String.join(", ", unknown))));
            }
            Job job = store.load(id);
            if (BlindCounts.covered(job) != job) {
                // A file without them would lose them where it is taken in, and with them it would tell the first count.
                throw new BadUse(BatchText.of("export.counting", number));
            }
            return new JobFile(context.json()).write(job);
        });
        if (out == null) {
            context.out().print(text);
            context.out().flush();
            return ExitCode.DONE;
        }
        write(text);
        if (common.json()) {
            CommonOptions.print(context, Map.of("number", number, "file", out.toString()));
        } else {
            context.out().println(BatchText.of("export.done", number, out));
        }
        return ExitCode.DONE;
    }

    private void write(String text) {
        if (Files.isDirectory(out)) {
            throw new BadUse(BatchText.of("out.folder", out));
        }
        try {
            DurableFile.write(out, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadUse(BatchText.of("out.not-written", out, e.getMessage()));
        }
    }
}
