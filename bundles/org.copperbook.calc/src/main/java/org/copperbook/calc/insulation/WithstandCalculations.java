package org.copperbook.calc.insulation;

import static org.copperbook.calc.quantity.Dimension.RATIO;
import static org.copperbook.calc.quantity.Dimension.VOLTAGE;

import java.util.List;

import org.copperbook.calc.catalogue.Calculation;
import org.copperbook.calc.catalogue.CalculationSource;

/** Withstand and surge levels. Two tables are offered; the record names the one used. */
public final class WithstandCalculations implements CalculationSource {

    private static final String AREA = "withstand";

    @Override
    public List<Calculation> calculations() {
        return List.of(iec(), overhauled(), ar100(), exciter(), maintenance(), direct(), surge(), errorArea());
    }

    private static Calculation iec() {
        return Calculation.named(AREA, "withstand-iec")
                .title("Withstand voltage by IEC")
                .source("IEC 60034-1:2004, table 16 and 9.2")
                .formula("by item; repeat 80 %, part rewound 75 %, group 80 %, direct 1.7 times")
                .choice("item", WithstandIec.class, "stator", "line of the table")
                .number("u", VOLTAGE, "V", "rated voltage of the winding")
                .gives("new", VOLTAGE, "V", "new winding, one minute, rms")
                .gives("repeat", VOLTAGE, "V", "repeat of the test")
                .gives("part-rewound", VOLTAGE, "V", "winding rewound in part")
                .gives("group", VOLTAGE, "V", "assembled group with this as lowest value")
                .gives("direct", VOLTAGE, "V", "direct voltage in place of the full value")
                .by((in, out) -> {
                    double v = in.choice("item", WithstandIec.class).newWinding(in.number("u"));
                    out.put("new", v).put("repeat", WithstandIec.REPEAT * v)
                            .put("part-rewound", WithstandIec.PART_REWOUND * v).put("group", WithstandIec.GROUP * v)
                            .put("direct", WithstandIec.DIRECT * v);
                });
    }

    private static Calculation overhauled() {
        return Calculation.named(AREA, "withstand-overhauled")
                .title("Withstand voltage after cleaning and drying")
                .source("IEC 60034-1:2004, 9.2")
                .formula("1.5 U, at least 1000 V (500 V below 100 V rated)")
                .number("u", VOLTAGE, "V", "rated voltage")
                .gives("test", VOLTAGE, "V", "test voltage, rms")
                .by((in, out) -> out.put("test", WithstandIec.overhauled(in.number("u"))));
    }

    private static Calculation ar100() {
        return Calculation.named(AREA, "withstand-ar100")
                .title("High-potential test voltage by AR100")
                .source("ANSI/EASA AR100-2020, section 4, tables 4-4 and 4-5")
                .formula("by item, alternating and direct as printed")
                .choice("item", WithstandAr100.class, "main-stator", "line of the table")
                .number("u", VOLTAGE, "V", "rated voltage of the winding")
                .gives("alternating", VOLTAGE, "V", "one minute, rms")
                .gives("direct", VOLTAGE, "V", "one minute")
                .by((in, out) -> {
                    WithstandAr100 item = in.choice("item", WithstandAr100.class);
                    out.put("alternating", item.alternating(in.number("u")))
                            .put("direct", item.direct(in.number("u")));
                });
    }

    private static Calculation exciter() {
        return Calculation.named(AREA, "withstand-exciter-ceiling")
                .title("High-potential voltage of exciter parts from the ceiling voltage")
                .source("US Army TM 5-6115-585-34")
                .formula("10 x ceiling, 1500 to 3500 V")
                .number("ceiling", VOLTAGE, "V", "exciter ceiling voltage")
                .gives("test", VOLTAGE, "V", "test voltage, rms")
                .by((in, out) -> out.put("test", WithstandOther.exciterByCeiling(in.number("ceiling"))));
    }

    private static Calculation maintenance() {
        return Calculation.named(AREA, "withstand-maintenance")
                .title("Maintenance test of a winding in service")
                .source("IEEE 95-2002, 6.2")
                .formula("1.25 to 1.5 U; direct 1.7 times")
                .number("u", VOLTAGE, "V", "rated voltage")
                .gives("low", VOLTAGE, "V", "least alternating voltage, rms")
                .gives("high", VOLTAGE, "V", "greatest alternating voltage, rms")
                .gives("low-direct", VOLTAGE, "V", "least direct voltage")
                .gives("high-direct", VOLTAGE, "V", "greatest direct voltage")
                .by((in, out) -> {
                    double low = WithstandOther.maintenance(in.number("u"), 1.25);
                    double high = WithstandOther.maintenance(in.number("u"), 1.5);
                    out.put("low", low).put("high", high).put("low-direct", WithstandIec.DIRECT * low)
                            .put("high-direct", WithstandIec.DIRECT * high);
                });
    }

    private static Calculation direct() {
        return Calculation.named(AREA, "withstand-direct")
                .title("Direct voltage in place of an alternating one")
                .source("ANSI/EASA AR100-2020, section 4; IEC 60034-1, 9.2")
                .formula("1.7 x rms")
                .number("alternating", VOLTAGE, "V", "alternating test voltage, rms")
                .gives("direct", VOLTAGE, "V", "direct voltage")
                .by((in, out) -> out.put("direct", WithstandIec.DIRECT * in.number("alternating")));
    }

    private static Calculation surge() {
        return Calculation.named(AREA, "surge-level")
                .title("Surge comparison level")
                .source("common practice (2E + 1000); IEEE 522-2004, clause 6; IEC 60034-15, table 1 (from memory)")
                .formula("by rule; keep the rule with the record")
                .choice("rule", SurgeLevel.class, "workshop", "rule used")
                .number("u", VOLTAGE, "V", "rated line-to-line voltage")
                .number("found", VOLTAGE, "V", "", "level printed elsewhere, to compare")
                .gives("peak", VOLTAGE, "V", "peak volts")
                .gives("per-unit", VOLTAGE, "V", "peak of line to earth")
                .by((in, out) -> {
                    double level = in.choice("rule", SurgeLevel.class).peakVolts(in.number("u"));
                    out.put("peak", level).put("per-unit", SurgeLevel.perUnit(in.number("u")));
                    if (in.has("found") && Math.abs(in.number("found") / level - 1) > 0.1) {
                        out.warn("the level found elsewhere follows another rule: record which rule gave it");
                    }
                });
    }

    private static Calculation errorArea() {
        return Calculation.named(AREA, "error-area-ratio")
                .title("Error area ratio of two surge waves")
                .source("surge test literature (definition from memory)")
                .formula("sum |F1 - F2| / sum |F1|")
                .numbers("first", RATIO, "", null, "samples of the first wave")
                .numbers("second", RATIO, "", null, "samples of the second wave")
                .gives("ratio", RATIO, "%", "error area ratio")
                .by((in, out) -> out.put("ratio",
                        SurgeComparison.errorAreaRatio(in.numbers("first"), in.numbers("second"))));
    }
}
