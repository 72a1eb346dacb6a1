package org.copperbook.calc.excitation;

import static org.copperbook.calc.quantity.Dimension.CURRENT;
import static org.copperbook.calc.quantity.Dimension.POWER;
import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.RESISTANCE;
import static org.copperbook.calc.quantity.Dimension.TORQUE;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.Optional;

import org.copperbook.calc.Require;
import org.copperbook.calc.catalogue.Arguments;
import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;
import org.copperbook.calc.catalogue.Results;
import org.copperbook.calc.uncertainty.Uncertain;
import org.copperbook.calc.verdict.Bounds;

/** The rotating rectifier. */
public final class RectifierCalculations implements CalculationSource {

    private static final String AREA = "rectifier";

    @Override
    public List<Calculation> calculations() {
        return List.of(ratios(), smooth(), resistive(), rating(), loss(), diode(), torque(), suppressor());
    }

    private static Calculation ratios() {
        return Calculation.named(AREA, "rectifier-ratios")
                .title("Ideal ratios of a rectifier")
                .source("N. Mohan, T. Undeland, W. Robbins, Power Electronics, ch. 5; M. H. Rashid, Power Electronics, ch. 3")
                .formula("bridge Vdc = 3 sqrt(2)/pi V_LL; half wave half of it; peak reverse sqrt(2) V_LL")
                .choice("circuit", RectifierRelations.class, "bridge", "bridge or half wave")
                .gives("vdc-over-line", RATIO, "", "mean direct over line volts")
                .gives("vdc-over-phase", RATIO, "", "mean direct over phase volts")
                .gives("vdc-over-peak", RATIO, "", "mean direct over the peak of the phase voltage")
                .gives("vrms-over-peak", RATIO, "", "rms of the rectified wave over the peak of the phase voltage")
                .gives("reverse-over-vdc", RATIO, "", "peak reverse over mean direct volts")
                .gives("reverse-over-line", RATIO, "", "peak reverse over line volts")
                .gives("reverse-over-peak", RATIO, "", "peak reverse over the peak of the phase voltage")
                .gives("diode-mean", RATIO, "", "diode mean over direct current")
                .gives("diode-rms", RATIO, "", "diode rms over direct current, smooth")
                .gives("line-rms", RATIO, "", "line rms over direct current, smooth")
                .gives("ripple", RATIO, "", "ripple rms over mean")
                .gives("ripple-peak-to-peak", RATIO, "", "ripple peak to peak over mean")
                .gives("form-factor", RATIO, "", "bridge: rms over mean of the wave")
                .gives("efficiency", RATIO, "", "bridge: rectification efficiency, resistive load")
                .gives("utilisation", RATIO, "", "bridge: utilisation of the feeding winding, resistive load")
                .gives("diode-rms-over-peak", RATIO, "", "diode rms over peak current, resistive load")
                .gives("line-rms-over-peak", RATIO, "", "bridge: line rms over peak current, resistive load")
                .gives("fundamental", RATIO, "", "bridge: fundamental of the line over direct current, smooth")
                .gives("power-factor", RATIO, "", "bridge: power factor, smooth current")
                .gives("distortion", RATIO, "", "bridge: total harmonic distortion of the line current")
                .by(RectifierCalculations::computeRatios);
    }

    private static void computeRatios(Arguments in, Results out) {
        RectifierRelations r = in.choice("circuit", RectifierRelations.class);
        double line = r.meanOverLineVolts();
        double peakOverLine = Math.sqrt(2.0 / 3);
        // the rectified wave peaks at the line voltage in a bridge and at the phase voltage in half wave
        double wavePeak = r == RectifierRelations.BRIDGE ? Math.sqrt(3) : 1;
        out.put("vdc-over-line", line).put("vdc-over-phase", line * Math.sqrt(3)).put("vdc-over-peak", line / peakOverLine)
                .put("vrms-over-peak", r.rmsOverPeak() * wavePeak)
                .put("reverse-over-vdc", r.peakReverseVolts(1) / line).put("reverse-over-line", r.peakReverseVolts(1))
                .put("reverse-over-peak", r.peakReverseVolts(1) / peakOverLine)
                .put("diode-mean", r.diodeMeanAmperes(1)).put("diode-rms", r.diodeRmsAmperes(1))
                .put("line-rms", r.lineRmsAmperes(1)).put("ripple", r.rippleRmsOverMean())
                .put("ripple-peak-to-peak", r.ripplePeakToPeakOverMean())
                .put("diode-rms-over-peak", r.diodeRmsOverPeakResistive());
        if (r == RectifierRelations.BRIDGE) {
            out.put("form-factor", BridgeQuality.formFactor()).put("efficiency", BridgeQuality.efficiency())
                    .put("utilisation", BridgeQuality.utilisation())
                    .put("line-rms-over-peak", BridgeQuality.lineRmsOverPeakResistive())
                    .put("fundamental", BridgeQuality.fundamentalOverDirect())
                    .put("power-factor", BridgeQuality.powerFactor()).put("distortion", BridgeQuality.distortion());
        }
    }

