package org.copperbook.calc.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.copperbook.calc.quantity.Dimension;
import org.copperbook.calc.quantity.UnitTable;

/** Writes a {@link Calculation} down step by step. Default text null means required; empty means optional. */
public final class CalculationBuilder {

    private final String area;
    private final String name;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Output> outputs = new ArrayList<>();
    private String title = "";
    private String source = "";
    private String formula = "";

    CalculationBuilder(String area, String name) {
        this.area = area;
        this.name = name;
    }

    /** One line in the trade's words. */
    public CalculationBuilder title(String text) {
        title = text;
        return this;
    }

    /** The standard or book followed. */
    public CalculationBuilder source(String text) {
        source = text;
        return this;
    }

    /** The formula in writing. */
    public CalculationBuilder formula(String text) {
        formula = text;
        return this;
    }

    /** A required number; a bare number is in the unit given. */
    public CalculationBuilder number(String key, Dimension dimension, String unit, String doc) {
        return number(key, dimension, unit, null, doc);
    }

    /** A number with a default, or optional when the default is empty. */
    public CalculationBuilder number(String key, Dimension dimension, String unit, String byDefault, String doc) {
        UnitTable.unit(dimension, unit);
        return add(key, new InputType.Number(dimension, unit, false), byDefault, doc);
    }

    /** A required number that may also be "above range". */
    public CalculationBuilder numberOrOpen(String key, Dimension dimension, String unit, String byDefault, String doc) {
        UnitTable.unit(dimension, unit);
        return add(key, new InputType.Number(dimension, unit, true), byDefault, doc);
    }

    /** Several numbers, separated by semicolons. */
    public CalculationBuilder numbers(String key, Dimension dimension, String unit, String byDefault, String doc) {
        UnitTable.unit(dimension, unit);
        return add(key, new InputType.Numbers(dimension, unit), byDefault, doc);
    }

    /** Points x:y, separated by semicolons. */
    public CalculationBuilder points(String key, Dimension x, String xUnit, Dimension y, String yUnit,
            String byDefault, String doc) {
        return add(key, new InputType.Points(x, xUnit, y, yUnit), byDefault, doc);
    }

    /** A whole number. */
    public CalculationBuilder whole(String key, String byDefault, String doc) {
        return add(key, new InputType.Whole(), byDefault, doc);
    }

    /** One of the words given. */
    public CalculationBuilder choice(String key, List<String> options, String byDefault, String doc) {
        return add(key, new InputType.Choice(options), byDefault, doc);
    }

    /** One of the constants of an enumeration, written in small letters with hyphens. */
    public CalculationBuilder choice(String key, Class<? extends Enum<?>> type, String byDefault, String doc) {
        List<String> words = new ArrayList<>();
        for (Enum<?> constant : type.getEnumConstants()) {
            words.add(word(constant));
        }
        return choice(key, List.copyOf(words), byDefault, doc);
    }

    /** yes or no. */
    public CalculationBuilder flag(String key, String byDefault, String doc) {
        return add(key, new InputType.Flag(), byDefault, doc);
    }

    /** Text that the calculation reads itself. */
    public CalculationBuilder text(String key, String shape, String byDefault, String doc) {
        return add(key, new InputType.Text(shape), byDefault, doc);
    }

    /** A number as result, shown in the unit given. */
    public CalculationBuilder gives(String key, Dimension dimension, String unit, String doc) {
        UnitTable.unit(dimension, unit);
        outputs.add(new Output(key, dimension, unit, doc));
        return this;
    }

    /** A word as result. */
    public CalculationBuilder givesWord(String key, String doc) {
        outputs.add(new Output(key, null, "", doc));
        return this;
    }

    /** Ends the writing with the work itself. */
    public Calculation by(Formula function) {
        return new Calculation(area, name, title, inputs, outputs, source, formula, function);
    }

    /** A constant of an enumeration as it is written in text. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private CalculationBuilder add(String key, InputType type, String byDefault, String doc) {
        boolean optional = byDefault != null;
        inputs.add(new Input(key, type, !optional, optional && byDefault.isEmpty() ? null : byDefault, doc));
        return this;
    }
}
