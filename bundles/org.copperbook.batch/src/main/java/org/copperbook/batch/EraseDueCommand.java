package org.copperbook.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import org.copperbook.store.JobStore;
import org.copperbook.store.PrivateName;
import org.copperbook.store.backup.Backups;
import org.copperbook.store.backup.Erasure;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists, or erases, the names that the workshop has kept for as long as its settings say. */
@Command(name = "erase-due", mixinStandardHelpOptions = true)
final class EraseDueCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Option(names = "--yes", descriptionKey = "erase-due.yes")
    private boolean yes;

    @Option(names = "--folder", paramLabel = "DIR", descriptionKey = "backup.folder")
    private Path folder;

    EraseDueCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        return common.withStore(context, this::on);
    }

    private int on(JobStore store) {
        Erasure erasure = new Erasure(Clock.systemUTC());
        if (store.shop().workshop().keepNamesMonths() == null) {
            context.err().println(BatchText.of("erase.no-limit"));
            return ExitCode.DONE;
        }
        List<PrivateName> due = erasure.due(store);
        if (!yes) {
            PeopleCommand.print(context, common, due);
            return ExitCode.DONE;
        }
        Path backups = folder == null ? Backups.beside(store.file()) : folder;
        due.forEach(n -> ErasePersonCommand.say(context, erasure.erase(store, backups, n.key())));
        return ExitCode.DONE;
    }
}
