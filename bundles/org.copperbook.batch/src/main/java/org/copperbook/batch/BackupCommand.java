package org.copperbook.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.backup.BackupPlan;
import org.copperbook.store.backup.Backups;
import org.copperbook.store.backup.Backups.Backup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a backup, proves it by restoring and auditing it, and removes old ones. */
@Command(name = "backup", mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Option(names = "--folder", paramLabel = "DIR", descriptionKey = "backup.folder")
    private Path folder;

    @Option(names = "--keep", paramLabel = "N", descriptionKey = "backup.keep")
    private int keep = BackupPlan.STANDARD.keep();

    @Option(names = "--days", paramLabel = "N", descriptionKey = "backup.days")
    private int days = BackupPlan.STANDARD.days();

    BackupCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (keep < 1 || days < 0) {
            throw new BadUse(BatchText.of("backup.bad-plan"));
        }
        Path to = folder == null ? Backups.beside(common.store(context)) : folder;
        Backup backup = common.withStore(context, store -> new Backups(to,
                new BackupPlan(Duration.ofHours(1), keep, days), Clock.systemUTC()).take(store));
        if (common.json()) {
            CommonOptions.print(context, Map.of("file", backup.file().toString(), "taken", backup.taken().toString()));
        } else {
            context.out().println(BatchText.of("backup.done", backup.file()));
        }
        return ExitCode.DONE;
    }
}
