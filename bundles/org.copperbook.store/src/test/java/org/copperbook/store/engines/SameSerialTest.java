package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.copperbook.store.JobHandle;
import org.copperbook.store.RegisterRow;
import org.copperbook.store.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Jobs of machines with one serial number. */
@ParameterizedClass
@EnumSource(Engine.class)
class SameSerialTest extends OnEachEngine {

    private JobHandle withPlate(String serial) {
        JobHandle job = store.create(Sample.booking("Harbour Ice", "pump set"), "o");
        store.save(job.id(), Sample.NAMEPLATE, Sample.nameplate(serial), 0, "o", "");
        return job;
    }

    @Test
    void aSerialNumberIsFoundHoweverOldTheJobIsAndWhateverElseHasItsSigns() {
        JobHandle oldest = withPlate("S-77/4");
        for (int i = 0; i < 30; i++) {
            withPlate("S-77/4" + i);
        }
        JobHandle newest = withPlate(" s-77/4 ");
        assertEquals(List.of(newest.id(), oldest.id()), store.withSerial(" S-77/4").stream().map(RegisterRow::jobId).toList());
        assertEquals(List.of(), store.withSerial("S-77/04"), "another number");
        assertEquals(List.of(), store.withSerial(" "));
    }
}
