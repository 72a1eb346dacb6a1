package org.copperbook.calc.wire;

import static org.copperbook.calc.quantity.Dimension.AREA;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MASS_PER_LENGTH;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;

/** Round winding wire by size. */
public final class WireCalculations implements CalculationSource {
    private static final String WIRE = "wire";
    private static final String SHAPE = "18SWG, AWG 16, 1.25mm";
    private static final String SIZES = "ASTM B258 (AWG); BS 3737 (SWG); IEC 60317-0-1 (metric); IEC 60028 (copper)";

    @Override
    public List<Calculation> calculations() {
        return List.of(size(), ratio(), againstNominal(), preferred(), gauging());
    }

    private static Calculation size() {
        return Calculation.named(WIRE, "wire-size")
                .title("Diameters, area, resistance and mass of a wire size")
                .source(SIZES)
                .formula("AWG d = 0.127 mm x 92^((36 - n)/39); A = pi d^2/4; R' = rho/A; m' = gamma A")
                .text("size", SHAPE, null, "wire size")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .givesWord("label", "the size as the trade writes it")
                .gives("diameter", LENGTH, "mm", "nominal bare diameter")
                .gives("area", AREA, "mm²", "cross-section")
                .gives("circular-mils", AREA, "cmil", "cross-section")
                .gives("resistance", RESISTANCE_PER_LENGTH, "Ω/km", "resistance at 20 °C")
                .gives("mass", MASS_PER_LENGTH, "kg/km", "bare mass")
                .gives("conductor-min", LENGTH, "mm", "thinnest conductor within tolerance")
                .gives("conductor-max", LENGTH, "mm", "thickest conductor within tolerance")
                .gives("resistance-min", RESISTANCE_PER_LENGTH, "Ω/km", "resistance of the thickest conductor")
                .gives("resistance-max", RESISTANCE_PER_LENGTH, "Ω/km", "resistance of the thinnest conductor")
                .gives("grade-1", LENGTH, "mm", "largest overall diameter, grade 1")
                .gives("grade-2", LENGTH, "mm", "largest overall diameter, grade 2")
                .gives("breakdown-1", VOLTAGE, "V", "least breakdown voltage, grade 1, where tabulated")
                .gives("breakdown-2", VOLTAGE, "V", "least breakdown voltage, grade 2, where tabulated")
                .givesWord("enamel-source", "where the overall diameters come from")
                .by((in, out) -> describe(WireSize.parse(in.text("size")),
                in.choice("material", ConductorMaterial.class), out));
    }

    private static void describe(WireSize size, ConductorMaterial material, Results out) {
        double tolerance = EnamelTable.standard().tolerance(size.bareDiameter());
        double thin = size.bareDiameter() - tolerance;
        double thick = size.bareDiameter() + tolerance;
        out.put("label", size.label()).put("diameter", size.bareDiameter()).put("area", size.area())
                .put("circular-mils", size.area())
                .put("resistance", size.ohmsPerMetre(material)).put("mass", size.kilogramsPerMetre(material))
                .put("conductor-min", thin).put("conductor-max", thick)
                .put("resistance-min", material.resistivityAt20() * 4 / (Math.PI * thick * thick))
                .put("resistance-max", material.resistivityAt20() * 4 / (Math.PI * thin * thin));
        if (size.bareDiameter() < 0.0999e-3 || size.bareDiameter() > 5.005e-3) {
            out.put("enamel-source", "not tabulated outside 0.1 to 5 mm");
            return;
        }
        for (InsulationGrade grade : List.of(InsulationGrade.GRADE_1, InsulationGrade.GRADE_2)) {
            out.put("grade-" + grade.ordinal(), size.overallDiameter(grade).maximum());
            EnamelBreakdown.of(size.bareDiameter(), grade)
                    .ifPresent(volts -> out.put("breakdown-" + grade.ordinal(), volts));
        }
        out.put("enamel-source", size.overallDiameter(InsulationGrade.GRADE_1).source());
    }

