package org.copperbook.calc.uncertainty;

/**
 * The causes behind {@link SharedTerms}, as objects, for one set of readings. Each reading or temperature
 * that passes through the same instance is correlated with the others.
 */
public final class SharedSources {

    private final SharedTerms terms;
    private final Source gain = Source.named("meter gain");
    private final Source lead = Source.named("leads and contacts");
    private final Source thermometer = Source.named("thermometer");
    private final Source inferredZero = Source.named("inferred zero");

    /** The causes of one set of readings, independent of every other set. */
    public SharedSources(SharedTerms terms) {
        this.terms = terms;
    }

    /** A resistance whose uncertainty holds the shared gain and lead terms; the rest is its own. */
    public Traced ohms(Uncertain reading) {
        double byGain = terms.relativeGain() * reading.value();
        return split(reading, gain, byGain, lead, terms.leadOhms());
    }

    /** A temperature whose uncertainty holds the shared thermometer; the rest is its own. */
    public Traced celsius(Uncertain temperature) {
        return split(temperature, thermometer, terms.kelvin(), null, 0);
    }

    /** The inferred zero-resistance temperature k with its shared uncertainty. */
    public Traced inferredZero(double k) {
        return Traced.of(k, inferredZero, terms.inferredZeroKelvin());
    }

    /**
     * The shared parts cannot exceed the whole: when the stated whole is smaller (a typed uncertainty that
     * forgot the leads) the whole grows to the shared part rather than the shared part being cut.
     */
    private static Traced split(Uncertain x, Source first, double a, Source second, double b) {
        double own = Math.sqrt(Math.max(0, x.u() * x.u() - a * a - b * b));
        Traced traced = Traced.of(x.value(), Source.named("own"), own).with(first, a);
        return second == null ? traced : traced.with(second, b);
    }
}
