package org.copperbook.calc.winding;

import static org.copperbook.calc.quantity.Dimension.AREA;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MASS;
import static org.copperbook.calc.quantity.Dimension.MASS_PER_LENGTH;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.wire.ConductorMaterial;
import org.copperbook.calc.wire.InsulationGrade;
import org.copperbook.calc.wire.SlotFill;
import org.copperbook.calc.wire.StockedWire;
import org.copperbook.calc.wire.Substitute;
import org.copperbook.calc.wire.Substitution;
import org.copperbook.calc.wire.SubstitutionWish;
import org.copperbook.calc.wire.WireSize;

/** Strands in hand: their area, resistance, mass, fill and substitutes. */
public final class StrandCalculations implements CalculationSource {
    private static final String WIRE = "wire";
    private static final String SHAPE = "6 x AWG 15, 2x1.0mm + 1x0.9mm, 1 x strip 6.83x4.14mm";
    private static final String COPPER = "IEC 60028 (resistivity and density of copper); geometry";

    @Override
    public List<Calculation> calculations() {
        return List.of(bundle(), equivalent(), fill(), substitution(), predicted(), meanTurn(), meanTurnCheck(),
                lengthAndArea());
    }

    static ConductorBundle bundle(Arguments in, String key) {
        return BundleText.read(in.text(key), in.choice("material", ConductorMaterial.class));
    }

    private static Calculation bundle() {
        return Calculation.named(WIRE, "strands-in-hand")
                .title("Area, resistance and mass of strands in hand")
                .source(COPPER)
                .formula("A = sum of n pi d^2/4")
                .text("strands", SHAPE, null, "strands in hand")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("area", AREA, "mm²", "area of all strands")
                .gives("circular-mils", AREA, "cmil", "area of all strands")
                .gives("resistance", RESISTANCE_PER_LENGTH, "Ω/km", "resistance at 20 °C")
                .gives("mass", MASS_PER_LENGTH, "kg/km", "bare mass")
                .by((in, out) -> {
                    ConductorBundle bundle = bundle(in, "strands");
                    out.put("area", bundle.area()).put("circular-mils", bundle.area())
                            .put("resistance", bundle.ohmsPerMetre())
                            .put("mass", bundle.kilogramsPerMetre());
                });
    }

    private static Calculation equivalent() {
        return Calculation.named(WIRE, "equivalent-strands")
                .title("Strands of another size for the area of the original")
                .source("geometry; ANSI/EASA AR100: conductor area not less than original")
                .formula("n = A/(pi d^2/4)")
                .text("original", SHAPE, null, "original strands in hand")
                .text("size", "1.12mm", null, "other wire size")
                .whole("count", "", "strands of that size to compare")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("strands", RATIO, "", "exact number of strands")
                .gives("area-change", RATIO, "%", "area with the strands given over the original, less one")
                .by((in, out) -> {
                    double original = bundle(in, "original").area();
                    double each = WireSize.parse(in.text("size")).area();
                    out.put("strands", original / each);
                    if (in.has("count")) {
                        double change = in.whole("count") * each / original - 1;
                        out.put("area-change", change);
                        if (change < -1e-9) {
                            out.warn("less copper than in the original");
                        }
                    }
                });
    }

    private static Calculation fill() {
        return Calculation.named(WIRE, "slot-fill")
                .title("Slot fill by its three definitions")
                .source("geometry; overall diameters in the style of IEC 60317-0-1")
                .formula("copper n A/As; insulated round n pi D^2/4/As; square cell n D^2/As")
                .number("slot-area", AREA, "mm²", "slot area the share refers to, gross or usable")
                .number("conductors", RATIO, "", "conductors in the slot: coil sides times turns")
                .text("strands", SHAPE, null, "strands in hand, round wire")
                .choice("grade", InsulationGrade.class, "grade-2", "enamel")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("copper", RATIO, "", "copper over slot area")
                .gives("insulated-round", RATIO, "", "insulated circles over slot area")
                .gives("square-cell", RATIO, "", "squares round the insulated wires over slot area")
                .by((in, out) -> {
                    List<SlotFill.Wires> wires = new ArrayList<>();
                    for (ConductorBundle.Strands some : bundle(in, "strands").strands()) {
                        wires.add(new SlotFill.Wires(in.number("conductors") * some.count(), round(some),
                                in.choice("grade", InsulationGrade.class)));
                    }
                    SlotFill fill = SlotFill.of(wires, in.number("slot-area"));
                    out.put("copper", fill.copper()).put("insulated-round", fill.insulatedRound())
                            .put("square-cell", fill.squareCell());
                    if (fill.squareCell() > 1) {
                        out.warn("the wires do not go into the slot");
                    }
                });
    }

