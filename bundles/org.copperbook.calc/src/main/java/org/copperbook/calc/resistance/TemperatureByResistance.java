package org.copperbook.calc.resistance;

import org.copperbook.calc.Require;
import org.copperbook.calc.uncertainty.SharedSources;
import org.copperbook.calc.uncertainty.Traced;
import org.copperbook.calc.uncertainty.Uncertain;

/** Mean winding temperature, and rise over the coolant, from cold and hot resistance. Source: IEC 60034-1, 8.6.2.3. */
public final class TemperatureByResistance {

    private TemperatureByResistance() {
    }

    /** Hot temperature R2/R1 (k + t1) - k, degrees Celsius; both resistances positive, in ohm. */
    public static double celsius(double coldOhms, double coldCelsius, double hotOhms, double inferredZero) {
        Require.positive("cold resistance", coldOhms, "ohm");
        Require.positive("hot resistance", hotOhms, "ohm");
        Require.between("inferred zero", inferredZero, 150, 300, "°C", "no winding metal lies outside it");
        double t = hotOhms / coldOhms * (inferredZero + TemperatureCorrection.celsius(coldCelsius)) - inferredZero;
        return TemperatureCorrection.celsius(t);
    }

    /** Hot temperature with its uncertainty; the shared gain of one bridge cancels. */
    public static Traced celsius(Uncertain coldOhms, Uncertain coldCelsius, Uncertain hotOhms, Conductor conductor,
            SharedSources shared) {
        celsius(coldOhms.value(), coldCelsius.value(), hotOhms.value(), conductor.inferredZero());
        Traced k = shared.inferredZero(conductor.inferredZero());
        return shared.ohms(hotOhms).over(shared.ohms(coldOhms)).times(k.plus(shared.celsius(coldCelsius))).minus(k);
    }

    /** Rise over the coolant at the end of the test, kelvin. */
    public static double rise(double coldOhms, double coldCelsius, double hotOhms, double coolantCelsius,
            double inferredZero) {
        return celsius(coldOhms, coldCelsius, hotOhms, inferredZero) - TemperatureCorrection.celsius(coolantCelsius);
    }
}
