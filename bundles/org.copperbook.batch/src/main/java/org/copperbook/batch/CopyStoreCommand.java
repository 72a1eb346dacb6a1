package org.copperbook.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.JobStore;
import org.copperbook.store.copy.StoreCopy;
import org.copperbook.store.copy.StoreCopy.Copied;
import org.copperbook.store.files.OwnFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Copies a whole store into an empty one, between a file and a server or any other way round. */
@Command(name = "copy-store", mixinStandardHelpOptions = true)
final class CopyStoreCommand implements Callable<Integer> {

    private final BatchContext context;

    @Parameters(index = "0", paramLabel = "FROM", descriptionKey = "copy-store.from")
    private String from;

    @Parameters(index = "1", paramLabel = "TO", descriptionKey = "copy-store.to")
    private String to;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    CopyStoreCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        StorePlace source = StorePlace.parse(from);
        StorePlace target = StorePlace.parse(to);
        Copied copied = copy(source, target);
        if (json) {
            Map<String, Object> document = new LinkedHashMap<>();
            document.put("from", source.toString());
            document.put("to", target.toString());
            document.put("jobs", copied.jobs());
            document.put("revisions", copied.revisions());
            document.put("people", copied.people());
            document.put("lastHash", copied.lastHash());
            CommonOptions.print(context, document);
        } else {
            context.out().println(OneLine.of(BatchText.of("copy-store.done", source, target, copied.jobs(),
                    copied.revisions(), copied.people(), copied.lastHash())));
        }
        return ExitCode.DONE;
    }

    private Copied copy(StorePlace source, StorePlace target) {
        try {
            Path scratch = Files.createTempDirectory("copperbook-copy");
            try (JobStore a = source.openThere(context); JobStore b = target.open(context)) {
                return StoreCopy.copy(a, b, scratch);
            } finally {
                OwnFolder.remove(scratch);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
