package org.copperbook.batch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.jobs.lot.LotUse;
import org.copperbook.store.LotSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Which jobs got a lot of diodes or resin. */
@Command(name = "lots", mixinStandardHelpOptions = true)
final class LotsCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "LOT", descriptionKey = "lots.lot")
    private String lot;

    LotsCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        LotSearch found = common.withStore(context, store -> store.usesOfLot(lot));
        if (common.json()) {
            CommonOptions.print(context, Map.of("uses", found.uses().stream().map(LotsCommand::row).toList(),
                    "unread", found.unread()));
            return ExitCode.DONE;
        }
        found.unread().forEach(n -> context.err().println(BatchText.of("lots.unread", n)));
        if (found.uses().isEmpty()) {
            context.err().println(BatchText.of("lots.none", lot));
            return ExitCode.DONE;
        }
        TextTable table = new TextTable(BatchText.of("head.number"), BatchText.of("head.part"),
                BatchText.of("head.lot-of"), BatchText.of("head.lot"), BatchText.of("head.positions"),
                BatchText.of("head.fitted"));
        for (LotUse u : found.uses()) {
            table.row(u.number(), u.part(), u.makersPart(), u.lot(), u.positions().isEmpty() ? BatchText.of("lots.all")
                    : String.join(", ", u.positions()), u.at());
        }
        table.print(context.out());
        return ExitCode.DONE;
    }

    private static Map<String, Object> row(LotUse u) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("number", u.number());
        row.put("part", u.part().toString());
        row.put("of", u.makersPart());
        row.put("lot", u.lot());
        row.put("positions", u.positions());
        row.put("at", u.at());
        return row;
    }
}
