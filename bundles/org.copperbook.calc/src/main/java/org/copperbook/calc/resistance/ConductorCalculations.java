package org.copperbook.calc.resistance;

import static org.copperbook.calc.quantity.Dimension.AREA;
import static org.copperbook.calc.quantity.Dimension.CONDUCTIVITY;
import static org.copperbook.calc.quantity.Dimension.DENSITY;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MASS_RESISTIVITY;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.RESISTIVITY;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_COEFFICIENT;

import java.util.List;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** Conductor metals: coefficients, resistivity, conductivity. */
public final class ConductorCalculations implements CalculationSource {

    private static final String GROUP = "resistance";
    private static final String SLIP = "this coefficient is usually quoted at another base temperature: check the pair";

    @Override
    public List<Calculation> calculations() {
        return List.of(byCoefficient(), fromReadings(), atBase(), conductor(), diameterRatio(), constants());
    }

    private static Calculation byCoefficient() {
        return Calculation.named(GROUP, "resistance-by-coefficient")
                .title("Resistance at another temperature by a linear coefficient")
                .source("J. Bird, Electrical Circuit Theory and Technology, chapter 3; US Army TM 9-6115-644-24")
                .formula("R2 = R1 (1 + a (t2 - b)) / (1 + a (t1 - b))")
                .number("r", RESISTANCE, "Ω", "reading")
                .number("t", TEMPERATURE, "°C", "temperature of the reading")
                .number("to", TEMPERATURE, "°C", "temperature wanted")
                .number("alpha", TEMPERATURE_COEFFICIENT, "1/K", "0.00393", "coefficient a at its base b")
                .number("base", TEMPERATURE, "°C", "20", "base temperature b of the coefficient")
                .number("band", RATIO, "%", "", "half-width of a tolerance band to show")
                .gives("r-to", RESISTANCE, "Ω", "resistance at the temperature wanted")
                .gives("low", RESISTANCE, "Ω", "lower end of the band")
                .gives("high", RESISTANCE, "Ω", "upper end of the band")
                .by((in, out) -> {
                    TemperatureCoefficient a = new TemperatureCoefficient(in.number("alpha"), in.number("base"));
                    double r = in.number("r") * a.factor(in.number("t"), in.number("to"));
                    out.put("r-to", r);
                    if (in.has("band")) {
                        LimitBand b = LimitBand.around(r, in.number("band"));
                        out.put("low", b.low()).put("high", b.high());
                    }
                    if (a.looksMisplaced()) {
                        out.warn(SLIP);
                    }
                });
    }

    private static Calculation fromReadings() {
        return Calculation.named(GROUP, "coefficient-from-readings")
                .title("Temperature coefficient from two readings")
                .source("Muthusubramanian and Salivahanan, Basic Electrical and Electronics Engineering, example 1.5")
                .formula("a = (R2 - R1)/(t2 - t1)/R(base)")
                .number("r1", RESISTANCE, "Ω", "first reading")
                .number("t1", TEMPERATURE, "°C", "its temperature")
                .number("r2", RESISTANCE, "Ω", "second reading")
                .number("t2", TEMPERATURE, "°C", "its temperature")
                .number("base", TEMPERATURE, "°C", "0", "base temperature wanted")
                .gives("alpha", TEMPERATURE_COEFFICIENT, "1/K", "coefficient at the base")
                .gives("r-base", RESISTANCE, "Ω", "resistance at the base")
                .gives("k", TEMPERATURE, "°C", "inferred zero, degrees below 0 °C")
                .by((in, out) -> {
                    TemperatureCoefficient a = TemperatureCoefficient.fromReadings(in.number("r1"), in.number("t1"),
                            in.number("r2"), in.number("t2"), in.number("base"));
                    out.put("alpha", a.perKelvin())
                            .put("r-base", in.number("r1") * a.factor(in.number("t1"), in.number("base")))
                            .put("k", a.inferredZero());
                });
    }

