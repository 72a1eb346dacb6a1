package org.copperbook.batch;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes the whole workshop as an open archive. */
@Command(name = "archive", mixinStandardHelpOptions = true)
final class ArchiveCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", descriptionKey = "archive.file")
    private Path file;

    ArchiveCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        common.withStore(context, store -> {
            store.archive(file);
            return file;
        });
        if (common.json()) {
            CommonOptions.print(context, Map.of("file", file.toAbsolutePath().normalize().toString()));
        } else {
            context.out().println(BatchText.of("archive.done", common.place(context), file));
        }
        return ExitCode.DONE;
    }
}
