/**
 * Checks as pure functions from a job's parts, the limits and the instruments to verdicts; hold points, signing and the
 * stage of a job, all derived and never stored.
 */
package org.copperbook.jobs.check;
