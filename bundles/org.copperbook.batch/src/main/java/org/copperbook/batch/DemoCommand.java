package org.copperbook.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.store.JobStore;
import org.copperbook.store.files.OwnFolder;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.demo.DemoShop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes the invented demo workshop through its checks and writes the workbooks of every job. */
@Command(name = "demo", mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Option(names = "--data", paramLabel = "DIR", descriptionKey = "demo.data")
    private Path data;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "demo-workbooks", descriptionKey = "demo.out")
    private Path out;

    DemoCommand(BatchContext context) {
        this.context = context;
    }

    /**
     * A job of the demo, worked.
     *
     * @param row       as the register shows it
     * @param judged    as the checks see it
     * @param workbooks what was written
     */
    private record Worked(RegisterRow row, Judged judged, List<Path> workbooks) {
    }

    @Override
    public Integer call() throws IOException {
        Path folder = (data == null ? context.demoData() : data).toAbsolutePath().normalize();
        if (!Files.isDirectory(folder)) {
            throw new BadUse(BatchText.of("demo.no-data", folder));
        }
        if (common.storeNamed()) {
            return work(folder, common.place(context));
        }
        Path scratch = Files.createTempDirectory("copperbook-demo");
        try {
            return work(folder, new StorePlace.InFile(scratch.resolve("demo.sqlite")));
        } finally {
            OwnFolder.remove(scratch);
        }
    }

    private int work(Path folder, StorePlace place) {
        List<Worked> all = new ArrayList<>();
        try (JobStore store = place.open(context)) {
            if (new DemoShop(folder).load(store).isEmpty()) {
                throw new BadUse(BatchText.of("demo.store-in-use", place));
            }
            JobWorkbooks workbooks = new JobWorkbooks(store, out);
            for (RegisterRow row : ListCommand.rows(store, "")) {
                Judged judged = Judged.of(store, row.number());
                all.add(new Worked(row, judged, workbooks.write(judged)));
            }
        } catch (BadRecordException | IOException e) {
            throw new BadUse(BatchText.of("demo.bad-data", folder, e.getMessage()));
        }
        if (common.json()) {
            CommonOptions.print(context, Map.of("jobs", all.stream().map(DemoCommand::document).toList()));
        } else {
            print(all);
        }
        return ExitCode.DONE;
    }

    private void print(List<Worked> all) {
        context.out().println(BatchText.of("demo.title"));
        TextTable table = new TextTable(BatchText.of("head.number"), BatchText.of("head.stage"),
                BatchText.of("head.machine"), BatchText.of("outcome.MEETS"), BatchText.of("outcome.DOUBTFUL"),
                BatchText.of("outcome.FAILS"), BatchText.of("outcome.NOT_MEASURED"), BatchText.of("outcome.NO_LIMIT_SET"),
                BatchText.of("head.signed"));
        for (Worked w : all) {
            table.row(w.row().number(), w.row().stage(), w.row().machine(), w.judged().count(Outcome.MEETS),
                    w.judged().count(Outcome.DOUBTFUL), w.judged().count(Outcome.FAILS),
                    w.judged().count(Outcome.NOT_MEASURED), w.judged().count(Outcome.NO_LIMIT_SET), signed(w.judged()));
        }
        table.print(context.out());
        context.out().println();
        context.out().println(BatchText.of("demo.workbooks", all.stream().mapToInt(w -> w.workbooks().size()).sum(),
                out.toAbsolutePath().normalize()));
        all.forEach(w -> w.workbooks().forEach(b -> context.out().println("  " + b.getFileName())));
    }

    /** Hold points signed of those that apply, as "4 of 5". */
    private static String signed(Judged judged) {
        List<HoldPointState> points = judged.points().stream().filter(HoldPointState::applies).toList();
        return BatchText.of("demo.signed", points.stream().filter(p -> p.state() == HoldPointState.State.SIGNED).count(),
                points.size());
    }

    private static Map<String, Object> document(Worked w) {
        Map<String, Object> d = new LinkedHashMap<>();
        d.put("number", w.row().number());
        d.put("stage", w.row().stage());
        Map<String, Long> counts = new LinkedHashMap<>();
        for (Outcome o : Outcome.values()) {
            counts.put(o.name(), w.judged().count(o));
        }
        d.put("verdicts", counts);
        d.put("holdPoints", w.judged().points());
        d.put("workbooks", w.workbooks().stream().map(Path::toString).toList());
        return d;
    }
}
