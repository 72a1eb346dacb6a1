package org.copperbook.calc.uncertainty;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;

import org.copperbook.calc.Require;

/**
 * A value that remembers how much each independent cause contributes to its uncertainty, so that causes
 * shared by two values cancel or add as they should when the values are combined.
 *
 * <p>First-order propagation of JCGM 100:2008, 5.2, with the correlations removed by expressing every
 * value through common independent causes (F.1.2.3). Contributions are signed and hold the unit of the
 * value. Immutable.
 */
public final class Traced {

    private final double value;
    private final Map<Source, Double> contributions;

    private Traced(double value, Map<Source, Double> contributions) {
        this.value = Require.finite("value", value, "");
        this.contributions = contributions;
    }

    /** A value without uncertainty. */
    public static Traced exact(double value) {
        return new Traced(value, Collections.emptyMap());
    }

    /** A value with one cause of standard uncertainty u. */
    public static Traced of(double value, Source source, double u) {
        return exact(value).with(source, u);
    }

    /** A value whose uncertainty is shared with nothing else. */
    public static Traced independent(Uncertain x, String name) {
        return of(x.value(), Source.named(name), x.u());
    }

    /** The same value with one more contribution; a cause named again adds to what it already gives. */
    public Traced with(Source source, double u) {
        Require.finite("contribution of " + source, u, "");
        Map<Source, Double> more = new IdentityHashMap<>(contributions);
        more.merge(source, u, Double::sum);
        return new Traced(value, more);
    }

    /** The best estimate. */
    public double value() {
        return value;
    }

    /** The signed contribution of one cause, in the unit of the value. */
    public double contribution(Source source) {
        return contributions.getOrDefault(source, 0.0);
    }

    /** The combined standard uncertainty, in the unit of the value. */
    public double u() {
        double sum = 0;
        for (double c : contributions.values()) {
            sum += c * c;
        }
        return Math.sqrt(sum);
    }

    /** The value with its combined standard uncertainty, its causes forgotten. */
    public Uncertain uncertain() {
        return new Uncertain(value, u());
    }

    /** The sum; shared causes add. */
    public Traced plus(Traced other) {
        return combine(value + other.value, 1, other, 1);
    }

    /** The difference; shared causes cancel. */
    public Traced minus(Traced other) {
        return combine(value - other.value, 1, other, -1);
    }

    /** The product. */
    public Traced times(Traced other) {
        return combine(value * other.value, other.value, other, value);
    }

    /** The quotient; refused when the divisor is zero. */
    public Traced over(Traced other) {
        Require.that(other.value != 0, "divisor", "0", "the numbers other than 0", "a quotient by zero has no value");
        double q = value / other.value;
        return combine(q, 1 / other.value, other, -q / other.value);
    }

    /** The value shifted by an exact amount. */
    public Traced plus(double amount) {
        return new Traced(value + amount, contributions);
    }

    /** The value multiplied by an exact factor. */
    public Traced times(double factor) {
        return combine(value * factor, factor, exact(0), 0);
    }

    /** A function of this value with known result and derivative. */
    public Traced mapped(double result, double derivative) {
        return combine(result, derivative, exact(0), 0);
    }

    /** The covariance with another value. */
    public double covariance(Traced other) {
        double sum = 0;
        for (Map.Entry<Source, Double> e : contributions.entrySet()) {
            sum += e.getValue() * other.contribution(e.getKey());
        }
        return sum;
    }

    private Traced combine(double result, double here, Traced other, double there) {
        Map<Source, Double> merged = new IdentityHashMap<>();
        contributions.forEach((s, c) -> merged.merge(s, here * c, Double::sum));
        other.contributions.forEach((s, c) -> merged.merge(s, there * c, Double::sum));
        return new Traced(result, merged);
    }

    @Override
    public String toString() {
        return value + " ± " + u();
    }
}