    private static Calculation smooth() {
        return Calculation.named(AREA, "rectifier-currents")
                .title("Diode and line currents with smooth direct current")
                .source("B. R. Gupta and V. Singhal, Power Electronics, example 3.31; IEC 60146-1-1")
                .formula("diode mean Idc/3, rms Idc/sqrt(3); bridge line rms sqrt(2/3) Idc")
                .choice("circuit", RectifierRelations.class, "bridge", "bridge or half wave")
                .number("idc", CURRENT, "A", "direct current")
                .number("line", VOLTAGE, "V", "", "line-to-line voltage")
                .gives("diode-mean", CURRENT, "A", "mean current of a diode")
                .gives("diode-rms", CURRENT, "A", "rms current of a diode")
                .gives("line-rms", CURRENT, "A", "rms line current")
                .gives("vdc", VOLTAGE, "V", "mean direct voltage")
                .gives("reverse", VOLTAGE, "V", "peak reverse voltage")
                .by((in, out) -> {
                    RectifierRelations r = in.choice("circuit", RectifierRelations.class);
                    double i = in.number("idc");
                    out.put("diode-mean", r.diodeMeanAmperes(i)).put("diode-rms", r.diodeRmsAmperes(i))
                            .put("line-rms", r.lineRmsAmperes(i));
                    if (in.has("line")) {
                        out.put("vdc", r.meanVolts(in.number("line")))
                                .put("reverse", r.peakReverseVolts(in.number("line")));
                    }
                });
    }

    private static Calculation resistive() {
        return Calculation.named(AREA, "rectifier-resistive-load")
                .title("Rectifier feeding a resistance")
                .source("P. S. Bimbhra, Power Electronics, examples 3.18 and 3.19")
                .formula("exact mean and rms of the rectified wave")
                .choice("circuit", RectifierRelations.class, "bridge", "bridge or half wave")
                .number("vdc", VOLTAGE, "V", "", "mean direct voltage, or give the line voltage")
                .number("line", VOLTAGE, "V", "", "line-to-line voltage")
                .number("r", RESISTANCE, "Ω", "load resistance")
                .gives("mean", VOLTAGE, "V", "mean direct voltage")
                .gives("line-volts", VOLTAGE, "V", "line-to-line voltage, rms")
                .gives("reverse", VOLTAGE, "V", "peak reverse voltage")
                .gives("diode-peak", CURRENT, "A", "peak diode current")
                .gives("diode-mean", CURRENT, "A", "mean diode current")
                .gives("diode-rms", CURRENT, "A", "rms diode current")
                .by((in, out) -> {
                    RectifierRelations c = in.choice("circuit", RectifierRelations.class);
                    double line = in.firstGiven("vdc", "line").equals("vdc") ? c.lineVolts(in.number("vdc"))
                            : in.number("line");
                    double mean = c.meanVolts(line);
                    double ohms = Require.positive("load resistance", in.number("r"), "ohm");
                    double peak = mean / c.meanOverPeak() / ohms;
                    out.put("mean", mean).put("line-volts", line).put("reverse", c.peakReverseVolts(line))
                            .put("diode-peak", peak).put("diode-mean", c.diodeMeanAmperes(mean / ohms))
                            .put("diode-rms", peak * c.diodeRmsOverPeakResistive());
                });
    }

    private static Calculation rating() {
        return Calculation.named(AREA, "diode-rating")
                .title("Rating that a replacement diode needs")
                .source("ideal rectifier relations; margins are common practice, no source")
                .formula("peak reverse x margin; Idc/3 x margin")
                .choice("circuit", RectifierRelations.class, "bridge", "bridge or half wave")
                .number("field-volts", VOLTAGE, "V", "main field voltage at ceiling")
                .number("field-current", CURRENT, "A", "main field current at ceiling")
                .number("voltage-margin", RATIO, "", "2.5", "factor on the peak reverse voltage")
                .number("current-margin", RATIO, "", "2", "factor on the mean current")
                .gives("reverse", VOLTAGE, "V", "least repetitive peak reverse voltage")
                .gives("mean", CURRENT, "A", "least mean forward current")
                .gives("rms", CURRENT, "A", "rms current in service")
                .by((in, out) -> {
                    RequiredRating r = RequiredRating.of(in.choice("circuit", RectifierRelations.class),
                            in.number("field-volts"), in.number("field-current"),
                            new RequiredRating.Margin(in.number("voltage-margin"), in.number("current-margin")));
                    out.put("reverse", r.repetitivePeakReverseVolts()).put("mean", r.meanAmperes())
                            .put("rms", r.rmsAmperes());
                });
    }

