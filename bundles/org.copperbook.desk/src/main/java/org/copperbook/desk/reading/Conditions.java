package org.copperbook.desk.reading;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.copperbook.jobs.reading.Reading;

/**
 * What holds for the readings typed from now on, so that a winder states it once and not beside every figure.
 *
 * @param windingCelsius winding temperature, degrees Celsius; null when not taken
 * @param instrument     id of the instrument, or null
 * @param method         two-wire or four-wire, or null
 * @param isolated       leads lifted or not, or null
 */
public record Conditions(Double windingCelsius, String instrument, Reading.Method method, Boolean isolated) {

    /** Nothing stated yet. */
    public static final Conditions NONE = new Conditions(null, null, null, null);

    /** The conditions of a reading taken before, to go on with. */
    public static Conditions of(Reading reading) {
        return new Conditions(reading.windingCelsius(), reading.instrument(), reading.method(), reading.isolated());
    }

    /** Writes what is stated into a new reading. */
    public void writeTo(ObjectNode reading) {
        if (windingCelsius != null) {
            reading.put("windingCelsius", windingCelsius);
        }
        if (instrument != null) {
            reading.put("instrument", instrument);
        }
        if (method != null) {
            reading.put("method", method.name());
        }
        if (isolated != null) {
            reading.put("isolated", isolated);
        }
    }
}
