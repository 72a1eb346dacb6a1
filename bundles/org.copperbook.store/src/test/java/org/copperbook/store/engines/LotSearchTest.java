package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.lot.LotUse;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.store.JobHandle;
import org.copperbook.store.JobStore;
import org.copperbook.store.LotSearch;
import org.copperbook.store.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class LotSearchTest {

    private static final PartKey RECTIFIER = PartKey.parse("rectifier");

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    private static RectifierSet set(String lot) {
        return Sample.part("rectifier", "{\"schema\":1,\"fitted\":{\"makersPart\":\"SD-40\",\"lot\":\"" + lot + "\"}}",
                RectifierSet.class);
    }

    private static JobHandle job(JobStore store, String lot) {
        JobHandle job = store.create(Sample.booking("Quarry", "set"), "w");
        store.save(job.id(), RECTIFIER, set(lot), 0, "w", "");
        return job;
    }

    @Test
    void theJobsThatGotALotAreFoundByTheirNumber() {
        try (JobStore store = engine.place(folder).open()) {
            JobHandle first = job(store, "2026-18");
            job(store, "2025-40");
            JobHandle third = job(store, "2026-18");
            store.create(Sample.booking("Mill", "motor"), "w");
            LotSearch found = store.usesOfLot(" 2026-18 ");
            assertEquals(List.of(first.number(), third.number()), found.uses().stream().map(LotUse::number).toList());
            assertEquals(List.of(), found.unread());
            assertEquals(List.of(), store.usesOfLot("18").uses());
            assertEquals(List.of(), store.usesOfLot("").uses());
        }
    }

    @Test
    void onlyTheCurrentRevisionCounts() {
        try (JobStore store = engine.place(folder).open()) {
            JobHandle job = job(store, "2026-18");
            store.save(job.id(), RECTIFIER, set("2026-19"), 1, "w", "lot was read off wrongly");
            assertEquals(List.of(), store.usesOfLot("2026-18").uses());
            assertEquals(1, store.usesOfLot("2026-19").uses().size());
        }
    }
}
