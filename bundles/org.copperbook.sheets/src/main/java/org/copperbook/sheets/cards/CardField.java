package org.copperbook.sheets.cards;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.quantity.Dimension;

/** What a column of old cards can hold. */
public enum CardField {
    CARD, DATE, MAKER, TYPE, SERIAL, YEAR,
    APPARENT_POWER(Dimension.APPARENT_POWER, 1, 1e9, "kVA", "VA", "MVA"),
    POWER(Dimension.POWER, 1, 1e9, "kW", "W", "MW", "hp"),
    VOLTAGE(Dimension.VOLTAGE, 1, 1e5, "V", "kV"),
    CURRENT(Dimension.CURRENT, 1e-3, 1e5, "A"),
    FREQUENCY(Dimension.FREQUENCY, 1, 1000, "Hz"),
    SPEED(Dimension.ROTATIONAL_SPEED, 0.1, 1000, "r/min"),
    POLES, PHASES,
    SLOTS, LAYERS, COIL_TYPE, SPAN, GROUP_SEQUENCE, COILS_PER_GROUP, TURNS,
    WIRE(null, 0, 0, "mm", "SWG", "AWG", "in"),
    STRANDS, CIRCUITS, CONNECTION, LEADS,
    MEAN_TURN(Dimension.LENGTH, 0.01, 20, "mm", "cm", "m", "in"),
    CORE_LENGTH(Dimension.LENGTH, 0.005, 10, "mm", "cm", "m", "in"),
    BORE(Dimension.LENGTH, 0.01, 20, "mm", "cm", "m", "in"),
    OUTSIDE(Dimension.LENGTH, 0.01, 20, "mm", "cm", "m", "in"),
    SLOT_DEPTH(Dimension.LENGTH, 0.001, 1, "mm", "cm", "m", "in"),
    TOOTH_WIDTH(Dimension.LENGTH, 0.0005, 1, "mm", "cm", "m", "in"),
    YOKE_DEPTH(Dimension.LENGTH, 0.001, 5, "mm", "cm", "m", "in"),
    COPPER_MASS(Dimension.MASS, 0.01, 1e5, "kg", "g", "lb"),
    THERMAL_CLASS, NOTE;

    private final Dimension dimension;
    private final double least;
    private final double most;
    private final List<String> units;

    CardField() {
        this(null, 0, 0);
    }

    CardField(Dimension dimension, double least, double most, String... units) {
        this.dimension = dimension;
        this.least = least;
        this.most = most;
        this.units = List.of(units);
    }

    /** The field as it stands in files, e.g. "core-length". */
    @JsonValue
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The field behind a word.
     *
     * @throws IllegalArgumentException when there is none
     */
    @JsonCreator
    public static CardField of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** Its name for people. */
    public String inWords() {
        return CardWords.text("field." + word());
    }

    /** Units that may be implied for bare numbers, the usual one first; empty when it has none. */
    public List<String> units() {
        return units;
    }

    Dimension dimension() {
        return dimension;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }
}
