package org.copperbook.calc.fit;

import static org.copperbook.calc.quantity.Dimension.LENGTH;

import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;

/** Bearing seats and shaft extensions. */
public final class FitCalculations implements CalculationSource {

    private static final String AREA = "fit";

    @Override
    public List<Calculation> calculations() {
        return List.of(zone(), runout());
    }

    private static Calculation zone() {
        return Calculation.named(AREA, "tolerance-zone")
                .title("Limit deviations of a shaft or housing seat")
                .source("ISO 286-2:2010, as printed in bearing makers' fit tables")
                .formula("table; upper = lower + IT")
                .choice("zone", ToleranceZone.class, "shaft-k5", "tolerance zone")
                .number("nominal", LENGTH, "mm", "nominal size, to 500 mm")
                .gives("lower", LENGTH, "µm", "lower deviation")
                .gives("upper", LENGTH, "µm", "upper deviation")
                .by((in, out) -> {
                    ToleranceZone zone = in.choice("zone", ToleranceZone.class);
                    ToleranceZone.Deviations d = zone.at(in.number("nominal")).orElseThrow(() -> new OutOfRange(
                            "nominal size", in.number("nominal") * 1000 + " mm", "sizes with printed figures",
                            "for " + zone.sign() + " no figure was found in print at this size"));
                    out.put("lower", d.lower()).put("upper", d.upper());
                });
    }

    private static Calculation runout() {
        return Calculation.named(AREA, "shaft-extension-runout")
                .title("Greatest runout of a shaft extension, IEC machines")
                .source("ANSI/EASA AR100-2015, table 2-4")
                .formula("table")
                .number("diameter", LENGTH, "mm", "shaft diameter, above 6 to 630 mm")
                .gives("runout", LENGTH, "mm", "change of the indicator midway along the extension")
                .by((in, out) -> out.put("runout", ShaftRunout.extension(in.number("diameter")).orElseThrow(() ->
                        new OutOfRange("shaft diameter", in.number("diameter") * 1000 + " mm", "above 6 to 630 mm",
                                "the table ends there"))));
    }
}