    private static WireSize round(ConductorBundle.Strands some) {
        if (some.conductor() instanceof WireSize size) {
            return size;
        }
        throw new OutOfRange("strands in hand", some.conductor().label(), "round wire", "a strip has no square cell");
    }

    private static Calculation substitution() {
        return Calculation.named(WIRE, "wire-substitution")
                .title("Best combinations of stocked sizes for the original area")
                .source("geometry; ANSI/EASA AR100: conductor area not less than original; the band is common practice")
                .formula("exact search, ranked by area error, strands, sizes, stock left")
                .text("original", SHAPE, null, "original strands in hand")
                .text("stock", "1.0mm=12; 0.9mm=8.5; AWG 17=3", null,
                "sizes on the shelf with kilograms, separated by semicolons")
                .choice("grade", InsulationGrade.class, "grade-2", "enamel of the stock")
                .number("lowest", RATIO, "%", "-1", "lowest area over the original less one")
                .number("highest", RATIO, "%", "3", "highest area over the original less one")
                .whole("strands", "12", "most strands in hand")
                .whole("sizes", "3", "most different sizes, 1 to 3")
                .number("length", LENGTH, "m", "0",
                "length of each strand in the whole winding; 0 when stock does not matter")
                .number("fill-margin", RATIO, "%", "", "largest square-cell fill over that of the original less one;"
                        + " left out when fill does not matter")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .givesWord("best", "best combination")
                .gives("area-error", RATIO, "%", "its area over the original less one")
                .givesWord("others", "the next four")
                .by((in, out) -> {
                    SubstitutionWish wish = SubstitutionWish.of(bundle(in, "original").area(), in.whole("strands"))
                            .withBand(in.number("lowest"), in.number("highest")).withSizes(in.whole("sizes"))
                            .withLength(in.number("length"));
                    if (in.has("fill-margin")) {
                        wish = wish.withSquareSum(bundle(in, "original")
                                .squareSum(in.choice("grade", InsulationGrade.class))
                                * (1 + in.number("fill-margin")));
                    }
                    List<Substitute> found = Substitution.best(stock(in.text("stock"),
                            in.choice("grade", InsulationGrade.class)), wish, 5);
                    if (found.isEmpty()) {
                        out.put("best", "none").warn("no combination of the stock lies in the band");
                        return;
                    }
                    out.put("best", found.get(0).label()).put("area-error", found.get(0).areaError()).put("others",
                            String.join("; ", found.stream().skip(1).map(Substitute::label).toList()));
                    if (found.get(0).underOriginal()) {
                        out.warn("less copper than in the original");
                    }
                });
    }

    private static List<StockedWire> stock(String text, InsulationGrade grade) {
        List<StockedWire> stock = new ArrayList<>();
        for (String entry : text.split(";")) {
            String[] parts = entry.split("=");
            if (parts.length != 2) {
                throw new OutOfRange("stock", '"' + entry.trim() + '"', "entries like 1.0mm=12",
                        "a size needs its kilograms");
            }
            try {
                stock.add(new StockedWire(WireSize.parse(parts[0]), grade,
                        Double.parseDouble(parts[1].trim().replace("kg", "").trim())));
            } catch (NumberFormatException e) {
                throw new OutOfRange("kilograms on hand", parts[1].trim(), "numbers", "a mass is a number");
            }
        }
        return stock;
    }

    private static Calculation predicted() {
        return Calculation.named("winding", "predicted-resistance")
                .title("Resistance and copper mass of a winding with equal coils")
                .source("Ohm's law; " + COPPER + "; IEC 60034-1, 8.6.2 for the temperature")
                .formula("R = rho l T C/(a^2 s A) (k + t)/(k + 20)")
                .number("coils-per-phase", RATIO, "", "coils per phase")
                .number("turns", RATIO, "", "turns per coil")
                .number("mean-turn", LENGTH, "m", "mean length of turn")
                .text("strands", SHAPE, null, "strands in hand of one circuit")
                .whole("circuits", "1", "parallel circuits per phase")
                .whole("phases", "3", "phases")
                .number("temperature", TEMPERATURE, "°C", "20", "winding temperature")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("coil", RESISTANCE, "Ω", "resistance of one coil")
                .gives("phase", RESISTANCE, "Ω", "resistance of one phase")
                .gives("line-star", RESISTANCE, "Ω", "between lines in star")
                .gives("line-delta", RESISTANCE, "Ω", "between lines in delta")
                .gives("length", LENGTH, "m", "length of conductor of all phases")
                .gives("length-per-phase", LENGTH, "m", "length of conductor of one phase")
                .gives("mass", MASS, "kg", "bare mass of all phases")
                .by((in, out) -> {
                    EqualCoils coils = new EqualCoils(in.number("coils-per-phase"), in.number("turns"),
                            in.number("mean-turn"),
                            bundle(in, "strands"), in.whole("circuits"));
                    double phase = coils.phaseResistance(in.number("temperature"));
                    double length = coils.coilsPerPhase() * coils.turnsPerCoil() * coils.meanTurn();
                    out.put("coil", coils.coilResistance(in.number("temperature"))).put("phase", phase)
                            .put("line-star", 2 * phase)
                            .put("line-delta", phase * 2 / 3).put("length-per-phase", length)
                            .put("length", length * in.whole("phases")).put("mass", coils.mass(in.whole("phases")));
                });
    }

