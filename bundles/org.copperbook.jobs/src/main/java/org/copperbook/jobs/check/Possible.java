package org.copperbook.jobs.check;

import java.util.HashMap;
import java.util.Map;

/**
 * What a figure of a record can possibly be. These are no limits of good work: only what no machine, meter or workshop
 * can ever show stands outside.
 *
 * @param lower         lowest possible figure
 * @param lowerIncluded whether the lowest figure itself is possible
 * @param upper         highest possible figure
 * @param what          the thing in words, as in "a speed"
 */
record Possible(double lower, boolean lowerIncluded, double upper, String what) {

    /** Beyond this nothing in a workshop can be, whatever the unit. */
    static final double ANYTHING = 1e15;

    private static final double ABSOLUTE_ZERO = -273.15;

    private static final Map<String, Possible> BY_FIELD = table();

    /** What the field of a record can be; null when nothing is known of it. */
    static Possible ofField(String field) {
        return BY_FIELD.get(field);
    }

    boolean holds(double value) {
        return (lowerIncluded ? value >= lower : value > lower) && value <= upper;
    }

    /** Why a figure cannot be, as a sentence without a subject: "is -3, but a speed is above 0". */
    String refusal(double value) {
        String is = "is " + plain(value) + ", but " + what + " ";
        if (value > upper) {
            return is + "is at most " + plain(upper);
        }
        return is + (lowerIncluded ? "is at least " : "is above ") + plain(lower);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Long.toString((long) value) : Double.toString(value);
    }

    private static Possible above(double lower, double upper, String what) {
        return new Possible(lower, false, upper, what);
    }

    static Possible from(double lower, double upper, String what) {
        return new Possible(lower, true, upper, what);
    }

    private static Map<String, Possible> table() {
        Map<String, Possible> t = new HashMap<>();
        put(t, from(ABSOLUTE_ZERO, 3000, "a temperature"), "windingCelsius", "ambientCelsius", "minAmbientCelsius",
                "meanCelsius", "hottestCelsius", "burnOutMaxCelsius", "preheatCelsius", "cureCelsius", "sheetCureCelsius", "driveEndCelsius",
                "nonDriveEndCelsius", "referenceCelsius", "coolantCelsius", "atCelsius");
        put(t, from(0, 500, "the uncertainty of a temperature"), "temperatureU");
        put(t, above(0, 1e10, "a rating"), "apparentPowerVA", "powerW");
        put(t, above(0, 1e6, "a voltage"), "voltageV", "expectedV", "setPointV", "testVolts", "repetitivePeakV");
        put(t, from(0, 1e6, "a voltage"), "rotorV", "excitationV", "mainFieldV", "batteryV", "exciterV", "volts", "peakVolts",
                "lowestV", "highestV");
        put(t, above(0, 1e6, "a current"), "currentA", "averageA");
        put(t, from(0, 1e6, "a current"), "rotorA", "excitationA", "mainFieldA", "exciterA", "amps", "loadA");
        put(t, from(0, 1e9, "a power"), "watts");
        put(t, above(0, 1e5, "a frequency"), "frequencyHz");
        put(t, above(0, 1e6, "a speed"), "speedRpm", "overspeedRpm");
        put(t, from(0, 100, "the uncertainty of a speed in percent"), "speedPercentU");
        put(t, above(0, 1, "a power factor"), "powerFactor");
        put(t, from(0, 100, "the number of phases"), "phases");
        put(t, from(1, 1000, "the number of leads"), "leads");
        put(t, from(1800, 2200, "a year of manufacture"), "year");
        put(t, from(-1000, 20000, "an altitude"), "altitudeM");
        put(t, above(0, 1e6, "a mass"), "massKg", "yokeMassKg", "liftingMassKg");
        put(t, from(0, 1e6, "a mass"), "copperRemovedKg", "onHandKg");
        put(t, above(0, 1e4, "a shaft height"), "shaftHeightMm");
        put(t, from(0, 100, "relative humidity"), "humidityPercent");
        put(t, from(0, 1e8, "a time"), "afterSeconds", "seconds", "minutes", "burnOutHours", "preheatMinutes",
                "soakMinutes", "cureMinutes", "sheetCureMinutes", "durationMinutes", "responseSeconds");
        put(t, from(1, 2000, "a number of slots"), "slots");
        put(t, from(1, 2000, "a slot number"), "goSlot", "returnSlot");
        put(t, from(1, 1e5, "a count"), "layers", "coilCount", "coilsPerGroup", "groupsPerPhase", "circuits",
                "circuit", "strands", "number", "group", "ordinal", "attempt", "revision");
        put(t, from(1, 1e6, "a number of turns"), "turns", "turnsPerCoil");
        put(t, from(0, 1000, "a number of vents"), "ventCount");
        put(t, above(0, 100, "a length in metres"), "meanTurnM", "coreLengthM", "boreM", "outsideM", "slotDepthM",
                "slotWidthTopM", "slotWidthBottomM", "toothWidthM", "yokeDepthM");
        put(t, from(0, 100, "a length in metres"), "leadLengthM", "overhangDEM", "overhangNDEM", "ventWidthM");
        put(t, above(0, 100, "a wire diameter in millimetres"), "bareMm", "coveredMm");
        put(t, above(0, 1e4, "a size in millimetres"), "nominalMm", "measuredMm", "acrossMm", "lowerMm", "upperMm", "diameterMm");
        put(t, from(0, 1000, "a runout in millimetres"), "runoutMm", "limitMm");
        put(t, above(0, 1e7, "a moment of inertia"), "inertiaKgM2");
        put(t, from(0, 10, "a flux density"), "fluxDensityT");
        put(t, from(0, ANYTHING, "an insulation resistance"), "insulationOhm");
        put(t, from(0, 1e4, "a vibration velocity"), "mmPerSecond");
        put(t, from(0, 1e5, "a torque"), "torqueNm", "torqueMinNm", "torqueMaxNm");
        put(t, from(0, 100, "a discount in percent"), "discountPercent");
        put(t, from(-100, 1e5, "a mark-up in percent"), "markUpPercent");
        put(t, from(-10_000, 99.999, "a margin in percent of the price"), "marginPercent");
        put(t, from(0, 1000, "a tax rate in percent"), "ratePercent");
        put(t, from(0, ANYTHING, "a figure of an instrument"), "upTo", "resolution", "percentOfReading", "digits",
                "leadOhm", "leadOhmU");
        put(t, above(200, 300, "the constant k of the resistance correction"), "copperConstant");
        return Map.copyOf(t);
    }

    private static void put(Map<String, Possible> t, Possible possible, String... fields) {
        for (String f : fields) {
            t.put(f, possible);
        }
    }
}
