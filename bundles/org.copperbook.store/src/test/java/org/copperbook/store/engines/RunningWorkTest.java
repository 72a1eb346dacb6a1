package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.work.Hours;
import org.copperbook.store.JobHandle;
import org.copperbook.store.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Who works on which job now. */
@ParameterizedClass
@EnumSource(Engine.class)
class RunningWorkTest extends OnEachEngine {

    private static final PartKey HOURS = PartKey.of(PartKind.HOURS);

    private void hours(JobHandle job, int basedOn, String fields) {
        store.save(job.id(), HOURS, Sample.part("hours", "{\"schema\":1" + fields + "}", Hours.class), basedOn, "o", "");
    }

    @Test
    void whoHasBegunAndNotStoppedIsFoundInEveryJob() {
        JobHandle one = store.create(Sample.booking("Harbour Ice", "pump set"), "o");
        JobHandle two = store.create(Sample.booking("Mill", "fan"), "o");
        String anna = ",\"running\":[{\"who\":\"anna\",\"since\":\"2026-03-02T07:00:00Z\"}]";
        hours(one, 0, anna);
        hours(two, 0, anna.replace("anna", "boris"));
        assertEquals(List.of(one.number() + " anna", two.number() + " boris"), store.runningWork().stream()
                .map(r -> r.number() + " " + r.running().who()).sorted().toList());
        hours(one, 1, ",\"entries\":[{\"who\":\"anna\",\"hours\":2,\"note\":\"running in\"}]");
        assertEquals(List.of(two.id()), store.runningWork().stream().map(r -> r.jobId()).toList(), "the newest revision counts");
    }
}
