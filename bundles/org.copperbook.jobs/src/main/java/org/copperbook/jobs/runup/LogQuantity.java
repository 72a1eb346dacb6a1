package org.copperbook.jobs.runup;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a column of a logger's file can carry, with the unit in which the record keeps it. */
public enum LogQuantity {
    SPEED("r/min", Units.SPEED, 0, 30_000),
    FREQUENCY("Hz", Units.FREQUENCY, 0, 1000),
    EXCITER_VOLTS("V", Units.VOLTS, -1000, 1000),
    EXCITER_AMPS("A", Units.AMPS, -500, 500),
    VOLTS_UV("V", Units.VOLTS, 0, 30_000),
    VOLTS_VW("V", Units.VOLTS, 0, 30_000),
    VOLTS_WU("V", Units.VOLTS, 0, 30_000),
    LINE_AMPS("A", Units.AMPS, 0, 50_000),
    LOAD_WATTS("W", Units.WATTS, -1e8, 1e8),
    LOAD_VARS("var", Units.VARS, -1e8, 1e8),
    DRIVE_END_CELSIUS("\u00b0C", Units.CELSIUS, -60, 250),
    OTHER_END_CELSIUS("\u00b0C", Units.CELSIUS, -60, 250),
    WINDING_CELSIUS("\u00b0C", Units.CELSIUS, -60, 400),
    AIR_CELSIUS("\u00b0C", Units.CELSIUS, -60, 100);

    private final String unit;
    private final Map<String, double[]> units;
    private final double least;
    private final double greatest;

    LogQuantity(String unit, Map<String, double[]> units, double least, double greatest) {
        this.unit = unit;
        this.units = units;
        this.least = least;
        this.greatest = greatest;
    }

    /** The unit of the record. */
    public String unit() {
        return unit;
    }

    /** Factor and offset from a unit to that of the record; empty when the unit does not fit this quantity. */
    public Optional<double[]> from(String name) {
        return Optional.ofNullable(units.get(key(name)));
    }

    /** Whether any quantity knows this unit. */
    public static boolean isUnit(String name) {
        for (LogQuantity q : values()) {
            if (q.units.containsKey(key(name))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a value in the record's unit can be one of a machine at all. */
    public boolean possible(double value) {
        return value >= least && value <= greatest;
    }

    /** Whether this is a temperature, which moves slowly and is kept against time. */
    public boolean isTemperature() {
        return units == Units.CELSIUS;
    }

    private static String key(String name) {
        String k = name.strip().replace("\u00b0", "deg").replace('\u207b', '-').replace('\u00b9', '1').replace("^", "");
        boolean caseMatters = k.startsWith("m") || k.startsWith("M");
        return caseMatters ? k : k.toLowerCase(Locale.ROOT);
    }

    private static final class Units {
        private static final Map<String, double[]> SPEED = Map.of("r/min", f(1), "rpm", f(1), "1/min", f(1),
                "min-1", f(1), "r/s", f(60), "1/s", f(60));
        private static final Map<String, double[]> FREQUENCY = Map.of("hz", f(1), "khz", f(1000), "mHz", f(1e-3));
        private static final Map<String, double[]> VOLTS = Map.of("v", f(1), "kv", f(1000), "mV", f(1e-3));
        private static final Map<String, double[]> AMPS = Map.of("a", f(1), "ka", f(1000), "mA", f(1e-3));
        private static final Map<String, double[]> WATTS = Map.of("w", f(1), "kw", f(1000), "MW", f(1e6));
        private static final Map<String, double[]> VARS = Map.of("var", f(1), "kvar", f(1000), "Mvar", f(1e6));
        private static final Map<String, double[]> CELSIUS = Map.of("degc", f(1), "c", f(1), "k",
                new double[] {1, -273.15}, "degf", new double[] {5 / 9.0, -160 / 9.0}, "f", new double[] {5 / 9.0, -160 / 9.0});

        private static double[] f(double factor) {
            return new double[] {factor, 0};
        }
    }
}
