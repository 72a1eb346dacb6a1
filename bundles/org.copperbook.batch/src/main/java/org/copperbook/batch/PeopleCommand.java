package org.copperbook.batch;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.JobStore;
import org.copperbook.store.PrivateName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists whose names are kept, with the keys by which they are erased. */
@Command(name = "people", mixinStandardHelpOptions = true)
final class PeopleCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    PeopleCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        print(context, common, common.withStore(context, JobStore::privateNames));
        return ExitCode.DONE;
    }

    static void print(BatchContext context, CommonOptions common, List<PrivateName> names) {
        if (common.json()) {
            CommonOptions.print(context, Map.of("people", names));
            return;
        }
        TextTable table = new TextTable(BatchText.of("head.key"), BatchText.of("head.name"),
                BatchText.of("head.jobs"), BatchText.of("head.last"));
        for (PrivateName n : names) {
            table.row(n.key(), n.name(), String.join(" ", n.jobs()), n.lastUse());
        }
        table.print(context.out());
    }
}