    private static Calculation ratio() {
        return Calculation.named(WIRE, "wire-ratio")
                .title("One wire size beside another")
                .source(SIZES)
                .formula("d1/d2; A1/A2")
                .text("size", SHAPE, null, "wire size")
                .text("other", SHAPE, null, "wire size compared with")
                .gives("diameter-ratio", RATIO, "", "diameter over that of the other")
                .gives("area-ratio", RATIO, "", "area over that of the other")
                .gives("strands", RATIO, "", "strands of the size for the area of one of the other")
                .by((in, out) -> {
                    WireSize one = WireSize.parse(in.text("size"));
                    WireSize other = WireSize.parse(in.text("other"));
                    out.put("diameter-ratio", one.bareDiameter() / other.bareDiameter())
                            .put("area-ratio", one.area() / other.area()).put("strands", other.area() / one.area());
                });
    }

    private static Calculation againstNominal() {
        return Calculation.named(WIRE, "wire-resistance-against-nominal")
                .title("Measured or guaranteed resistance of a wire against the nominal one")
                .source(SIZES)
                .formula("R'/(rho/A)")
                .text("size", SHAPE, null, "wire size")
                .number("resistance", RESISTANCE_PER_LENGTH, "Ω/1000ft", "resistance per length at 20 °C")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("nominal", RESISTANCE_PER_LENGTH, "Ω/1000ft", "nominal resistance per length at 20 °C")
                .gives("ratio", RATIO, "", "given over nominal")
                .by((in, out) -> {
                    double nominal = WireSize.parse(in.text("size"))
                            .ohmsPerMetre(in.choice("material", ConductorMaterial.class));
                    out.put("nominal", nominal).put("ratio", in.number("resistance") / nominal);
                });
    }

    private static Calculation preferred() {
        return Calculation.named(WIRE, "preferred-diameter")
                .title("Preferred number of the R 20 series beside its exact value")
                .source("ISO 3, used by IEC 60317")
                .formula("10^(k/20)")
                .whole("step", null, "step k from 1.00, 0 to 20")
                .gives("exact", RATIO, "", "exact value")
                .gives("rounded", RATIO, "", "preferred number")
                .by((in, out) -> {
                    PreferredDiameter number = PreferredDiameter.of(in.whole("step"));
                    out.put("exact", number.exact()).put("rounded", number.rounded());
                });
    }

    private static Calculation gauging() {
        return Calculation.named(WIRE, "wire-gauging")
                .title("Which sizes a measured diameter may be")
                .source(SIZES)
                .formula("a size fits when the reading, within its uncertainty, lies in the size's range")
                .number("diameter", LENGTH, "mm", "diameter read, 0.1 to 6 mm")
                .choice("covering", InsulationGrade.class, "bare", "what was measured")
                .number("expanded", LENGTH, "mm", "0.004", "expanded uncertainty of the reading")
                .choice("system", List.of("all", "awg", "swg", "metric"), "all", "sizes to compare with")
                .givesWord("nearest", "nearest size")
                .givesWord("fitting", "every size that fits")
                .givesWord("ambiguous", "yes when more than one fits")
                .by((in, out) -> {
                    WireGauging found = WireGauging.of(in.number("diameter"),
                            in.choice("covering", InsulationGrade.class),
                            in.number("expanded"), sizes(in.text("system")));
                    String fitting = found.fitting().stream().map(WireSize::label).collect(Collectors.joining(", "));
                    out.put("nearest", found.nearest().label()).put("fitting", fitting.isEmpty() ? "none" : fitting)
                            .put("ambiguous", found.ambiguous() ? "yes" : "no");
                    if (found.ambiguous()) {
                        out.warn("more than one size fits: gauge again at another place, or clean the enamel off and"
                                + " gauge bare");
                    }
                });
    }

    private static List<WireSize> sizes(String system) {
        List<WireSize> sizes = new ArrayList<>();
        for (WireSystem one : WireSystem.values()) {
            if (system.equals("all") || one.name().equalsIgnoreCase(system)) {
                sizes.addAll(WireSizes.of(one));
            }
        }
        return sizes;
    }
}