    private static Calculation meanTurn() {
        return Calculation.named("winding", "mean-turn")
                .title("Mean length of turn that a resistance or a mass implies")
                .source("Ohm's law; " + COPPER)
                .formula("l = R a^2 s A/(rho T C); l = m/(gamma s A T)")
                .number("resistance", RESISTANCE, "Ω", "", "phase resistance")
                .number("temperature", TEMPERATURE, "°C", "20", "winding temperature at the reading")
                .number("mass", MASS, "kg", "", "bare mass of all coils")
                .number("coils", RATIO, "", "coils: of one phase for the resistance, of all phases for the mass")
                .number("turns", RATIO, "", "turns per coil")
                .text("strands", SHAPE, null, "strands in hand of one circuit")
                .whole("circuits", "1", "parallel circuits")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("from-resistance", LENGTH, "m", "from the resistance")
                .gives("from-mass", LENGTH, "m", "from the mass")
                .by((in, out) -> {
                    if (!in.has("resistance") && !in.has("mass")) {
                        throw new OutOfRange("resistance and mass", "neither", "at least one of them",
                                "one of them implies the length");
                    }
                    ConductorBundle bundle = bundle(in, "strands");
                    if (in.has("resistance")) {
                        out.put("from-resistance", EqualCoils.meanTurnFromResistance(in.number("resistance"),
                                in.number("temperature"), in.number("coils"), in.number("turns"), bundle,
                                in.whole("circuits")));
                    }
                    if (in.has("mass")) {
                        out.put("from-mass", EqualCoils.meanTurnFromMass(in.number("mass"),
                                in.number("coils") * in.number("turns"), bundle));
                    }
                });
    }

    private static Calculation meanTurnCheck() {
        return Calculation.named("winding", "mean-turn-check")
                .title("A written mean length of turn against the copper mass")
                .source("geometry; " + COPPER)
                .formula("written/(m/(gamma s A T)), near a power of ten: the decimal mark has slipped")
                .number("mean-turn", LENGTH, "m", "mean length of turn as written")
                .number("mass", MASS, "kg", "bare mass of all coils")
                .number("turns", RATIO, "", "turns of all coils")
                .text("strands", SHAPE, null, "strands in hand")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("implied", LENGTH, "m", "from the mass")
                .gives("ratio", RATIO, "", "written over implied")
                .gives("mass-as-written", MASS, "kg", "mass that the written length would have")
                .givesWord("finding", "agrees, differs or decimal-slip")
                .by((in, out) -> {
                    ConductorBundle bundle = bundle(in, "strands");
                    MeanTurnCheck check = MeanTurnCheck.of(in.number("mean-turn"), in.number("mass"),
                            in.number("turns"), bundle);
                    out.put("implied", check.implied()).put("ratio", check.ratio()).put("finding", check.finding())
                            .put("mass-as-written",
                            in.number("mean-turn") * in.number("turns") * bundle.kilogramsPerMetre());
                    if (check.finding() == MeanTurnCheck.Finding.DECIMAL_SLIP) {
                        out.warn("the decimal mark of the mean length of turn seems to have slipped");
                    }
                });
    }

    private static Calculation lengthAndArea() {
        return Calculation.named("winding", "length-and-area-from-mass-and-resistance")
                .title("Conductor length and area of a winding with one circuit from its mass and resistance")
                .source(COPPER)
                .formula("l = sqrt(R m/(rho gamma)); A = sqrt(rho m/(gamma R))")
                .number("mass", MASS, "kg", "bare mass")
                .number("resistance", RESISTANCE, "Ω", "resistance of the whole winding")
                .number("temperature", TEMPERATURE, "°C", "20", "winding temperature at the reading")
                .number("turns", RATIO, "", "", "turns of the whole winding")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .gives("length", LENGTH, "m", "length of conductor")
                .gives("area", AREA, "mm²", "conductor area")
                .gives("mean-turn", LENGTH, "m", "mean length of turn, when the turns are given")
                .by((in, out) -> {
                    MassAndResistance found = MassAndResistance.of(in.number("mass"), in.number("resistance"),
                            in.number("temperature"),
                            in.choice("material", ConductorMaterial.class));
                    out.put("length", found.length()).put("area", found.area());
                    if (in.has("turns")) {
                        out.put("mean-turn", found.length() / in.number("turns"));
                    }
                });
    }
}
