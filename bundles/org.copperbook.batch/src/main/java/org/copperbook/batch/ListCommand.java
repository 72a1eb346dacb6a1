package org.copperbook.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterColumn;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.RegisterSort;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the jobs of the store. */
@Command(name = "list", mixinStandardHelpOptions = true)
final class ListCommand implements Callable<Integer> {

    private static final int PAGE = 500;

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Option(names = "--find", paramLabel = "TEXT", defaultValue = "", descriptionKey = "list.find")
    private String find;

    ListCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        List<RegisterRow> rows = common.withStore(context, store -> rows(store, find));
        if (common.json()) {
            CommonOptions.print(context, Map.of("jobs", rows));
            return ExitCode.DONE;
        }
        if (rows.isEmpty()) {
            context.err().println(BatchText.of(find.isEmpty() ? "list.none" : "list.none-found"));
            return ExitCode.DONE;
        }
        TextTable table = new TextTable(BatchText.of("head.number"), BatchText.of("head.stage"),
                BatchText.of("head.customer"), BatchText.of("head.machine"), BatchText.of("head.promised"));
        for (RegisterRow r : rows) {
            table.row(r.number(), r.stage(), r.customer(), r.machine(), r.promised());
        }
        table.print(context.out());
        return ExitCode.DONE;
    }

    /** All rows that fit, smallest number first. */
    static List<RegisterRow> rows(JobStore store, String find) {
        RegisterSort sort = new RegisterSort(RegisterColumn.NUMBER, true);
        List<RegisterRow> rows = new ArrayList<>();
        RegisterSlice slice;
        do {
            slice = store.register(new RegisterQuery(find, rows.size(), PAGE, sort));
            rows.addAll(slice.rows());
        } while (!slice.rows().isEmpty() && rows.size() < slice.total());
        return rows;
    }
}
