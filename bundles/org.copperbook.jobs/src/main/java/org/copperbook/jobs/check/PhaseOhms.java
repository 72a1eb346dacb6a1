package org.copperbook.jobs.check;

import java.time.Instant;
import java.util.List;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.jobs.PartKey;

/**
 * The resistance of one phase, section, field or coil group at the reference temperature.
 *
 * @param key          stable key ("u", "u1-u2", "whole", "group-3")
 * @param label        as people call it ("phase U", "U1-U2", "group 3")
 * @param like         what it was read across
 * @param atReference  ohm at the reference temperature, with what it shares with its set
 * @param byMeterOnly  the same without the uncertainty of the temperature
 * @param kelvinU      standard uncertainty of the temperature as it counts at the reference, kelvin
 * @param meters       instruments behind it
 * @param part         part it stands in
 * @param path         JSON pointer of the reading beside which it is shown
 * @param at           when the newest reading behind it was taken; null when not stated
 * @param remark       what is to be said beside it; empty when nothing
 */
record PhaseOhms(String key, String label, Like like, Traced atReference, Uncertain byMeterOnly, double kelvinU,
        List<MeterUse> meters, PartKey part, String path, Instant at, String remark) {
}
