package org.copperbook.store;

import org.copperbook.jobs.work.Hours;

/**
 * Work on a job that was begun and not stopped yet.
 *
 * @param jobId   key of the job
 * @param number  its number
 * @param running who, since when and at which trade
 */
public record RunningWork(String jobId, String number, Hours.Running running) {
}
