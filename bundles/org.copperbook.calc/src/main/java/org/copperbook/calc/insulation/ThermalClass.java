package org.copperbook.calc.insulation;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Thermal classes with their temperature (IEC 60085) and the rise allowed by resistance over a 40 degree coolant for
 * indirectly air-cooled ac windings below 5 MW (IEC 60034-1, table 8, item 1c).
 */
public enum ThermalClass {
    Y(90, Double.NaN), A(105, 60), E(120, 75), B(130, 80), F(155, 105), H(180, 125), N(200, Double.NaN),
    R(220, Double.NaN);

    /** From here on classes follow each other every 25 degrees and have no letter (IEC 60085, from memory). */
    private static final int UNLETTERED = 250;
    private static final int STEP = 25;
    /** Letter of what endures more than 180 degrees in editions before N and R (from memory). */
    private static final String FORMER = "C";

    private final double celsius;
    private final double rise;

    ThermalClass(double celsius, double rise) {
        this.celsius = celsius;
        this.rise = rise;
    }

    /** The class temperature, degrees Celsius. */
    public double celsius() {
        return celsius;
    }

    /** The rise by resistance allowed over 40 degrees, kelvin; empty for classes without one in the table. */
    public OptionalDouble riseByResistance() {
        return Double.isNaN(rise) ? OptionalDouble.empty() : OptionalDouble.of(rise);
    }

    /**
     * Whether a plate's words name a thermal class: its letter or its temperature, alone or among other words ("155 (F)",
     * "class F, rise B").
     */
    public static boolean isNamedIn(String words) {
        return Arrays.stream(words.toUpperCase(Locale.ROOT).split("[^A-Z0-9]+|(?<=[A-Z])(?=\\d)|(?<=\\d)(?=[A-Z])")).anyMatch(ThermalClass::names);
    }

    private static boolean names(String word) {
        if (!word.matches("\\d{2,3}")) {
            return word.equals(FORMER) || Arrays.stream(values()).anyMatch(c -> c.name().equals(word));
        }
        int degrees = Integer.parseInt(word);
        return Arrays.stream(values()).anyMatch(c -> c.celsius == degrees)
                || degrees >= UNLETTERED && (degrees - UNLETTERED) % STEP == 0;
    }
}
