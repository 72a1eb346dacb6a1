package org.copperbook.store;

import org.copperbook.jobs.Job;
import org.copperbook.jobs.check.Stage;

/** Says where a job stands; the register shows it. Must be a pure function of the job. */
@FunctionalInterface
public interface StageOf {

    /** The stage as the checks see it. */
    StageOf CHECKS = job -> {
        Stage stage = Stage.of(job);
        return new Standpoint(stage.at().ordinal(), stage.words());
    };

    /** Where the job stands, never null. */
    Standpoint stageOf(Job job);

    /**
     * A stage in the register.
     *
     * @param order place in a job's life, by which the register sorts, 0 or more
     * @param words what it shows
     */
    record Standpoint(int order, String words) {

        public Standpoint {
            if (order < 0 || words == null) {
                throw new IllegalArgumentException("a stage needs a place from 0 and words: " + order + ", " + words);
            }
        }
    }
}
