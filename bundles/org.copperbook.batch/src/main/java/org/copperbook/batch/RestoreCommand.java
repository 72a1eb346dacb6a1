package org.copperbook.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.copperbook.store.backup.Restore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Puts a backup in the place of the store, which is set aside and kept. */
@Command(name = "restore", mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "BACKUP", descriptionKey = "restore.backup")
    private Path backup;

    RestoreCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (common.onServer()) {
            throw new BadUse(BatchText.of("restore.server"));
        }
        Path store = common.store(context);
        Optional<Path> aside = new Restore(Clock.systemUTC()).replace(backup, store);
        if (common.json()) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("file", store.toString());
            aside.ifPresent(a -> document.put("aside", a.toString()));
            CommonOptions.print(context, document);
        } else {
            context.out().println(BatchText.of("restore.done", store, backup));
            aside.ifPresent(a -> context.out().println(BatchText.of("restore.aside", a)));
        }
        return ExitCode.DONE;
    }
}
