package org.copperbook.calc.insulation;

import static org.copperbook.calc.quantity.Dimension.APPARENT_POWER;
import static org.copperbook.calc.quantity.Dimension.DURATION;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE;
import static org.copperbook.calc.quantity.Dimension.TEMPERATURE_RISE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.copperbook.calc.Require;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.uncertainty.InstrumentAccuracy;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;
import org.copperbook.calc.verdict.GuardedDecision;

/** Insulation resistance. */
public final class InsulationCalculations implements CalculationSource {

    private static final String AREA = "insulation";

    @Override
    public List<Calculation> calculations() {
        return List.of(to40(), factor(), halving(), logarithmic(), minimum(), oldRule(), testVoltage(), index(),
                drying(), life(), thermalClass(), verdict());
    }

    private static Calculation to40() {
        return Calculation.named(AREA, "insulation-to-40")
                .title("Insulation resistance brought to 40 °C")
                .source("IEEE 43-2013, 6.3")
                .formula("thermoplastic R40 = R 0.5^((40 - T)/10); thermosetting R40 = R exp(-a (1/(T+273) - 1/313))")
                .number("r", RESISTANCE, "MΩ", "one-minute reading")
                .number("t", TEMPERATURE, "°C", "winding temperature")
                .choice("system", InsulationSystem.class, "thermoplastic", "insulation system")
                .number("u-r", RESISTANCE, "MΩ", "0", "standard uncertainty of the reading")
                .number("u-t", TEMPERATURE_RISE, "K", "0", "standard uncertainty of the temperature")
                .number("chart-factor", RATIO, "", "", "a factor read off a chart, to compare")
                .gives("r40", RESISTANCE, "MΩ", "resistance at 40 °C")
                .gives("u", RESISTANCE, "MΩ", "its standard uncertainty")
                .gives("by-chart", RESISTANCE, "MΩ", "reading times the chart factor")
                .by((in, out) -> {
                    Uncertain r = InsulationTemperature.to40(in.choice("system", InsulationSystem.class),
                            new Uncertain(in.number("r"), in.number("u-r")),
                            new Uncertain(in.number("t"), in.number("u-t")));
                    out.put("r40", r.value()).put("u", r.u());
                    if (in.has("chart-factor")) {
                        double chart = in.number("r") * in.number("chart-factor");
                        out.put("by-chart", chart);
                        if (Math.abs(chart / r.value() - 1) > 0.1) {
                            out.warn("the chart factor differs from the rule by more than 10 %");
                        }
                    }
                });
    }

    private static Calculation factor() {
        return Calculation.named(AREA, "insulation-factor")
                .title("Factor that brings insulation resistance to 40 °C")
                .source("IEEE 43-2013, 6.3 (thermosetting constants from memory)")
                .formula("thermoplastic 0.5^((40 - T)/10); thermosetting exp(-a (1/(T+273) - 1/313))")
                .number("t", TEMPERATURE, "°C", "winding temperature")
                .choice("system", InsulationSystem.class, "thermosetting", "insulation system")
                .gives("factor", RATIO, "", "KT")
                .by((in, out) -> out.put("factor", InsulationTemperature.factor(
                        in.choice("system", InsulationSystem.class), in.number("t"))));
    }

    private static Calculation halving() {
        return Calculation.named(AREA, "insulation-halving")
                .title("Insulation resistance between two temperatures by the halving rule")
                .source("IEEE 43-2013, 6.3")
                .formula("R2 = R1 0.5^((t2 - t1)/10)")
                .number("r", RESISTANCE, "MΩ", "reading")
                .number("t", TEMPERATURE, "°C", "its temperature")
                .number("to", TEMPERATURE, "°C", "temperature wanted")
                .gives("r-to", RESISTANCE, "MΩ", "resistance there")
                .by((in, out) -> out.put("r-to", InsulationTemperature.halving(in.number("r"), in.number("t"),
                        in.number("to"))));
    }

    private static Calculation logarithmic() {
        return Calculation.named(AREA, "insulation-log-factor")
                .title("Factor to 40 °C by the fitted logarithmic line")
                .source("line fitted to the chart of IEEE 43; within 0.1 % of the halving rule")
                .formula("10^(0.0301 t - 1.2041)")
                .number("t", TEMPERATURE, "°C", "winding temperature")
                .gives("factor", RATIO, "", "factor")
                .by((in, out) -> out.put("factor", InsulationTemperature.logarithmicFactor(in.number("t"))));
    }

