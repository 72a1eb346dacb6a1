package org.copperbook.runup;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.copperbook.desk.chart.ChartsArea;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.CautionsGate;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.TestPlan;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.runup.log.LogArea;
import org.copperbook.runup.plan.PlanArea;
import org.copperbook.sheets.runup.RunUpCharts;

/** Winding tests in process and as left, and the final run-up; every attempt stays. */
public final class RunUpPage extends PartPage {

    private static final int MOST_HEAT_RUNS = 4;

    private CautionsGate surgeGate;
    private CautionsGate withstandGate;
    private CautionsGate liveGate;
    private PlanArea plan;
    private ChartsArea charts;
    private int coolings;

    @Override
    protected Words words() {
        return Words.of(RunUpPage.class);
    }

    @Override
    protected void build(Form here) {
        plan = new PlanArea(here.area("plan.title"), words(), here::reveal);
        charts = new ChartsArea(here.area("charts.title"), words(), here::relayout);
        NewReading readings = new NewReading(site());
        here.grid("runup.resistance", "/readings", this::resistance)
                .where(r -> ReadingQuantity.RESISTANCE.name().equals(r.path("quantity").asText()))
                .newRow(() -> readings.of(ReadingQuantity.RESISTANCE, Place.Kind.TERMINAL_PAIR, Reading.State.AS_LEFT,
                        before(ReadingQuantity.RESISTANCE)));
        here.words("runup.dischargeCaution");
        here.grid("runup.insulation", "/readings", this::insulation)
                .where(r -> ReadingQuantity.INSULATION_RESISTANCE.name().equals(r.path("quantity").asText()))
                .newRow(() -> readings.of(ReadingQuantity.INSULATION_RESISTANCE, Place.Kind.TO_EARTH,
                        Reading.State.AS_LEFT, before(ReadingQuantity.INSULATION_RESISTANCE)));
        surge(here);
        withstand(here);
        points(here);
        afterwards(here);
    }

    private void resistance(GridColumns columns) {
        TestColumns.resistance(columns.choice("/state", "reading.state", Reading.State.class));
    }

    private void insulation(GridColumns columns) {
        TestColumns.insulation(columns.choice("/state", "reading.state", Reading.State.class)
                .choice("/place/winding", "reading.winding", WindingRole.class));
    }

    private void surge(Form here) {
        surgeGate = new CautionsGate(here, "runup.surgeCautions", site(), Hazardous.SURGE);
        RecordGrid grid = here.grid("runup.surges", "/surges", columns -> TestColumns.surge(columns,
                rule -> rule.mark("/levelRule", "surge.rule")));
        surgeGate.opens(() -> grid.newRow(() -> now(surgeGate)));
    }

    private void withstand(Form here) {
        withstandGate = new CautionsGate(here, "runup.withstandCautions", site(), Hazardous.WITHSTAND);
        RecordGrid grid = here.grid("runup.withstands", "/withstands", columns -> columns
                .choice("/winding", "reading.winding", WindingRole.class)
                .either("/direct", "withstand.kind", "withstand.dc", "withstand.ac")
                .number("/volts", "withstand.volts", FieldUnit.VOLT)
                .number("/seconds", "withstand.seconds", FieldUnit.SECOND)
                .either("/held", "withstand.result", "withstand.held", "withstand.failed")
                .says()
                .integer("/attempt", "withstand.attempt", 1, 99)
                .flag("/newWinding", "withstand.newWinding")
                .instrument("/instrument", "test.instrument")
                .moment("/at", "test.at")
                .person("/by", "test.by")
                .person("/cautionsBy", "test.cautionsBy")
                .text("/note", "test.note"));
        withstandGate.opens(() -> grid.newRow(() -> now(withstandGate).put("attempt", 1)));
    }

