package org.copperbook.jobs.shop;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.copperbook.jobs.PhotoRef;

/**
 * An instrument with its accuracy and calibration.
 *
 * @param id             short id on the instrument's label
 * @param name           what it is ("micro-ohm bridge, four-wire")
 * @param kind           what it measures
 * @param ranges         accuracy by range, lowest range first
 * @param fourWire       true when it measures with four leads
 * @param leadOhm        resistance of leads and contacts not taken off, ohm (two-wire)
 * @param leadOhmU       its standard uncertainty, ohm
 * @param calibrated     date of the last calibration
 * @param calibrationDue date the calibration runs out
 * @param certificate    certificate number
 * @param certificates   every certificate that is kept; while one of them has a date, the newest of them gives the three
 *                       before
 * @param outOfUse       true for one that is not offered any more; readings taken with it keep naming it
 * @param note           remark, or null
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Instrument(String id, String name, Kind kind, List<Range> ranges, Boolean fourWire, Double leadOhm,
        Double leadOhmU, LocalDate calibrated, LocalDate calibrationDue, String certificate,
        List<Certificate> certificates, Boolean outOfUse, String note, @KeepUnknown Map<String, JsonNode> more) {

    /** What an instrument is for. */
    public enum Kind { MULTIMETER, RESISTANCE_BRIDGE, INSULATION_TESTER, THERMOMETER, TACHOMETER, SURGE_TESTER,
        WITHSTAND_TESTER, TORQUE_WRENCH, VIBRATION_METER, POWER_ANALYSER, MICROMETER, CLAMP_METER, OTHER }

    public Instrument {
        ranges = ranges == null ? List.of() : List.copyOf(ranges);
        certificates = certificates == null ? List.of() : List.copyOf(certificates);
        Optional<Certificate> newest = certificates.stream().filter(c -> c.date() != null)
                .max(Comparator.comparing(Certificate::date));
        if (newest.isPresent()) {
            calibrated = newest.get().date();
            calibrationDue = newest.get().due();
            certificate = newest.get().number();
        }
        more = more == null ? Map.of() : more;
    }

    /** An instrument in use of which no certificate is kept. */
    public Instrument(String id, String name, Kind kind, List<Range> ranges, Boolean fourWire, Double leadOhm,
            Double leadOhmU, LocalDate calibrated, LocalDate calibrationDue, String certificate, Map<String, JsonNode> more) {
        this(id, name, kind, ranges, fourWire, leadOhm, leadOhmU, calibrated, calibrationDue, certificate, null, null, null,
                more);
    }

    /**
     * A day on which no calibration was in force.
     *
     * @param ranOut   day on which the last one before had run out; null when there was none before
     * @param firstOne day of the first calibration that is kept, when it is later; null when one had run out
     */
    public record Lapse(LocalDate ranOut, LocalDate firstOne) {
    }

    /**
     * Whether no calibration was in force on a day, by the certificates of before that day: one that came later says nothing of
     * it. A certificate that does not say when it runs out leaves what the others say.
     *
     * @return empty when one was in force, or when nobody has said when any runs out
     */
    public Optional<Lapse> lapsedOn(LocalDate day) {
        List<Certificate> kept = certificates.stream().filter(c -> c.date() != null).toList();
        if (kept.isEmpty()) {
            kept = List.of(new Certificate(certificate, null, calibrated, calibrationDue, null, null, null));
        }
        List<Certificate> before = kept.stream().filter(c -> c.date() == null || !c.date().isAfter(day)).toList();
        if (before.isEmpty()) {
            return kept.stream().map(Certificate::date).min(Comparator.naturalOrder()).map(d -> new Lapse(null, d));
        }
        return before.stream().map(Certificate::due).filter(Objects::nonNull).max(Comparator.naturalOrder())
                .filter(day::isAfter).map(d -> new Lapse(d, null));
    }

    /** Whether it is offered. */
    public boolean inUse() {
        return !Boolean.TRUE.equals(outOfUse);
    }

    /**
     * A calibration certificate.
     *
     * @param number     its number
     * @param laboratory who calibrated
     * @param date       day of the calibration
     * @param due        day it runs out
     * @param note       remark, or null
     * @param scans      pictures of it
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Certificate(String number, String laboratory, LocalDate date, LocalDate due, String note,
            List<PhotoRef> scans, @KeepUnknown Map<String, JsonNode> more) {
        public Certificate {
            scans = scans == null ? List.of() : List.copyOf(scans);
            more = more == null ? Map.of() : more;
        }
    }

    /**
     * Accuracy in one range: +/-(percent of reading + digits x resolution).
     *
     * @param quantity         "ohm", "V", "A", "degC", "r/min", "N m", "mm/s", "mm"
     * @param upTo             upper end of the range, SI (N m, mm/s, mm as named)
     * @param resolution       smallest step shown, same unit
     * @param percentOfReading percent of reading
     * @param digits           counts of the last digit
     */
    @JsonInclude(JsonInclude.Include.NON_EMPTY)
    public record Range(String quantity, Double upTo, Double resolution, Double percentOfReading, Double digits,
            @KeepUnknown Map<String, JsonNode> more) {
        public Range {
            more = more == null ? Map.of() : more;
        }
    }
}