    private static Calculation minimum() {
        return Calculation.named(AREA, "insulation-minimum")
                .title("Least insulation resistance by winding type")
                .source("IEEE 43-2013, table 3; IEEE 43-2000 for the older dc armature value")
                .formula("kV + 1 megohm, 100 megohm or 5 megohm at 40 °C, one minute")
                .choice("winding", WindingInsulation.class, null, "type of winding")
                .number("u", VOLTAGE, "V", "rated voltage: line to line, or direct")
                .gives("minimum", RESISTANCE, "MΩ", "least value at 40 °C")
                .by((in, out) -> out.put("minimum", InsulationMinimum.ohms(
                        in.choice("winding", WindingInsulation.class), in.number("u"))));
    }

    private static Calculation oldRule() {
        return Calculation.named(AREA, "insulation-minimum-old-rule")
                .title("Least insulation resistance by the old American rule")
                .source("AIEE rule as given in generator manuals of the 1940s")
                .formula("V/(kVA/100 + 1000) megohm")
                .number("u", VOLTAGE, "V", "rated voltage")
                .number("s", APPARENT_POWER, "kVA", "rated power")
                .gives("minimum", RESISTANCE, "MΩ", "least value, hot")
                .by((in, out) -> out.put("minimum",
                        InsulationMinimum.oldRuleOhms(in.number("u"), in.number("s") / 1000)));
    }

    private static Calculation testVoltage() {
        return Calculation.named(AREA, "insulation-test-voltage")
                .title("Direct voltage for an insulation resistance test")
                .source("IEEE 43-2000 and 2013, table 1")
                .formula("by rated voltage")
                .number("u", VOLTAGE, "V", "rated voltage")
                .gives("lowest", VOLTAGE, "V", "least direct voltage")
                .gives("highest", VOLTAGE, "V", "greatest direct voltage")
                .by((in, out) -> {
                    InsulationTestVoltage v = InsulationTestVoltage.forRating(in.number("u"));
                    out.put("lowest", v.lowest()).put("highest", v.highest());
                });
    }

    private static Calculation index() {
        return Calculation.named(AREA, "polarisation-index")
                .title("Polarisation index and absorption ratio")
                .source("IEEE 43-2013, table 2 and 12.2; 60 s over 30 s is common practice")
                .formula("PI = R(10 min)/R(1 min); DAR = R(60 s)/R(30 s)")
                .number("r10", RESISTANCE, "MΩ", "", "reading at 10 min")
                .number("r1", RESISTANCE, "MΩ", "reading at 1 min, at 40 °C when it is to be judged")
                .number("r30s", RESISTANCE, "MΩ", "", "reading at 30 s")
                .choice("thermal-group", AbsorptionIndex.ThermalGroup.class, "class-130-or-higher", "thermal class")
                .flag("small-random-winding", "no", "small random winding")
                .flag("uninsulated-field", "no", "field winding of bare strip")
                .gives("pi", RATIO, "", "polarisation index")
                .gives("dar", RATIO, "", "dielectric absorption ratio")
                .gives("minimum", RATIO, "", "least polarisation index of the class")
                .gives("not-judged-above", RESISTANCE, "MΩ", "one-minute value above which the index is not judged")
                .givesWord("judged", "yes, or why the index does not decide")
                .by(InsulationCalculations::computeIndex);
    }

    private static void computeIndex(Arguments in, Results out) {
        if (in.has("r10")) {
            double pi = AbsorptionIndex.ratio(in.number("r10"), in.number("r1"));
            out.put("pi", pi);
            if (pi > AbsorptionIndex.BRITTLE_ABOVE) {
                out.warn("an index this high may mean dry, brittle insulation");
            }
        }
        if (in.has("r30s")) {
            out.put("dar", AbsorptionIndex.ratio(in.number("r1"), in.number("r30s")));
        }
        out.put("minimum", in.choice("thermal-group", AbsorptionIndex.ThermalGroup.class).minimumIndex());
        out.put("not-judged-above", AbsorptionIndex.NOT_JUDGED_ABOVE_OHMS);
        Optional<AbsorptionIndex.NotJudged> why = AbsorptionIndex.notJudged(in.number("r1"),
                in.flag("small-random-winding"), in.flag("uninsulated-field"));
        if (why.isPresent()) {
            out.put("judged", why.get());
        } else {
            out.put("judged", "yes");
        }
    }

