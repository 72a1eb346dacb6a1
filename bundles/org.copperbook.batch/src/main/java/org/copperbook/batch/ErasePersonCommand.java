package org.copperbook.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.backup.Backups;
import org.copperbook.store.backup.Erasure;
import org.copperbook.store.backup.Erasure.Outcome;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Erases a person, a name typed into jobs, or a photo, for good. */
@Command(name = "erase-person", mixinStandardHelpOptions = true)
final class ErasePersonCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "KEY", descriptionKey = "erase-person.key")
    private String key;

    @Option(names = "--folder", paramLabel = "DIR", descriptionKey = "backup.folder")
    private Path folder;

    ErasePersonCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Path backups = folder == null ? Backups.beside(common.store(context)) : folder;
        Outcome done = common.withStore(context, s -> new Erasure(Clock.systemUTC()).erase(s, backups, key));
        if (common.json()) {
            CommonOptions.print(context, Map.of("erased", done.erased(), "aside",
                    done.aside().stream().map(Path::toString).toList()));
        } else {
            say(context, done);
        }
        return ExitCode.DONE;
    }

    static void say(BatchContext context, Outcome done) {
        context.out().println(BatchText.of("erase.done", done.erased().key(), done.erased().jobs().size(),
                String.join(" ", done.erased().jobs())));
        if (done.erased().plainTexts() > 0) {
            context.out().println(BatchText.of("erase.plain", done.erased().plainTexts()));
        }
        done.aside().forEach(f -> context.out().println(BatchText.of("erase.aside", f)));
    }
}
