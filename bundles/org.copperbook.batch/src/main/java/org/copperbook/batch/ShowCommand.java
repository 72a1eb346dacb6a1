package org.copperbook.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.winding.BlindCounts;
import org.copperbook.store.JobStore;
import org.copperbook.store.Revision;
import org.copperbook.store.Saved;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows one job: who and what, where it stands, and which parts it has. */
@Command(name = "show", mixinStandardHelpOptions = true)
final class ShowCommand implements Callable<Integer> {

    private final BatchContext context;

    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "NUMBER", descriptionKey = "job.number")
    private String number;

    ShowCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        return common.withStore(context, store -> {
            String id = CommonOptions.jobId(store, number);
            Job job = store.load(id);
            Map<PartKey, Saved> parts = store.currentParts(id);
            if (common.json()) {
                CommonOptions.print(context, document(store, job, parts));
            } else {
                print(store, job, parts);
            }
            return ExitCode.DONE;
        });
    }

    private Map<String, Object> document(JobStore store, Job job, Map<PartKey, Saved> parts) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("number", job.number());
        document.put("id", job.id());
        document.put("stage", Stage.of(job).words());
        List<Map<String, Object>> revisions = new ArrayList<>();
        parts.values().forEach(s -> {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("part", s.key().toString());
            row.put("revision", s.number());
            row.put("savedAt", s.revision().savedAt());
            row.put("who", s.revision().who());
            row.put("why", s.revision().why());
            row.put("hash", s.revision().hash());
            revisions.add(row);
        });
        document.put("revisions", revisions);
        document.put("unknownParts", store.unknownParts(job.id()));
        try {
            document.put("job", context.json().mapper().readTree(new JobFile(context.json()).write(BlindCounts.covered(job))));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a job file just written cannot be read", e);
        }
        return document;
    }

    private void print(JobStore store, Job job, Map<PartKey, Saved> parts) {
        line("show.job", job.number());
        line("show.stage", Stage.of(job).words());
        job.booking().ifPresent(this::booking);
        job.nameplate().ifPresent(this::nameplate);
        context.out().println();
        TextTable table = new TextTable(BatchText.of("head.part"), BatchText.of("head.revision"),
                BatchText.of("head.saved"), BatchText.of("head.who"));
        for (Saved s : parts.values()) {
            Revision r = s.revision();
            table.row(s.key(), s.number(), r.savedAt(), store.shop().nameOf(r.who()));
        }
        table.print(context.out());
        store.unknownParts(job.id()).forEach(p -> line("show.unknown-part", p));
    }

    private void booking(Booking b) {
        line("show.customer", b.customer());
        line("show.machine", b.machine());
        line("show.fault", b.reportedFault());
        line("show.promised", b.promised());
    }

    private void nameplate(Nameplate n) {
        List<String> plate = new ArrayList<>();
        for (String text : new String[] {n.maker(), n.type(), n.serial()}) {
            if (text != null) {
                plate.add(text);
            }
        }
        if (n.apparentPowerVA() != null) {
            plate.add(BatchText.of("show.kva", Figure.plain(n.apparentPowerVA() / 1000)));
        } else if (n.powerW() != null) {
            plate.add(BatchText.of("show.kw", Figure.plain(n.powerW() / 1000)));
        }
        if (n.voltageV() != null) {
            plate.add(BatchText.of("show.volts", Figure.plain(n.voltageV())));
        }
        if (n.frequencyHz() != null) {
            plate.add(BatchText.of("show.hertz", Figure.plain(n.frequencyHz())));
        }
        if (n.speedRpm() != null) {
            plate.add(BatchText.of("show.rpm", Figure.plain(n.speedRpm())));
        }
        line("show.plate", String.join(", ", plate));
    }

    private void line(String key, Object value) {
        if (value != null && !value.toString().isBlank()) {
            context.out().println(OneLine.of(BatchText.of(key, value)));
        }
    }
}