    private static Calculation atBase() {
        return Calculation.named(GROUP, "coefficient-at")
                .title("Temperature coefficient at another base")
                .source("J. B. Gupta, Electrical Engineering Materials, example 2.20")
                .formula("a2 = 1/(1/a1 - b1 + b2)")
                .number("alpha", TEMPERATURE_COEFFICIENT, "1/K", "0.00393", "coefficient at its base")
                .number("base", TEMPERATURE, "°C", "20", "its base")
                .number("to", TEMPERATURE, "°C", "base wanted")
                .gives("alpha-to", TEMPERATURE_COEFFICIENT, "1/K", "coefficient at the base wanted")
                .gives("k", TEMPERATURE, "°C", "inferred zero, degrees below 0 °C")
                .by((in, out) -> {
                    TemperatureCoefficient a = new TemperatureCoefficient(in.number("alpha"), in.number("base"));
                    out.put("alpha-to", a.at(in.number("to")).perKelvin()).put("k", a.inferredZero());
                    if (a.looksMisplaced()) {
                        out.warn(SLIP);
                    }
                });
    }

    private static Calculation conductor() {
        return Calculation.named(GROUP, "conductor-resistance")
                .title("Resistance of a conductor from its size")
                .source("IEC 60028 (annealed copper 1.7241e-8 ohm metre at 20 °C)")
                .formula("R = resistivity x length / area")
                .number("length", LENGTH, "m", "length")
                .number("d", LENGTH, "mm", "", "diameter of a round conductor, or give the area")
                .number("area", AREA, "mm²", "", "area")
                .number("resistivity", RESISTIVITY, "Ω·m", "1.7241e-8", "resistivity at the temperature wanted")
                .gives("r", RESISTANCE, "Ω", "resistance")
                .gives("area-used", AREA, "mm²", "area")
                .by(ConductorCalculations::computeConductor);
    }

    private static void computeConductor(Arguments in, Results out) {
        double area = in.firstGiven("area", "d").equals("area")
                ? in.number("area")
                : Resistivity.roundArea(in.number("d"));
        out.put("r", Resistivity.ohms(in.number("resistivity"), in.number("length"), area))
                .put("area-used", area);
    }

    private static Calculation diameterRatio() {
        return Calculation.named(GROUP, "equal-resistance-diameter")
                .title("Diameter ratio of two metals at equal resistance")
                .source("J. B. Gupta, Electrical Engineering Materials, example 2.37")
                .formula("d2/d1 = sqrt(resistivity2/resistivity1)")
                .number("resistivity1", RESISTIVITY, "Ω·m", "1.7241e-8", "first metal")
                .number("resistivity2", RESISTIVITY, "Ω·m", "2.8264e-8", "second metal")
                .gives("ratio", RATIO, "", "d2 / d1")
                .by((in, out) -> out.put("ratio", Resistivity.equalResistanceDiameterRatio(
                        in.number("resistivity1"), in.number("resistivity2"))));
    }

    private static Calculation constants() {
        return Calculation.named(GROUP, "conductor-constants")
                .title("Resistivity and share of the copper standard from conductivity")
                .source("IEC 60028")
                .formula("resistivity = 1/conductivity; share = conductivity/58 MS/m; mass resistivity = resistivity x density")
                .number("conductivity", CONDUCTIVITY, "MS/m", "", "conductivity, or give the share")
                .number("share", RATIO, "%", "", "share of the International Annealed Copper Standard")
                .number("density", DENSITY, "g/cm³", "8.89", "density")
                .gives("resistivity", RESISTIVITY, "Ω·m", "resistivity")
                .gives("share-of-standard", RATIO, "%", "share of the standard")
                .gives("mass-resistivity", MASS_RESISTIVITY, "Ω·g/m²", "mass resistivity")
                .by((in, out) -> {
                    double s = in.firstGiven("share", "conductivity").equals("share")
                            ? in.number("share") * Resistivity.IACS
                            : in.number("conductivity");
                    double share = Resistivity.shareOfStandard(s);
                    out.put("resistivity", 1 / s).put("share-of-standard", share)
                            .put("mass-resistivity", in.number("density") / s);
                });
    }
}
