package org.copperbook.runup.core;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.copperbook.calc.core.CableSize;
import org.copperbook.calc.core.LoopCore;
import org.copperbook.calc.core.LoopPlan;
import org.copperbook.calc.quantity.Dimension;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.CautionsGate;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.core.LoopTestPlan;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.runup.SignOffsPage;
import org.copperbook.runup.TestRows;

/** The core loop test: planned before it is made, the runs before and after burn-out, and the burn-out. */
public final class CorePage extends PartPage {

    private static final FieldUnit FIELD_STRENGTH = FieldUnit.fixed(Dimension.FIELD_STRENGTH, "A/m");
    private static final FieldUnit STEEL = FieldUnit.fixed(Dimension.DENSITY, "kg/m\u00b3");
    private static final FieldUnit CABLE = FieldUnit.fixed(Dimension.CURRENT_DENSITY, "A/mm\u00b2");
    private static final double SQUARE_MM = 1e6;

    private CautionsGate gate;

    @Override
    protected Words words() {
        return Words.of(SignOffsPage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("core.title")
                .choice("/winding", "core.winding", WindingRole.class)
                .choice("/corePlate", "core.plate", CoreTest.CorePlate.class)
                .number("/burnOutHours", "core.burnOutHours", FieldUnit.HOUR)
                .number("/burnOutMaxCelsius", "core.burnOutMax", FieldUnit.CELSIUS)
                .longText("/note", "test.note");
        here.words("core.burnOutCaution");
        setUp(here);
        plan(here);
        gate = new CautionsGate(here, "core.cautions", site(), Hazardous.CORE_LOOP);
        RecordGrid runs = here.grid("core.runs", "/runs", columns -> columns
                .choice("/stage", "core.stage", CoreTest.Stage.class)
                .integer("/turns", "core.turns", 1, 10_000)
                .number("/volts", "core.volts", FieldUnit.VOLT)
                .number("/amps", "core.amps", FieldUnit.AMPERE)
                .number("/watts", "core.watts", FieldUnit.WATT)
                .says()
                .computed("specific", "core.specific", row -> ofRun(row, LoopTestPlan::specificLoss,
                        FieldUnit.WATT_PER_KG))
                .computed("density", "core.density", row -> ofRun(row, LoopTestPlan::fluxDensity, FieldUnit.TESLA))
                .number("/frequencyHz", "core.frequency", FieldUnit.HERTZ)
                .number("/fluxDensityT", "core.flux", FieldUnit.TESLA)
                .number("/yokeMassKg", "core.mass", FieldUnit.KILOGRAM)
                .number("/meanCelsius", "core.mean", FieldUnit.CELSIUS)
                .number("/hottestCelsius", "core.hottest", FieldUnit.CELSIUS)
                .instrument("/instrument", "test.instrument")
                .moment("/at", "test.at")
                .person("/by", "test.by")
                .person("/cautionsBy", "test.cautionsBy")
                .text("/note", "test.note"));
        gate.opens(() -> runs.newRow(this::newRun));
    }

    private void setUp(Form here) {
        here.section("core.setUp")
                .number("/setUp/outsideM", "core.outside", FieldUnit.METRE_AS_MM)
                .number("/setUp/yokeDepthM", "core.yokeDepth", FieldUnit.METRE_AS_MM)
                .number("/setUp/boreM", "core.bore", FieldUnit.METRE_AS_MM)
                .number("/setUp/slotDepthM", "core.slotDepth", FieldUnit.METRE_AS_MM)
                .number("/setUp/lengthM", "core.length", FieldUnit.METRE_AS_MM)
                .integer("/setUp/ventCount", "core.vents", 0, 200)
                .number("/setUp/ventWidthM", "core.ventWidth", FieldUnit.METRE_AS_MM)
                .number("/setUp/stacking", "core.stacking", FieldUnit.NUMBER)
                .number("/setUp/ironKgPerM3", "core.steel", STEEL)
                .number("/setUp/targetT", "core.target", FieldUnit.TESLA)
                .number("/setUp/frequencyHz", "core.frequency", FieldUnit.HERTZ)
                .number("/setUp/supplyV", "core.supply", FieldUnit.VOLT)
                .number("/setUp/fieldStrengthApm", "core.field", FIELD_STRENGTH)
                .number("/setUp/cableAPerMm2", "core.cableDensity", CABLE);
        here.words("core.setUpHint");
    }

    private void plan(Form here) {
        here.section("core.plan")
                .computed("/plan/missing", "core.open", this::open)
                .computed("/plan/core", "core.used", () -> ofCore(c -> words().text("core.usedText",
                        Shown.of(c.outerDiameter(), FieldUnit.METRE_AS_MM), Shown.of(c.backIron(), FieldUnit.METRE_AS_MM),
                        Shown.of(c.length(), FieldUnit.METRE_AS_MM))))
                .computed("/plan/mass", "core.mass", () -> now().massKg()
                        .map(m -> Shown.of(m, FieldUnit.KILOGRAM)).orElse(""))
                .computed("/plan/turns", "core.turns", () -> ofPlan(p -> words().text("core.turnsText",
                        p.turns(), Shown.number(p.exactTurns()), Shown.of(p.fluxDensity(), FieldUnit.TESLA))))
                .computed("/plan/perTurn", "core.perTurn", () -> ofPlan(p -> Shown.of(p.voltsPerTurn(),
                        FieldUnit.VOLT)))
                .computed("/plan/amps", "core.current", () -> ofPlan(p -> words().text("core.currentText",
                        Shown.of(p.amperes(), FieldUnit.AMPERE), Shown.of(p.ampereTurns(), FieldUnit.AMPERE))))
                .computed("/plan/supply", "core.supplyNeeded", () -> ofPlan(p -> Shown.of(p.voltAmperes(),
                        FieldUnit.VOLT_AMPERE)))
                .computed("/plan/cable", "core.cable", () -> ofPlan(p -> words().text("core.cableText",
                        Shown.number(p.cableArea() * SQUARE_MM), CableSize.noLessThan(p.cableArea() * SQUARE_MM)
                                .map(Shown::number).orElse("> 1000"))));
    }

    private LoopTestPlan now() {
        return LoopTestPlan.of(document().job());
    }

    private String ofPlan(Function<LoopPlan, String> figure) {
        return now().plan().map(figure).orElse("");
    }

    private String ofCore(Function<LoopCore, String> figure) {
        return now().core().map(figure).orElse("");
    }

    /** What keeps the plan open, in words; says so when nothing does. */
    private String open() {
        LoopTestPlan plan = now();
        if (!plan.refused().isEmpty()) {
            return plan.refused();
        }
        return plan.missing().isEmpty() ? words().text("core.complete") : words().text("core.missing",
                plan.missing().stream().map(words()::of).collect(Collectors.joining(", ")));
    }

    private String ofRun(JsonNode row, java.util.function.BiFunction<LoopTestPlan, CoreTest.LoopRun, Optional<Double>> figure,
            FieldUnit unit) {
        if (!row.isObject()) {
            return "";
        }
        return figure.apply(now(), site().json().mapper().convertValue(row, CoreTest.LoopRun.class))
                .map(v -> Shown.of(v, unit)).orElse("");
    }

    /** A run begins with what the plan says; what is really applied is typed over it. */
    private ObjectNode newRun() {
        ObjectNode row = TestRows.begin(site(), gate.acknowledgedBy());
        row.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        now().plan().ifPresent(p -> row.put("turns", p.turns()));
        JsonNode hertz = document().value(key(), "/setUp/frequencyHz");
        if (hertz.isNumber()) {
            row.set("frequencyHz", hertz);
        }
        return row;
    }
}
