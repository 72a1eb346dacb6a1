package org.copperbook.jobs.check;

import java.time.Instant;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.signoff.HoldPoint;

/**
 * What a check says about one thing, the same on every page, in every workbook and on the command line.
 *
 * @param id        stable id of the thing judged, e.g. "main-stator.unbalance.as-found"; concessions name it
 * @param part      part it belongs to
 * @param title     what was judged, in words
 * @param outcome   meets, doubtful, fails, not measured or no limit set
 * @param value     the value judged, in {@code unit}; null when not measured
 * @param expandedU expanded uncertainty (k = 2), same unit; null when unknown
 * @param bounds    the limit; null when none is set
 * @param unit      unit of value and bounds ("ohm", "1", "V", "K", "mm/s"; "1" is a fraction shown in per cent); empty
 *                  for a plain number such as an index
 * @param limitText the limit in words
 * @param source    source of the limit, with its edition
 * @param reason    why this outcome, one sentence
 * @param settle    what would settle a doubt or what to do next; empty when nothing
 * @param path      JSON pointer inside the part of the reading it stands beside; empty for the whole part
 * @param concedable whether a signed concession may pass a failure (never for withstand, earth fault, polarity, diodes)
 * @param point     hold point that waits for this verdict; null when it informs only (as found, or a second limit that
 *                  does not decide)
 * @param takenAt   when the newest evidence behind it was taken; null when not stated
 * @param current   false for an earlier attempt that a later one replaced: it stays on record and decides nothing
 */
public record Verdict(String id, PartKey part, String title, Outcome outcome, Double value, Double expandedU,
        Bounds bounds, String unit, String limitText, String source, String reason, String settle, String path,
        boolean concedable, HoldPoint point, Instant takenAt, boolean current) {

    /** A verdict that no hold point waits for. */
    public Verdict(String id, PartKey part, String title, Outcome outcome, Double value, Double expandedU,
            Bounds bounds, String unit, String limitText, String source, String reason, String settle, String path,
            boolean concedable) {
        this(id, part, title, outcome, value, expandedU, bounds, unit, limitText, source, reason, settle, path,
                concedable, null, null, true);
    }

    /** The same under another id. */
    Verdict withId(String other) {
        return new Verdict(other, part, title, outcome, value, expandedU, bounds, unit, limitText, source, reason, settle,
                path, concedable, point, takenAt, current);
    }

    /** Whether a hold point waits for this verdict and it does not meet its limit. */
    public boolean blocks() {
        return current && point != null && outcome != Outcome.MEETS;
    }
}
