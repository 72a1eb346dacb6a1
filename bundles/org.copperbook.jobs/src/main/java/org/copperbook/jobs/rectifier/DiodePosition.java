package org.copperbook.jobs.rectifier;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.copperbook.jobs.json.KeepUnknown;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.copperbook.jobs.reading.Reading;

/**
 * One diode position.
 *
 * @param position         its mark, "D1" ... "D6"
 * @param plate            the plate (heat sink) it sits on
 * @param basePolarity     polarity of the stud base of the diode in it now (the fitted one once a set is fitted)
 * @param lead             exciter-rotor lead it serves ("U", "V", "W")
 * @param asFoundForward   forward reading as found
 * @param asFoundReverse   reverse reading as found
 * @param asLeftForward    forward reading as left, read isolated before the bridge is closed
 * @param asLeftReverse    reverse reading as left
 * @param torqueNm         torque applied at this stud, N m
 * @param lot              lot or date code on the diode in it; null when it is the one of the set
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record DiodePosition(String position, Plate plate, BasePolarity basePolarity, String lead,
        Reading asFoundForward, Reading asFoundReverse, Reading asLeftForward, Reading asLeftReverse,
        Double torqueNm, String lot, @KeepUnknown Map<String, JsonNode> more) {

    /** The two plates, by the polarity of the direct-current side they carry. */
    public enum Plate {
        POSITIVE(BasePolarity.CATHODE_BASE), NEGATIVE(BasePolarity.ANODE_BASE);

        private final BasePolarity base;

        Plate(BasePolarity base) {
            this.base = base;
        }

        /** The base of the diodes that belong on it. */
        public BasePolarity base() {
            return base;
        }
    }

    /** Which electrode the stud base is. */
    public enum BasePolarity { CATHODE_BASE, ANODE_BASE }

    public DiodePosition {
        more = more == null ? Map.of() : more;
    }
}
