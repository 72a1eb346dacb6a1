package org.copperbook.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.JobFile;
import org.copperbook.jobs.json.PartJson;

/** An invented job: a brushless alternator that came with a burnt main stator and a shorted diode. */
final class SampleRecord {

    private SampleRecord() {
    }

    static Job job() {
        try (InputStream in = SampleRecord.class.getResourceAsStream("sample-job.json")) {
            return new JobFile(new PartJson()).read(in);
        } catch (BadRecordException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
