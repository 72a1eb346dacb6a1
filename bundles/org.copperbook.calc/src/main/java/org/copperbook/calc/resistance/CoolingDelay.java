package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;

/**
 * How long after shutdown the first hot reading may come.
 * Source: IEC 60034-1, 8.6.2.3.3 and its table (values from memory of the table).
 *
 * @param limitSeconds the first reading may be taken as it is up to here, s
 * @param rating which line of the table applied
 */
public record CoolingDelay(double limitSeconds, String rating) {

    /** What the first reading's time allows. */
    public enum Use {
        /** In time: the reading is taken as the hot value. */
        AS_READ,
        /** Late, but by no more than twice the limit: extrapolate to the limit. */
        EXTRAPOLATE_TO_LIMIT,
        /** Later still: only by agreement between maker and customer. */
        BY_AGREEMENT
    }

    /** The limit for a rating in watt or volt-ampere; above 5 MW the time is a matter of agreement and is refused. */
    public static CoolingDelay forRating(double watts) {
        Require.positive("rated output", watts, "W");
        if (watts <= 50e3) {
            return new CoolingDelay(30, "up to 50 kW");
        }
        if (watts <= 200e3) {
            return new CoolingDelay(90, "above 50 kW to 200 kW");
        }
        Require.between("rated output", watts, 0, 5e6, "W", "above 5 MW the delay is agreed between the parties");
        return new CoolingDelay(120, "above 200 kW to 5 MW");
    }

    /** What a first reading after so many seconds allows. */
    public Use use(double firstReadingSeconds) {
        Require.notNegative("time of the first reading", firstReadingSeconds, "s");
        if (firstReadingSeconds <= limitSeconds) {
            return Use.AS_READ;
        }
        return firstReadingSeconds <= 2 * limitSeconds ? Use.EXTRAPOLATE_TO_LIMIT : Use.BY_AGREEMENT;
    }
}
