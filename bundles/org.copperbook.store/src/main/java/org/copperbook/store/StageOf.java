package org.copperbook.store;

import org.copperbook.jobs.Job;

/** Says in words where a job stands; the register shows it. Must be a pure function of the job. */
@FunctionalInterface
public interface StageOf {

    /** The stage, never null; short enough for a column. */
    String stageOf(Job job);
}