    private static Calculation drying() {
        return Calculation.named(AREA, "drying-curve")
                .title("Drying: has the insulation resistance turned and levelled?")
                .source("IEEE 43-2013, 6.3 for the correction; the criterion is common practice, no source")
                .formula("readings at 40 °C; turned after a rise over the lowest, levelled when it changes no more")
                .points("readings", DURATION, "h", RESISTANCE, "MΩ", null, "time : insulation resistance, in order")
                .numbers("temperatures", TEMPERATURE, "°C", null, "winding temperature at each reading")
                .choice("system", InsulationSystem.class, "thermosetting", "insulation system")
                .number("rise", RATIO, "%", "20", "rise over the lowest that proves the turn")
                .number("window", DURATION, "h", "4", "how long it must stay level")
                .number("change-per-hour", RATIO, "%", "5", "greatest change per hour when level")
                .givesWord("turned", "yes or no")
                .givesWord("levelled", "yes or no")
                .gives("lowest-at", DURATION, "h", "time of the lowest reading at 40 °C")
                .by((in, out) -> {
                    double[][] p = in.points("readings");
                    double[] t = in.numbers("temperatures");
                    Require.that(p.length == t.length, "temperatures", t.length + " values",
                            p.length + " values", "every reading needs its temperature");
                    List<DryingCurve.Reading> readings = new ArrayList<>();
                    for (int i = 0; i < p.length; i++) {
                        readings.add(new DryingCurve.Reading(p[i][0] / 3600, p[i][1], t[i]));
                    }
                    DryingCurve c = DryingCurve.of(readings, in.choice("system", InsulationSystem.class),
                            new DryingCurve.Criterion(in.number("rise"), in.number("window") / 3600,
                                    in.number("change-per-hour")));
                    out.put("turned", c.turned() ? "yes" : "no").put("levelled", c.levelled() ? "yes" : "no")
                            .put("lowest-at", p[c.lowest()][0]);
                });
    }

    private static Calculation life() {
        return Calculation.named(AREA, "insulation-life")
                .title("Insulation life at another temperature")
                .source("I. L. Kosow, Electric Machinery and Transformers, examples 13-1 to 13-3")
                .formula("L = Lref 2^((tref - t)/step)")
                .number("t", TEMPERATURE, "°C", "winding temperature")
                .number("t-ref", TEMPERATURE, "°C", "reference temperature")
                .number("life-ref", DURATION, "a", "life at the reference temperature")
                .number("step", TEMPERATURE_RISE, "K", "10", "kelvin that halve it")
                .gives("life", DURATION, "a", "life")
                .by((in, out) -> out.put("life", InsulationLife.at(in.number("t"), in.number("t-ref"),
                        in.number("life-ref"), in.number("step"))));
    }

    private static Calculation thermalClass() {
        return Calculation.named(AREA, "thermal-class")
                .title("Temperature and allowed rise of a thermal class")
                .source("IEC 60085; IEC 60034-1, table 8")
                .formula("table; total = rise + 40 °C coolant")
                .choice("class", ThermalClass.class, null, "thermal class")
                .gives("t", TEMPERATURE, "°C", "class temperature")
                .gives("rise", TEMPERATURE_RISE, "K", "rise allowed by resistance over 40 °C")
                .gives("total", TEMPERATURE, "°C", "rise and coolant together")
                .by((in, out) -> {
                    ThermalClass c = in.choice("class", ThermalClass.class);
                    out.put("t", c.celsius());
                    c.riseByResistance().ifPresent(r -> out.put("rise", r).put("total", r + 40));
                });
    }

    private static Calculation verdict() {
        return Calculation.named(AREA, "insulation-verdict")
                .title("Insulation resistance against IEEE 43 and the common 1 megohm")
                .source("IEEE 43-2013, table 3 and 6.3; 1 megohm: common practice, no source; JCGM 106:2012, 8.3")
                .formula("R40 against the least value; reading as taken against 1 megohm")
                .number("r", RESISTANCE, "MΩ", "one-minute reading")
                .number("t", TEMPERATURE, "°C", "winding temperature")
                .choice("winding", WindingInsulation.class, null, "type of winding")
                .number("u", VOLTAGE, "V", "rated voltage: line to line, or direct")
                .choice("system", InsulationSystem.class, "thermosetting", "insulation system")
                .number("accuracy", RATIO, "%", "5", "accuracy of the instrument, per cent of reading")
                .number("u-t", TEMPERATURE_RISE, "K", "1", "standard uncertainty of the temperature")
                .gives("r40", RESISTANCE, "MΩ", "resistance at 40 °C")
                .gives("minimum", RESISTANCE, "MΩ", "least value at 40 °C")
                .givesWord("by-standard", "verdict by IEEE 43")
                .givesWord("by-practice", "verdict by the common 1 megohm")
                .by((in, out) -> {
                    Uncertain reading = new InstrumentAccuracy(100 * in.number("accuracy"), 0, 0).of(in.number("r"));
                    Uncertain r40 = InsulationTemperature.to40(in.choice("system", InsulationSystem.class), reading,
                            new Uncertain(in.number("t"), in.number("u-t")));
                    double least = InsulationMinimum.ohms(in.choice("winding", WindingInsulation.class),
                            in.number("u"));
                    out.put("r40", r40.value()).put("minimum", least)
                            .put("by-standard", GuardedDecision.decide(r40, Bounds.atLeast(least)).outcome())
                            .put("by-practice", GuardedDecision.decide(reading, Bounds.atLeast(1e6)).outcome());
                });
    }
}