    private void points(Form here) {
        liveGate = new CautionsGate(here, "runup.liveCautions", site(), Hazardous.LIVE_RUN_UP);
        RecordGrid grid = here.grid("runup.points", "/points", columns -> columns
                .choice("/kind", "point.kind", RunPoint.Kind.class)
                .choice("/source", "point.source", RunPoint.Source.class)
                .says()
                .number("/speedRpm", "point.speed", FieldUnit.RPM)
                .number("/frequencyHz", "point.frequency", FieldUnit.HERTZ)
                .number("/exciterV", "point.exciterV", FieldUnit.VOLT)
                .number("/exciterA", "point.exciterA", FieldUnit.AMPERE)
                .number("/mainFieldA", "point.mainFieldA", FieldUnit.AMPERE)
                .observed("/lineVolts/a", "point.uv", FieldUnit.VOLT)
                .observed("/lineVolts/b", "point.vw", FieldUnit.VOLT)
                .observed("/lineVolts/c", "point.wu", FieldUnit.VOLT)
                .observed("/neutralVolts/a", "point.un", FieldUnit.VOLT)
                .observed("/neutralVolts/b", "point.vn", FieldUnit.VOLT)
                .observed("/neutralVolts/c", "point.wn", FieldUnit.VOLT)
                .number("/loadW", "point.load", FieldUnit.WATT.typedIn("kW"))
                .number("/loadVar", "point.loadVar", FieldUnit.VAR.typedIn("kvar"))
                .number("/loadA", "point.loadA", FieldUnit.AMPERE)
                .instrument("/instrument", "test.instrument")
                .moment("/at", "test.at")
                .person("/by", "test.by")
                .person("/cautionsBy", "test.cautionsBy")
                .text("/note", "test.note"));
        liveGate.opens(() -> grid.newRow(() -> now(liveGate)));
        new LogArea(here.area("log.title"), site(), words(), liveGate::acknowledgedBy);
        here.section("runup.stored")
                .longText("/storedCurve/source", "stored.source")
                .number("/storedCurve/speedRpm", "point.speed", FieldUnit.RPM);
        here.grid("runup.storedPoints", "/storedCurve/points", columns -> columns
                .number("/fieldA", "stored.field", FieldUnit.AMPERE)
                .number("/lineV", "stored.volts", FieldUnit.VOLT))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("runup.regulator")
                .text("/phaseSequence", "runup.sequence")
                .flag("/sequenceRight", "runup.sequenceRight")
                .number("/regulation/setPointV", "regulation.setPoint", FieldUnit.VOLT)
                .number("/regulation/lowestV", "regulation.lowest", FieldUnit.VOLT)
                .number("/regulation/highestV", "regulation.highest", FieldUnit.VOLT)
                .number("/regulation/responseSeconds", "regulation.response", FieldUnit.SECOND);
    }

    private void afterwards(Form here) {
        here.section("runup.mountingTitle")
                .choice("/mounting", "runup.mounting", RunUp.Mounting.class);
        here.grid("runup.vibration", "/vibration", columns -> columns
                .choice("/end", "vibration.end", RunUp.End.class)
                .choice("/direction", "vibration.direction", RunUp.Direction.class)
                .number("/mmPerSecond", "vibration.velocity", FieldUnit.MM_PER_SECOND)
                .says()
                .instrument("/instrument", "test.instrument"))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.grid("runup.bearings", "/bearingTemperatures", columns -> columns
                .number("/minutes", "bearing.minutes", FieldUnit.MINUTE)
                .number("/driveEndCelsius", "bearing.de", FieldUnit.CELSIUS)
                .number("/nonDriveEndCelsius", "bearing.nde", FieldUnit.CELSIUS)
                .number("/ambientCelsius", "bearing.ambient", FieldUnit.CELSIUS))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.section("runup.conditionsTitle")
                .longText("/conditions", "runup.conditions")
                .text("/noise", "runup.noise")
                .number("/durationMinutes", "runup.duration", FieldUnit.MINUTE)
                .longText("/note", "test.note");
        flashing(here);
        overspeed(here);
        heatRuns(here);
    }