    private static Calculation loss() {
        return Calculation.named(AREA, "diode-loss")
                .title("Forward drop and loss of a diode")
                .source("IEC 60747-2 (threshold voltage and slope resistance)")
                .formula("VF = V(TO) + rT I; P = V(TO) Imean + rT Irms²")
                .number("threshold", VOLTAGE, "V", "threshold voltage")
                .number("slope", RESISTANCE, "mΩ", "slope resistance")
                .number("i", CURRENT, "A", "0", "instant current for the drop")
                .number("mean", CURRENT, "A", "0", "mean current")
                .number("rms", CURRENT, "A", "0", "rms current")
                .gives("drop", VOLTAGE, "V", "forward drop")
                .gives("loss", POWER, "W", "mean loss")
                .by((in, out) -> {
                    DiodeLoss d = new DiodeLoss(in.number("threshold"), in.number("slope"));
                    out.put("drop", d.drop(in.number("i"))).put("loss", d.watts(in.number("mean"), in.number("rms")));
                });
    }

    private static Calculation diode() {
        return Calculation.named(AREA, "diode-check")
                .title("Class of a diode from its forward and reverse reading")
                .source("US Army TM 55-1930-209-14P-9-4; in circuit: common practice, no source")
                .formula("conducts one way and blocks the other: good; low both ways: shorted; blocks both ways: open")
                .choice("placement", DiodeReading.Placement.class, "isolated", "leads lifted, or in the closed bridge")
                .numberOrOpen("forward", RESISTANCE, "Ω", null, "forward reading, or OL")
                .numberOrOpen("reverse", RESISTANCE, "Ω", null, "reverse reading, or OL")
                .givesWord("class", "good, shorted, open or doubtful")
                .givesWord("reason", "why")
                .by((in, out) -> {
                    DiodeFinding f = DiodeCheck.classify(new DiodeReading(
                            in.choice("placement", DiodeReading.Placement.class), DiodeReading.Mode.OHMS,
                            side(in.number("forward")), side(in.number("reverse"))));
                    out.put("class", f.state()).put("reason", f.reason());
                });
    }

    private static DiodeReading.Side side(double ohms) {
        return Double.isInfinite(ohms) ? DiodeReading.aboveRange() : DiodeReading.value(ohms);
    }

    private static Calculation torque() {
        return Calculation.named(AREA, "stud-torque")
                .title("Fastening torque of a stud diode against its data sheet")
                .source("the fitted part's data sheet; hint by thread: typical practice from memory, never a limit")
                .formula("verdict by the data sheet's limits; without them no limit is set")
                .number("torque", TORQUE, "N·m", "torque applied")
                .number("u", TORQUE, "N·m", "0", "standard uncertainty of the wrench")
                .number("low", TORQUE, "N·m", "", "data sheet, least")
                .number("high", TORQUE, "N·m", "", "data sheet, greatest")
                .choice("thread", StudTorque.class, "", "thread, for the hint")
                .givesWord("outcome", "meets, doubtful, fails or no limit set")
                .gives("hint-low", TORQUE, "N·m", "hint by thread, not a limit")
                .gives("hint-high", TORQUE, "N·m", "hint by thread, not a limit")
                .by((in, out) -> {
                    Bounds sheet = new Bounds(in.has("low") ? in.number("low") : null,
                            in.has("high") ? in.number("high") : null);
                    out.put("outcome", StudTorque.judge(new Uncertain(in.number("torque"), in.number("u")),
                            sheet.isEmpty() ? Optional.empty() : Optional.of(sheet)).outcome());
                    if (in.has("thread")) {
                        Bounds hint = in.choice("thread", StudTorque.class).hint();
                        out.put("hint-low", hint.lower()).put("hint-high", hint.upper())
                                .warn("the hint by thread is no limit: only the fitted part's data sheet sets one");
                    }
                });
    }

    private static Calculation suppressor() {
        return Calculation.named(AREA, "suppressor-check")
                .title("Surge suppressor across the rectifier")
                .source("US Army TM 9-4940-568-34, TM 5-6115-593-34, TM 55-1930-209-14P-9-4 (limits differ)")
                .formula("open both ways: at least the limit")
                .choice("limit", SuppressorCheck.class, "one-megohm", "which manual's limit")
                .numberOrOpen("one-way", RESISTANCE, "Ω", null, "reading, or OL")
                .numberOrOpen("other-way", RESISTANCE, "Ω", null, "reading with the probes exchanged, or OL")
                .flag("leads-lifted", "yes", "leads lifted")
                .givesWord("outcome", "meets, fails, or doubtful when in circuit")
                .by((in, out) -> out.put("outcome", in.choice("limit", SuppressorCheck.class)
                        .judge(in.number("one-way"), in.number("other-way"), in.flag("leads-lifted"))));
    }
}
