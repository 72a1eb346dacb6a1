package org.copperbook.calc.winding.design;

import static org.copperbook.calc.quantity.Dimension.APPARENT_POWER;
import static org.copperbook.calc.quantity.Dimension.AREA;
import static org.copperbook.calc.quantity.Dimension.CURRENT;
import static org.copperbook.calc.quantity.Dimension.CURRENT_DENSITY;
import static org.copperbook.calc.quantity.Dimension.FIELD_STRENGTH;
import static org.copperbook.calc.quantity.Dimension.FLUX_DENSITY;
import static org.copperbook.calc.quantity.Dimension.FREQUENCY;
import static org.copperbook.calc.quantity.Dimension.LENGTH;
import static org.copperbook.calc.quantity.Dimension.MAGNETIC_FLUX;
import static org.copperbook.calc.quantity.Dimension.MASS;
import static org.copperbook.calc.quantity.Dimension.MONEY;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.copperbook.calc.OutOfRange;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationBuilder;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.winding.BundleText;
import org.copperbook.calc.winding.ConductorBundle;
import org.copperbook.calc.winding.PhaseJunction;
import org.copperbook.calc.wire.ConductorMaterial;
import org.copperbook.calc.wire.InsulationGrade;

/** Will it work, redesign, and the first winding of a bare core. */
public final class DesignCalculations implements CalculationSource {
    private static final String WINDING = "winding";
    private static final String GUIDE = "usual ranges: Pyrhonen, Jokinen and Hrabovcova (memory), else common practice";

    @Override
    public List<Calculation> calculations() {
        return List.of(density(), fluxDensities(), range(), redesign(), bareCore(), reconnection(), cost());
    }

    private static Calculation density() {
        return Calculation.named(WINDING, "current-density")
                .title("Current of one circuit and its density")
                .source("definition; " + GUIDE)
                .formula("I = S/(sqrt(3) U); J = I/(a s A)")
                .number("rating", APPARENT_POWER, "VA", "apparent power, three phases")
                .number("line-volts", VOLTAGE, "V", "line voltage")
                .choice("junction", PhaseJunction.class, "star", "star or delta")
                .whole("circuits", "1", "parallel circuits per phase")
                .text("strands", "6 x AWG 15", null, "strands in hand of one circuit")
                .choice("material", ConductorMaterial.class, "copper", "conductor material")
                .choice("cooling", List.of("open", "closed"), "open",
                "open ventilated or totally enclosed, for the usual range")
                .gives("line-current", CURRENT, "A", "line current")
                .gives("circuit-current", CURRENT, "A", "current of one circuit")
                .gives("density", CURRENT_DENSITY, "A/mm²", "current density")
                .givesWord("usual", "below, inside or above the usual range")
                .by((in, out) -> {
                    ConductorBundle bundle = BundleText.read(in.text("strands"),
                            in.choice("material", ConductorMaterial.class));
                    double line = CurrentDensity.lineCurrent(in.number("rating"), in.number("line-volts"));
                    PhaseJunction junction = in.choice("junction", PhaseJunction.class);
                    double density = CurrentDensity.of(line, junction, in.whole("circuits"), bundle.area());
                    UsualRange usual = UsualRange.of(MachineType.SALIENT_POLE, in.text("cooling").equals("open")
                            ? DesignQuantity.STATOR_CURRENT_DENSITY_OPEN
                            : DesignQuantity.STATOR_CURRENT_DENSITY_CLOSED);
                    out.put("line-current", line)
                            .put("circuit-current", CurrentDensity.circuitCurrent(line, junction, in.whole("circuits")))
                            .put("density", density).put("usual", usual.place(density));
                    if (usual.place(density) == UsualRange.Place.ABOVE) {
                        out.warn("the current density lies above the usual range");
                    }
                });
    }

    private static CalculationBuilder core(CalculationBuilder builder) {
        return builder.whole("slots", null, "slots")
                .whole("poles", null, "poles")
                .number("bore", LENGTH, "mm", "bore")
                .number("length", LENGTH, "mm", "gross core length")
                .number("iron-length", LENGTH, "mm", "length of iron: less ducts, times stacking factor")
                .number("tooth-width", LENGTH, "mm", "narrowest part of a tooth")
                .number("yoke-depth", LENGTH, "mm", "iron behind the slots")
                .number("slot-area", AREA, "mm²", "usable area of a slot");
    }

