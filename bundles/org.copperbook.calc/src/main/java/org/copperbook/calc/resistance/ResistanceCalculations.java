package org.copperbook.calc.resistance;

import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;

import java.util.List;

import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.uncertainty.Uncertain;

/** Resistance and temperature in the catalogue. */
public final class ResistanceCalculations implements CalculationSource {

    private static final String AREA = "resistance";

    @Override
    public List<Calculation> calculations() {
        return List.of(
                Calculation.named(AREA, "resistance-at-temperature")
                        .title("Resistance brought to another temperature")
                        .source("IEC 60034-1, 8.6.2.3; IEEE 118 for 234.5")
                        .formula("R2 = R1 (k + t2) / (k + t1)")
                        .number("r", RESISTANCE, "Ω", "reading")
                        .number("t", TEMPERATURE, "°C", "winding temperature at the reading, -60 to 300 °C")
                        .number("to", TEMPERATURE, "°C", "20", "reference temperature")
                        .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                        .number("u-r", RESISTANCE, "Ω", "0", "standard uncertainty of the reading")
                        .number("u-t", org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE, "K", "0",
                                "standard uncertainty of the temperature")
                        .gives("r-to", RESISTANCE, "Ω", "resistance at the reference temperature")
                        .gives("u", RESISTANCE, "Ω", "its standard uncertainty")
                        .gives("factor", RATIO, "", "R2 / R1")
                        .by((in, out) -> {
                            Conductor c = in.choice("conductor", Conductor.class);
                            Uncertain r = TemperatureCorrection.correct(
                                    new Uncertain(in.number("r"), in.number("u-r")),
                                    new Uncertain(in.number("t"), in.number("u-t")), in.number("to"), c);
                            out.put("r-to", r.value()).put("u", r.u())
                                    .put("factor", TemperatureCorrection.factor(c, in.number("t"), in.number("to")));
                        }));
    }
}
