package org.copperbook.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.copperbook.batch.JobFileReader.ReadJob;
import org.copperbook.store.Intake;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.NumberTaken;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes job files into the store: every file named, or none of them. */
@Command(name = "take-in", mixinStandardHelpOptions = true)
final class TakeInCommand implements Callable<Integer> {

    private final BatchContext context;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "FILE", arity = "0..*", descriptionKey = "take-in.file")
    private List<Path> files = List.of();

    @Option(names = "--shop", paramLabel = "DIR", descriptionKey = "take-in.shop")
    private Path shop;

    @Option(names = "--new-number", descriptionKey = "take-in.new-number")
    private boolean newNumber;

    @Option(names = "--who", paramLabel = "KEY", defaultValue = CommonOptions.NOBODY_NAMED, descriptionKey = "take-in.who")
    private String who;

    TakeInCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (files.isEmpty() && shop == null) {
            throw new ParameterException(spec.commandLine(), BatchText.of("take-in.nothing"));
        }
        // Everything is read before the store is touched, so that a bad file leaves nothing behind, not even a store.
        JobFileReader reader = new JobFileReader(context.json());
        List<ReadJob> read = files.stream().map(reader::read).toList();
        Optional<ShopFolder> own = Optional.ofNullable(shop).map(s -> new ShopFolder(context.json(), s));
        Intake intake = new Intake(own.map(ShopFolder::parts).orElse(Map.of()),
                own.map(ShopFolder::people).orElse(List.of()), own.map(ShopFolder::kept).orElse(List.of()), read.stream().map(ReadJob::job).toList());
        List<JobHandle> taken;
        try (JobStore store = common.open(context)) {
            taken = store.takeIn(intake, CommonOptions.who(store, who),
                    BatchText.of("take-in.why"), newNumber ? NumberTaken.GIVE_NEW_NUMBER : NumberTaken.REFUSE);
        }
        own.ifPresent(o -> o.notes().forEach(n -> context.err().println(OneLine.of(n))));
        read.forEach(r -> r.notes().forEach(n -> context.err().println(OneLine.of(n))));
        if (common.json()) {
            CommonOptions.print(context, Map.of("takenIn", rows(read, taken)));
        } else {
            own.ifPresent(o -> context.out().println(BatchText.of("take-in.shop-done", o.fileCount(), o.people().size())));
            for (int i = 0; i < taken.size(); i++) {
                context.out().println(OneLine.of(BatchText.of("take-in.done", taken.get(i).number(), read.get(i).file())));
            }
        }
        return ExitCode.DONE;
    }

    private static List<Map<String, Object>> rows(List<ReadJob> read, List<JobHandle> taken) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int i = 0; i < taken.size(); i++) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("file", read.get(i).file().toString());
            row.put("number", taken.get(i).number());
            row.put("id", taken.get(i).id());
            row.put("notes", read.get(i).notes());
            rows.add(row);
        }
        return rows;
    }
}