    private static CoreGeometry geometry(Arguments in) {
        return new CoreGeometry(in.whole("slots"), in.number("bore"), in.number("length"), in.number("iron-length"),
                in.number("tooth-width"), in.number("yoke-depth"), in.number("slot-area"));
    }

    private static Calculation fluxDensities() {
        return core(Calculation.named(WINDING, "flux-densities")
                .title("Flux densities in gap, teeth and yoke for a flux per pole")
                .source("continuity of flux; " + GUIDE)
                .formula("Bg = Phi p/(D L); Bt = Bg ts L/(bt Lfe); By = Phi/(2 hy Lfe)"))
                .number("flux", MAGNETIC_FLUX, "Wb", "flux per pole")
                .choice("machine", MachineType.class, "salient-pole", "kind of machine, for the usual ranges")
                .gives("gap", FLUX_DENSITY, "T", "peak in the gap")
                .gives("tooth", FLUX_DENSITY, "T", "peak in the teeth, apparent")
                .gives("yoke", FLUX_DENSITY, "T", "peak in the yoke")
                .by((in, out) -> {
                    CoreGeometry.FluxDensities found = geometry(in).densities(in.number("flux"), in.whole("poles"));
                    out.put("gap", found.gap()).put("tooth", found.tooth()).put("yoke", found.yoke());
                    MachineType machine = in.choice("machine", MachineType.class);
                    warn(out, machine, DesignQuantity.GAP, found.gap());
                    warn(out, machine, DesignQuantity.TOOTH, found.tooth());
                    warn(out, machine, DesignQuantity.YOKE, found.yoke());
                });
    }

    private static void warn(Results out, MachineType machine, DesignQuantity quantity, double value) {
        UsualRange usual = UsualRange.of(machine, quantity);
        if (usual.place(value) != UsualRange.Place.INSIDE) {
            out.warn(String.format(Locale.ROOT, "%s: %.2f T lies outside the usual %.2f to %.2f T",
                    quantity.name().toLowerCase(Locale.ROOT), value, usual.low(), usual.high()));
        }
    }

    private static Calculation range() {
        return Calculation.named(WINDING, "usual-range")
                .title("Usual range of a design figure, in SI: T, A/m², A/m or a plain ratio")
                .source(GUIDE)
                .formula("table")
                .choice("machine", MachineType.class, "salient-pole", "kind of machine")
                .choice("quantity", DesignQuantity.class, null, "design figure")
                .gives("low", RATIO, "", "lower end")
                .gives("high", RATIO, "", "upper end")
                .givesWord("origin", "where the range comes from")
                .by((in, out) -> {
                    UsualRange usual = UsualRange.of(in.choice("machine", MachineType.class),
                            in.choice("quantity", DesignQuantity.class));
                    out.put("low", usual.low()).put("high", usual.high()).put("origin", usual.source());
                });
    }

