package org.copperbook.calc.resistance;

import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.uncertainty.InstrumentAccuracy;
import org.copperbook.calc.uncertainty.SharedTerms;
import org.copperbook.calc.uncertainty.Uncertain;

/** Winding resistance as it is read and compared. */
public final class ResistanceCalculations implements CalculationSource {

    private static final String AREA = "resistance";

    @Override
    public List<Calculation> calculations() {
        return List.of(atTemperature(), factor(), phaseValues(), unbalance(), asLeft(), band(), loadLoss(), twoWire());
    }

    private static Calculation atTemperature() {
        return Calculation.named(AREA, "resistance-at-temperature")
                .title("Resistance brought to another temperature")
                .source("IEC 60034-1, 8.6.2.3; IEEE 118 for 234.5")
                .formula("R2 = R1 (k + t2)/(k + t1)")
                .number("r", RESISTANCE, "Ω", "reading")
                .number("t", TEMPERATURE, "°C", "winding temperature at the reading, -60 to 300 °C")
                .number("to", TEMPERATURE, "°C", "20", "reference temperature")
                .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                .number("u-r", RESISTANCE, "Ω", "0", "standard uncertainty of the reading")
                .number("u-t", TEMPERATURE_RISE, "K", "0", "standard uncertainty of the temperature")
                .gives("r-to", RESISTANCE, "Ω", "resistance at the reference temperature")
                .gives("u", RESISTANCE, "Ω", "its standard uncertainty")
                .gives("factor", RATIO, "", "R2 / R1")
                .by((in, out) -> {
                    Conductor c = in.choice("conductor", Conductor.class);
                    Uncertain r = TemperatureCorrection.correct(new Uncertain(in.number("r"), in.number("u-r")),
                            new Uncertain(in.number("t"), in.number("u-t")), in.number("to"), c);
                    out.put("r-to", r.value()).put("u", r.u())
                            .put("factor", TemperatureCorrection.factor(c, in.number("t"), in.number("to")));
                });
    }

    private static Calculation factor() {
        return Calculation.named(AREA, "temperature-factor")
                .title("Factor between two temperatures")
                .source("IEC 60034-1, 8.6.2.3; IEEE 118 for 234.5")
                .formula("(k + t2)/(k + t1)")
                .number("from", TEMPERATURE, "°C", "temperature of the reading")
                .number("to", TEMPERATURE, "°C", "temperature wanted")
                .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                .gives("factor", RATIO, "", "R2 / R1")
                .by((in, out) -> out.put("factor", TemperatureCorrection.factor(
                        in.choice("conductor", Conductor.class), in.number("from"), in.number("to"))));
    }

    private static Calculation phaseValues() {
        return Calculation.named(AREA, "phase-values")
                .title("Phase values from the three terminal readings")
                .source("IEC 60034-2-1, 5.7; circuit identities")
                .formula("star R_U = (R_UV + R_WU - R_VW)/2; delta R = 2 R_VW R_WU/(R_VW + R_WU - R_UV)"
                        + " - (R_VW + R_WU - R_UV)/2")
                .choice("connection", List.of("star", "delta"), null, "how the phases are joined")
                .numberOrOpen("uv", RESISTANCE, "Ω", null, "reading U to V, or OL")
                .numberOrOpen("vw", RESISTANCE, "Ω", null, "reading V to W, or OL")
                .numberOrOpen("wu", RESISTANCE, "Ω", null, "reading W to U, or OL")
                .number("u", RESISTANCE, "Ω", "0", "standard uncertainty of each reading")
                .number("gain", RATIO, "%", "0", "relative standard uncertainty common to the readings")
                .givesWord("finding", "sound, open phase, shorted phase, open line or inconsistent")
                .givesWord("where", "the phase, line or reading concerned")
                .givesWord("also-possible", "other findings that the uncertainty allows")
                .gives("r-u", RESISTANCE, "Ω", "phase U (delta: between U and V)")
                .gives("r-v", RESISTANCE, "Ω", "phase V (delta: between V and W)")
                .gives("r-w", RESISTANCE, "Ω", "phase W (delta: between W and U)")
                .gives("u-r", RESISTANCE, "Ω", "largest standard uncertainty of a phase value")
                .gives("line-unbalance", RATIO, "%", "largest deviation of a reading from their mean")
                .by(ResistanceCalculations::computePhases);
    }

