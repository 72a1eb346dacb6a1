package org.copperbook.calc.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.quantity.DecimalMark;

/** All calculations by name. */
public final class Catalogue {

    private final Map<String, Calculation> byName = new LinkedHashMap<>();

    /** A catalogue of the sources given; two calculations of one name are a programming error. */
    public Catalogue(List<CalculationSource> sources) {
        for (CalculationSource source : sources) {
            for (Calculation c : source.calculations()) {
                if (byName.put(c.name(), c) != null) {
                    throw new IllegalStateException("two calculations are named " + c.name());
                }
            }
        }
    }

    /** The catalogue of the whole library. */
    public static Catalogue standard() {
        return new Catalogue(StandardSources.all());
    }

    /** Every calculation, in the order contributed. */
    public Collection<Calculation> all() {
        return Collections.unmodifiableCollection(byName.values());
    }

    /** The calculations by area, in the order contributed. */
    public Map<String, List<Calculation>> byArea() {
        Map<String, List<Calculation>> areas = new LinkedHashMap<>();
        for (Calculation c : byName.values()) {
            areas.computeIfAbsent(c.area(), a -> new ArrayList<>()).add(c);
        }
        return areas;
    }

    /** The calculation of this name. */
    public Optional<Calculation> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** Evaluates with the dot as the locale's decimal mark. */
    public Evaluation evaluate(String name, Map<String, String> inputs) {
        return evaluate(name, inputs, DecimalMark.DOT);
    }

    /**
     * Reads the texts with their units and computes.
     *
     * @throws InputProblem when the name or an input is unknown, missing, unreadable or ambiguous
     * @throws org.copperbook.calc.OutOfRange when the calculation refuses a value
     */
    public Evaluation evaluate(String name, Map<String, String> inputs, DecimalMark mark) {
        Calculation calculation = find(name).orElseThrow(() -> new InputProblem(
                InputProblem.Kind.UNKNOWN_CALCULATION, name, "no calculation is named \"" + name + "\""));
        Arguments arguments = new InputReader(mark).read(calculation, inputs);
        Results results = new Results();
        calculation.function().apply(arguments, results);
        results.values().forEach(Catalogue::refuseWhatIsNoNumber);
        return new Evaluation(calculation, Collections.unmodifiableMap(results.values()),
                List.copyOf(results.warnings()));
    }

    /** Sizes beyond any machine can overflow a formula; a result that is no number is refused, not shown. */
    private static void refuseWhatIsNoNumber(String name, Object value) {
        if (value instanceof Double d && !Double.isFinite(d)) {
            throw new OutOfRange("result " + name, d.toString(), "the finite numbers",
                    "one of the values given lies far beyond what this formula was made for");
        }
    }
}