    private static Calculation redesign() {
        return Calculation.named(WINDING, "redesign")
                .title("Turns and copper for other volts, frequency, circuits, junction or span, poles kept")
                .source("E = sqrt(2) pi f N kw Phi at the same flux; same copper in the slot;"
                        + " same current density (common practice)")
                .formula("T2 = T1 (E2/E1)(f1/f2)(kw1/kw2)(a2/a1); A2 = A1 T1/T2")
                .number("f", FREQUENCY, "Hz", "50", "frequency before")
                .number("line-volts", VOLTAGE, "V", "line voltage before")
                .choice("junction", PhaseJunction.class, "star", "junction before")
                .whole("circuits", "1", "circuits before")
                .number("coils-per-phase", RATIO, "", "coils per phase")
                .number("turns", RATIO, "", "turns per coil before")
                .number("kw", RATIO, "", "winding factor before")
                .number("area", AREA, "mm²", "conductor area of one circuit before")
                .number("line-current", CURRENT, "A", "line current before")
                .number("new-f", FREQUENCY, "Hz", "50", "new frequency")
                .number("new-line-volts", VOLTAGE, "V", "new line voltage")
                .choice("new-junction", PhaseJunction.class, "star", "new junction")
                .whole("new-circuits", "1", "new circuits")
                .number("new-kw", RATIO, "", "winding factor with the new span")
                .gives("exact-turns", RATIO, "", "turns per coil before rounding")
                .gives("new-turns", RATIO, "", "turns per coil")
                .gives("flux-ratio", RATIO, "", "gap flux density over that before")
                .gives("new-area", AREA, "mm²", "conductor area of one circuit")
                .gives("new-line-current", CURRENT, "A", "line current at the same density")
                .gives("new-rating", APPARENT_POWER, "kVA", "apparent power")
                .gives("rating-ratio", RATIO, "", "apparent power over that before")
                .gives("density", CURRENT_DENSITY, "A/mm²", "current density")
                .by((in, out) -> {
                    RatedWinding before = new RatedWinding(in.number("f"), in.number("line-volts"),
                            in.choice("junction", PhaseJunction.class), in.whole("circuits"),
                            in.number("coils-per-phase"),
                            in.number("turns"), in.number("kw"), in.number("area"), in.number("line-current"));
                    Redesign found = Redesign.of(before,
                            new Redesign.Wish(in.number("new-f"), in.number("new-line-volts"),
                            in.choice("new-junction", PhaseJunction.class), in.whole("new-circuits"),
                            in.number("new-kw")));
                    out.put("exact-turns", found.exactTurns()).put("new-turns", found.after().turnsPerCoil())
                            .put("flux-ratio", found.fluxRatio()).put("new-area", found.after().conductorArea())
                            .put("new-line-current", found.after().lineCurrent())
                            .put("new-rating", found.after().rating())
                            .put("rating-ratio", found.ratingRatio()).put("density", found.after().currentDensity());
                    found.warnings().forEach(out::warn);
                });
    }

    private static Calculation bareCore() {
        return core(Calculation.named(WINDING, "bare-core")
                .title("First winding for a bare core, two-layer lap, three phases")
                .source("E = sqrt(2) pi f N kw Phi; continuity of flux; " + GUIDE)
                .formula("N = E/(sqrt(2) pi f kw Phi) at the wished gap density, whole turns,"
                        + " wire for the room in the slot"))
                .choice("machine", MachineType.class, "salient-pole", "kind of machine")
                .number("f", FREQUENCY, "Hz", "50", "frequency")
                .number("line-volts", VOLTAGE, "V", "line voltage")
                .choice("junction", PhaseJunction.class, "star", "star or delta")
                .number("rating", APPARENT_POWER, "VA", "apparent power")
                .number("b", FLUX_DENSITY, "T", "0.9", "peak gap density to aim at")
                .number("fill", RATIO, "", "0.7", "square-cell fill of the slot")
                .choice("grade", InsulationGrade.class, "grade-2", "enamel")
                .whole("strands", "24", "most strands in hand")
                .number("thickest", LENGTH, "mm", "1.25", "thickest wire, bare")
                .gives("turns", RATIO, "", "turns per coil")
                .gives("span", RATIO, "", "coil span in slots")
                .gives("circuits", RATIO, "", "parallel circuits")
                .givesWord("wire", "strands in hand")
                .gives("gap", FLUX_DENSITY, "T", "gap density reached")
                .gives("tooth", FLUX_DENSITY, "T", "tooth density")
                .gives("yoke", FLUX_DENSITY, "T", "yoke density")
                .gives("density", CURRENT_DENSITY, "A/mm²", "current density")
                .gives("linear-loading", FIELD_STRENGTH, "kA/m", "ampere-conductors along the bore")
                .gives("lowest-turns", RATIO, "", "least turns in series per phase inside the usual gap density")
                .gives("highest-turns", RATIO, "", "most turns in series per phase inside the usual gap density")
                .givesWord("others", "further proposals")
                .by(DesignCalculations::firstWinding);
    }

