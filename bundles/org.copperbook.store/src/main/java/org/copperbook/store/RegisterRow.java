package org.copperbook.store;

import java.time.Instant;
import java.time.LocalDate;

/**
 * One job in the register. Every value is derived from the job's parts and can be made anew from them.
 *
 * @param jobId     key of the job
 * @param number    number
 * @param customer  customer, empty when not given
 * @param machine   short name of the machine, empty when not given
 * @param serial    serial number off the nameplate, empty when not given
 * @param stage     where the job stands, in words
 * @param promised  date promised, or null
 * @param changedAt when any part was last saved
 * @param voided    true when the job was cancelled or merged and its number is void
 */
public record RegisterRow(String jobId, String number, String customer, String machine, String serial, String stage,
        LocalDate promised, Instant changedAt, boolean voided) {
}