    private void flashing(Form here) {
        CautionsGate gate = new CautionsGate(here, "runup.flashingCautions", site(), Hazardous.FLASHING);
        RecordGrid grid = here.grid("runup.flashings", "/flashings", columns -> columns
                .number("/batteryV", "flashing.battery", FieldUnit.VOLT)
                .number("/seconds", "flashing.seconds", FieldUnit.SECOND)
                .flag("/blockingDiode", "flashing.diode")
                .flag("/leadsOff", "flashing.leadsOff")
                .flag("/standstill", "flashing.standstill")
                .mark("/positiveTo", "flashing.positive")
                .number("/voltsAfter", "flashing.after", FieldUnit.VOLT)
                .says()
                .moment("/at", "test.at")
                .person("/by", "test.by")
                .person("/cautionsBy", "test.cautionsBy")
                .text("/note", "test.note"));
        gate.opens(() -> grid.newRow(() -> now(gate)));
    }

    private void heatRuns(Form here) {
        RecordGrid grid = here.grid("runup.heatRuns", "/heatRuns", columns -> columns
                .choice("/winding", "reading.winding", WindingRole.class)
                .number("/coldOhm", "heat.cold", FieldUnit.OHM)
                .number("/coldCelsius", "heat.coldCelsius", FieldUnit.CELSIUS)
                .number("/coolantCelsius", "heat.coolant", FieldUnit.CELSIUS)
                .says()
                .number("/loadA", "point.loadA", FieldUnit.AMPERE)
                .number("/hours", "heat.hours", FieldUnit.HOUR)
                .instrument("/instrument", "test.instrument")
                .person("/by", "test.by")
                .person("/cautionsBy", "test.cautionsBy")
                .text("/note", "test.note"));
        liveGate.opens(() -> grid.newRow(() -> TestRows.begin(site(), liveGate.acknowledgedBy())));
        coolings(here);
    }

    /** A grid of cooling readings for each heat run, as soon as the run has its row. */
    private void coolings(Form here) {
        int runs = document().rows(key(), "/heatRuns").size();
        boolean added = coolings < runs;
        while (coolings < runs && coolings < MOST_HEAT_RUNS) {
            here.grid("runup.cooling." + (coolings + 1), "/heatRuns/" + coolings + "/cooling", columns -> columns
                    .number("/seconds", "heat.seconds", FieldUnit.SECOND)
                    .number("/ohm", "heat.ohm", FieldUnit.OHM))
                    .newRow(() -> site().json().mapper().createObjectNode());
            coolings++;
        }
        if (added) {
            here.relayout();
        }
    }

    @Override
    protected void changed() {
        if (coolings < Math.min(MOST_HEAT_RUNS, document().rows(key(), "/heatRuns").size())) {
            coolings(form());
            form().refresh();
        }
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        plan.show(TestPlan.of(document().job(), site().shop(), ofJob));
        charts.show(RunUpCharts.of(document().job(), site().shop(), ofJob));
    }

    /** Last on the page, because its fields come only when the cautions have been acknowledged or a run is on record. */
    private void overspeed(Form here) {
        CautionsGate gate = new CautionsGate(here, "runup.overspeedCautions", site(), Hazardous.OVERSPEED);
        if (document().value(key(), "/overspeed").isObject()) {
            overspeedFields(here);
        } else {
            gate.opens(() -> overspeedFields(here));
        }
    }

    private void overspeedFields(Form here) {
        here.section("runup.overspeed")
                .number("/overspeed/speedRpm", "point.speed", FieldUnit.RPM)
                .number("/overspeed/seconds", "overspeed.seconds", FieldUnit.SECOND)
                .flag("/overspeed/sound", "overspeed.sound")
                .person("/overspeed/cautionsBy", "test.cautionsBy")
                .text("/overspeed/note", "test.note");
        here.refresh();
        here.relayout();
    }

    private ObjectNode now(CautionsGate gate) {
        return TestRows.begin(site(), gate == null ? site().who() : gate.acknowledgedBy())
                .put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
    }

    private Conditions before(ReadingQuantity quantity) {
        return document().part(key(), RunUp.class).stream().flatMap(r -> r.readings().stream())
                .filter(r -> r.quantity() == quantity).reduce((first, second) -> second).map(Conditions::of)
                .orElse(Conditions.NONE);
    }
}