    private static void firstWinding(Arguments in, Results out) {
        BareCoreWish wish = new BareCoreWish(in.choice("machine", MachineType.class), geometry(in), in.whole("poles"),
                in.number("f"), in.number("line-volts"), in.choice("junction", PhaseJunction.class),
                in.number("rating"),
                in.number("b"), in.number("fill"), in.choice("grade", InsulationGrade.class), in.whole("strands"),
                in.number("thickest"));
        BareCore found = BareCore.design(wish);
        out.put("lowest-turns", found.lowestSeriesTurns()).put("highest-turns", found.highestSeriesTurns());
        if (found.proposals().isEmpty()) {
            out.warn("no wire fits the slot: allow thicker wire, more strands or more fill");
            return;
        }
        FirstWinding best = found.proposals().get(0);
        out.put("turns", best.turnsPerCoil()).put("span", best.span()).put("circuits", best.circuits())
                .put("wire", best.strands() + " x " + best.wire().label()).put("gap", best.densities().gap())
                .put("tooth", best.densities().tooth()).put("yoke", best.densities().yoke())
                .put("density", best.currentDensity())
                .put("linear-loading", best.linearLoading())
                .put("others", String.join("; ", found.proposals().stream().skip(1).limit(4)
                .map(DesignCalculations::written).toList()));
        best.remarks().forEach(out::warn);
    }

    private static String written(FirstWinding w) {
        return String.format(Locale.ROOT, "span %d, %d circuit(s), %d turns, %d x %s, %.2f T", w.span(), w.circuits(),
                w.turnsPerCoil(), w.strands(), w.wire().label(), w.densities().gap());
    }

    private static Calculation reconnection() {
        return Calculation.named(WINDING, "reconnection")
                .title("Volts, amperes and rating of an unchanged winding joined another way")
                .source("circuit identity; Bakshi, Ex. 4.18")
                .formula("each coil keeps its own voltage and current")
                .number("rating", APPARENT_POWER, "VA", "apparent power before")
                .number("line-volts", VOLTAGE, "V", "line voltage before")
                .choice("before", PhaseJunction.class, null, "star or delta before")
                .whole("circuits-before", "1", "parallel circuits before")
                .choice("after", PhaseJunction.class, null, "star or delta after")
                .whole("circuits-after", "1", "parallel circuits after")
                .gives("line-volts-after", VOLTAGE, "V", "line voltage after")
                .gives("line-current-after", CURRENT, "A", "line current after")
                .gives("rating-after", APPARENT_POWER, "VA", "apparent power after")
                .gives("voltage-ratio", RATIO, "", "line voltage after over before")
                .by((in, out) -> {
                    Reconnection after = Reconnection.of(in.number("rating"), in.number("line-volts"),
                            in.choice("before", PhaseJunction.class), in.whole("circuits-before"),
                            in.choice("after", PhaseJunction.class), in.whole("circuits-after"));
                    out.put("line-volts-after", after.lineVolts()).put("line-current-after", after.lineCurrent())
                            .put("rating-after", after.rating())
                            .put("voltage-ratio", after.lineVolts() / in.number("line-volts"));
                });
    }

    private static Calculation cost() {
        return Calculation.named("winding", "copper-cost")
                .title("Copper to draw from stock and its cost")
                .source("definition; the allowance is common practice")
                .formula("order = m (1 + allowance); cost = order x price, to the cent")
                .number("mass", MASS, "kg", "bare mass of the winding")
                .number("allowance", RATIO, "%", "8", "allowance for ends and waste")
                .text("price", "14.35", null, "price per kilogram")
                .gives("order", MASS, "kg", "mass to draw")
                .gives("cost", MONEY, "", "cost")
                .by((in, out) -> {
                    BigDecimal price;
                    try {
                        price = new BigDecimal(in.text("price").trim().replace(',', '.'));
                    } catch (NumberFormatException e) {
                        throw new OutOfRange("price per kilogram", in.text("price"), "numbers", "a price is a number");
                    }
                    CopperNeed need = CopperNeed.of(in.number("mass"), in.number("allowance"), price);
                    out.put("order", need.orderKilograms()).put("cost", need.cost().doubleValue());
                });
    }
}