    private static void computePhases(Arguments in, Results out) {
        SharedTerms shared = new SharedTerms(in.number("gain"), 0, 0, 0);
        LineReading uv = reading(in, "uv");
        LineReading vw = reading(in, "vw");
        LineReading wu = reading(in, "wu");
        PhaseResult result = in.text("connection").equals("star")
                ? PhaseValues.star(uv, vw, wu, shared)
                : PhaseValues.delta(uv, vw, wu, shared);
        out.put("finding", result.finding());
        if (result instanceof PhaseResult.Sound s) {
            out.put("r-u", s.u().value()).put("r-v", s.v().value()).put("r-w", s.w().value())
                    .put("u-r", Math.max(s.u().u(), Math.max(s.v().u(), s.w().u())))
                    .put("line-unbalance", Unbalance.ofMean(in.number("uv"), in.number("vw"), in.number("wu")));
        } else if (result instanceof PhaseResult.OpenPhase o) {
            out.put("where", o.open().name());
        } else if (result instanceof PhaseResult.ShortedPhase s) {
            out.put("where", s.shorted().name());
        } else if (result instanceof PhaseResult.OpenLine l) {
            out.put("where", l.line() == null ? "more than one" : l.line().name());
        } else if (result instanceof PhaseResult.Inconsistent i) {
            out.put("where", i.repeat().name());
            out.warn("no three resistances give these readings: repeat " + i.repeat());
        }
        List<String> also = new ArrayList<>();
        result.alsoPossible().forEach(f -> also.add(f.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        out.put("also-possible", also.isEmpty() ? "none" : String.join(", ", also));
    }

    private static LineReading reading(Arguments in, String name) {
        double ohms = in.number(name);
        return Double.isInfinite(ohms) ? LineReading.aboveRange() : LineReading.of(ohms, in.number("u"));
    }

    private static Calculation unbalance() {
        return Calculation.named(AREA, "resistance-unbalance")
                .title("Unbalance of resistances")
                .source("NEMA MG 1, 12.45 (definition); JCGM 100:2008, F.1.2.3 (shared terms)")
                .formula("largest |R - mean| / mean")
                .numbers("r", RESISTANCE, "Ω", null, "readings")
                .number("percent", RATIO, "%", "0", "accuracy of the meter, per cent of reading")
                .number("digits", RATIO, "", "0", "accuracy of the meter, digits")
                .number("resolution", RESISTANCE, "Ω", "0", "one digit on the range")
                .gives("unbalance", RATIO, "%", "unbalance")
                .gives("u", RATIO, "%", "its standard uncertainty; the meter's gain cancels")
                .by((in, out) -> {
                    InstrumentAccuracy meter = new InstrumentAccuracy(100 * in.number("percent"),
                            in.number("digits"), in.number("resolution"));
                    List<Uncertain> readings = new ArrayList<>();
                    for (double r : in.numbers("r")) {
                        readings.add(meter.of(r));
                    }
                    Uncertain x = Unbalance.ofReadings(readings, SharedTerms.meter(meter));
                    out.put("unbalance", x.value()).put("u", x.u());
                });
    }

    private static Calculation asLeft() {
        return Calculation.named(AREA, "as-found-as-left")
                .title("As found against as left on one temperature")
                .source("IEC 60034-1, 8.6.2.3; JCGM 100:2008, F.1.2.3")
                .formula("d = R_left (k + t_found) / (R_found (k + t_left)) - 1")
                .number("r-found", RESISTANCE, "Ω", "as-found reading")
                .number("t-found", TEMPERATURE, "°C", "winding temperature then")
                .number("r-left", RESISTANCE, "Ω", "as-left reading")
                .number("t-left", TEMPERATURE, "°C", "winding temperature then")
                .number("to", TEMPERATURE, "°C", "20", "reference temperature")
                .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                .number("u-found", RESISTANCE, "Ω", "0", "standard uncertainty of the as-found reading")
                .number("u-left", RESISTANCE, "Ω", "0", "standard uncertainty of the as-left reading")
                .number("u-t", TEMPERATURE_RISE, "K", "0", "standard uncertainty of each temperature")
                .number("gain", RATIO, "%", "0", "relative standard uncertainty of the meter both share")
                .gives("found", RESISTANCE, "Ω", "as found at the reference temperature")
                .gives("left", RESISTANCE, "Ω", "as left at the reference temperature")
                .gives("deviation", RATIO, "%", "left over found, less one")
                .gives("u", RATIO, "%", "standard uncertainty of the deviation")
                .by((in, out) -> {
                    AsLeftComparison c = AsLeftComparison.of(
                            new AsLeftComparison.Reading(new Uncertain(in.number("r-found"), in.number("u-found")),
                                    new Uncertain(in.number("t-found"), in.number("u-t"))),
                            new AsLeftComparison.Reading(new Uncertain(in.number("r-left"), in.number("u-left")),
                                    new Uncertain(in.number("t-left"), in.number("u-t"))),
                            in.number("to"), in.choice("conductor", Conductor.class),
                            new SharedTerms(in.number("gain"), 0, 0, 0));
                    out.put("found", c.foundAtReference().value()).put("left", c.leftAtReference().value())
                            .put("deviation", c.deviation().value()).put("u", c.deviation().u());
                });
    }

    private static Calculation band() {
        return Calculation.named(AREA, "limit-band")
                .title("A reading against a published band")
                .source("arithmetic of the published limits")
                .formula("middle = (low + high)/2; half-width = (high - low)/(high + low)")
                .number("low", RESISTANCE, "Ω", "lower limit")
                .number("high", RESISTANCE, "Ω", "upper limit")
                .number("r", RESISTANCE, "Ω", "", "reading at the limits' temperature")
                .number("neighbour-half-width", RATIO, "%", "", "half-width of the neighbouring limits of the table")
                .gives("middle", RESISTANCE, "Ω", "middle of the band")
                .gives("half-width", RATIO, "%", "half-width over the middle")
                .givesWord("inside", "whether the reading lies inside")
                .by((in, out) -> {
                    LimitBand b = new LimitBand(in.number("low"), in.number("high"));
                    out.put("middle", b.middle()).put("half-width", b.relativeHalfWidth());
                    if (in.has("r")) {
                        double r = in.number("r");
                        out.put("inside", r >= b.low() && r <= b.high() ? "yes" : "no");
                    }
                    if (in.has("neighbour-half-width")
                            && b.widerThan(LimitBand.around(1, in.number("neighbour-half-width")))) {
                        out.warn("this band is much wider than its neighbours: one limit may be a misprint");
                    }
                });
    }

    private static Calculation loadLoss() {
        return Calculation.named(AREA, "load-loss-at-temperature")
                .title("Load loss brought to another temperature")
                .source("A. S. Langsdorf, Theory of Alternating-Current Machinery; IEC 60076-1, annex E")
                .formula("ohmic x (k + t2)/(k + t1); stray / the same factor")
                .number("total", POWER, "W", "load loss")
                .number("ohmic", POWER, "W", "its ohmic part")
                .number("from", TEMPERATURE, "°C", "temperature of the test")
                .number("to", TEMPERATURE, "°C", "75", "temperature wanted")
                .choice("conductor", Conductor.class, "copper-iec", "material and constant")
                .gives("ohmic-to", POWER, "W", "ohmic part")
                .gives("stray-to", POWER, "W", "stray part")
                .gives("total-to", POWER, "W", "both")
                .by((in, out) -> {
                    LoadLoss l = LoadLoss.at(in.number("total"), in.number("ohmic"), in.number("from"),
                            in.number("to"), in.choice("conductor", Conductor.class));
                    out.put("ohmic-to", l.ohmic()).put("stray-to", l.stray()).put("total-to", l.total());
                });
    }

    private static Calculation twoWire() {
        return Calculation.named(AREA, "two-wire-resistance")
                .title("Winding resistance from a two-wire reading")
                .source("JCGM 100:2008, 4.3.7 and 5.1")
                .formula("R = reading - leads; u in quadrature")
                .number("reading", RESISTANCE, "Ω", "reading of the meter")
                .number("leads", RESISTANCE, "Ω", "0", "leads and contacts, read with the probes together")
                .number("u-leads", RESISTANCE, "Ω", "0", "standard uncertainty of leads and contacts")
                .number("percent", RATIO, "%", "0", "accuracy of the meter, per cent of reading")
                .number("digits", RATIO, "", "0", "accuracy of the meter, digits")
                .number("resolution", RESISTANCE, "Ω", "0", "one digit on the range")
                .gives("r", RESISTANCE, "Ω", "winding resistance")
                .gives("u", RESISTANCE, "Ω", "its standard uncertainty")
                .gives("expanded-relative", RATIO, "%", "expanded uncertainty (k = 2) over the value")
                .by((in, out) -> {
                    Uncertain r = TwoWire.withoutLeads(new InstrumentAccuracy(100 * in.number("percent"),
                            in.number("digits"), in.number("resolution")).of(in.number("reading")),
                            new Uncertain(in.number("leads"), in.number("u-leads")));
                    out.put("r", r.value()).put("u", r.u()).put("expanded-relative", 2 * r.relative());
                    if (r.relative() > 0.05) {
                        out.warn("uncertain by more than 10 %: use a four-wire bridge");
                    }
                });
    }
}
