package org.copperbook.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.desk.chart.ChartsArea;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.CautionsGate;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.photo.PhotosArea;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.Verdict;
import org.copperbook.jobs.inspection.BearingFit;
import org.copperbook.jobs.inspection.ChecklistItem;
import org.copperbook.jobs.inspection.ChecklistTemplate;
import org.copperbook.jobs.inspection.ExcitationRun;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.inspection.Runout;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.insulation.InsulationCharts;

/** The machine as found: what was seen, what was read, the separate-excitation run, findings and proposed scope. */
public final class InspectionPage extends PartPage {

    private static final int CORRECTS_CHARS = 9;

    private CautionsGate runGate;
    private EarlierJobArea earlier;
    private ChartsArea charts;

    @Override
    protected Words words() {
        return Words.of(InspectionPage.class);
    }

    @Override
    protected void build(Form here) {
        NewReading readings = new NewReading(site());
        here.grid("inspection.checklist", "/checklist", columns -> columns
                .mark("/area", "inspection.area")
                .mark("/point", "inspection.point")
                .choice("/condition", "inspection.condition", ChecklistItem.Condition.class)
                .text("/note", "inspection.note")
                .text("/work", "inspection.work"))
                .newRow(() -> site().json().mapper().createObjectNode());
        new FindingsFromList(here.area(), site(), words());
        here.photos("inspection.photos", "/photos");
        here.words("inspection.fitsHint");
        here.grid("inspection.fits", "/fits", this::fits).newRow(this::measuredNow);
        here.grid("inspection.runouts", "/runouts", this::runouts).newRow(this::measuredNow);
        here.words("inspection.isolateCaution");
        here.grid("inspection.resistance", "/readings", this::resistance)
                .where(r -> ReadingQuantity.RESISTANCE.name().equals(r.path("quantity").asText()))
                .newRow(() -> readings.of(ReadingQuantity.RESISTANCE, Place.Kind.TERMINAL_PAIR,
                        Reading.State.AS_FOUND, before(ReadingQuantity.RESISTANCE)));
        here.words("inspection.dischargeCaution");
        here.grid("inspection.insulation", "/readings", this::insulation)
                .where(r -> ReadingQuantity.INSULATION_RESISTANCE.name().equals(r.path("quantity").asText()))
                .newRow(() -> readings.of(ReadingQuantity.INSULATION_RESISTANCE, Place.Kind.TO_EARTH,
                        Reading.State.AS_FOUND, before(ReadingQuantity.INSULATION_RESISTANCE)));
        charts = new ChartsArea(here.area("inspection.insulationCurve"), words(), here::relayout);
        runGate = new CautionsGate(here, "inspection.runCautions", site(), Hazardous.SEPARATE_EXCITATION);
        RecordGrid runs = here.grid("inspection.runs", "/excitationRuns", this::runs);
        runGate.opens(() -> runs.newRow(this::newRun));
        RecordGrid findings = here.grid("inspection.findings", "/findings", columns -> columns
                .mark("/where", "inspection.where")
                .choice("/severity", "inspection.severity", Finding.Severity.class)
                .text("/text", "inspection.finding")
                .text("/proposedWork", "inspection.work"))
                .newRow(() -> site().json().mapper().createObjectNode());
        PhotosArea ofFinding = here.photos("inspection.findingPhotos", () -> findings.row() < findings.model().filled()
                ? Optional.of("/findings/" + findings.row() + "/photos") : Optional.empty());
        findings.onRow(row -> ofFinding.refresh());
        earlier = new EarlierJobArea(here.area("inspection.earlierTitle"), site(), words());
        here.section("inspection.scopeTitle")
                .longText("/recommendedScope", "inspection.scope");
    }

    private void fits(GridColumns columns) {
        columns.choice("/end", "fit.end", RunUp.End.class)
                .choice("/seat", "fit.seat", BearingFit.Seat.class)
                .number("/nominalMm", "fit.nominal", FieldUnit.MILLIMETRE)
                .mark("/zone", "fit.zone")
                .number("/measuredMm", "fit.measured", FieldUnit.MILLIMETRE)
                .number("/acrossMm", "fit.across", FieldUnit.MILLIMETRE)
                .says()
                .instrument("/instrument", "reading.instrument")
                .number("/lowerMm", "fit.lower", FieldUnit.MILLIMETRE)
                .number("/upperMm", "fit.upper", FieldUnit.MILLIMETRE)
                .text("/note", "inspection.note")
                .moment("/at", "reading.at")
                .person("/by", "reading.by");
    }

    private void runouts(GridColumns columns) {
        columns.choice("/end", "fit.end", RunUp.End.class)
                .choice("/place", "runout.place", Runout.Place.class)
                .number("/diameterMm", "runout.diameter", FieldUnit.MILLIMETRE)
                .number("/runoutMm", "runout.runout", FieldUnit.MILLIMETRE)
                .says()
                .instrument("/instrument", "reading.instrument")
                .number("/limitMm", "runout.limit", FieldUnit.MILLIMETRE)
                .text("/note", "inspection.note")
                .moment("/at", "reading.at")
                .person("/by", "reading.by");
    }

    private ObjectNode measuredNow() {
        ObjectNode row = site().json().mapper().createObjectNode();
        site().who().ifPresent(w -> row.put("by", w));
        return row.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
    }

    private void resistance(GridColumns columns) {
        columns.computedMark("number", "reading.number", this::number)
                .choice("/place/winding", "reading.winding", WindingRole.class)
                .choice("/place/kind", "reading.place", Place.Kind.class)
                .mark("/place/mark", "reading.mark")
                .observed("/observed", "reading.ohms", FieldUnit.OHM)
                .number("/windingCelsius", "reading.temperature", FieldUnit.CELSIUS)
                .instrument("/instrument", "reading.instrument")
                .choice("/method", "reading.method", Reading.Method.class)
                .either("/isolated", "reading.isolated", "reading.isIsolated", "reading.inCircuit")
                .mark("/temperatureHow", "reading.temperatureHow")
                .moment("/at", "reading.at")
                .person("/by", "reading.by")
                .entry("/supersedes", "reading.supersedes", new CorrectedReadingEntry(this::readings), CORRECTS_CHARS)
                .text("/reason", "reading.reason");
    }

    private String number(JsonNode row) {
        String id = row.path("id").asText("");
        JsonNode all = readings();
        for (int i = 0; i < all.size(); i++) {
            if (!id.isEmpty() && id.equals(all.get(i).path("id").asText())) {
                return Integer.toString(i + 1);
            }
        }
        return "";
    }

    private JsonNode readings() {
        return document().rows(key(), "/readings");
    }

    private void insulation(GridColumns columns) {
        columns.choice("/place/winding", "reading.winding", WindingRole.class)
                .choice("/place/kind", "reading.place", Place.Kind.class)
                .mark("/place/mark", "reading.mark")
                .observed("/observed", "reading.insulation", FieldUnit.OHM.typedIn("MΩ"))
                .number("/testVolts", "reading.testVolts", FieldUnit.VOLT)
                .number("/afterSeconds", "reading.after", FieldUnit.SECOND)
                .number("/windingCelsius", "reading.temperature", FieldUnit.CELSIUS)
                .number("/humidityPercent", "reading.humidity", FieldUnit.PERCENT)
                .instrument("/instrument", "reading.instrument")
                .moment("/at", "reading.at")
                .person("/by", "reading.by");
    }

    private void runs(GridColumns columns) {
        columns.flag("/regulatorIsolated", "run.regulatorIsolated")
                .says()
                .number("/speedRpm", "run.speed", FieldUnit.RPM)
                .number("/exciterA", "run.exciterA", FieldUnit.AMPERE)
                .number("/batteryV", "run.batteryV", FieldUnit.VOLT)
                .observed("/lineVolts/a", "run.uv", FieldUnit.VOLT)
                .observed("/lineVolts/b", "run.vw", FieldUnit.VOLT)
                .observed("/lineVolts/c", "run.wu", FieldUnit.VOLT)
                .number("/expectedV", "run.expected", FieldUnit.VOLT)
                .choice("/expectedFrom", "run.expectedFrom", ExcitationRun.ExpectedFrom.class)
                .person("/cautionsBy", "run.cautionsBy")
                .observed("/neutralVolts/a", "run.un", FieldUnit.VOLT)
                .observed("/neutralVolts/b", "run.vn", FieldUnit.VOLT)
                .observed("/neutralVolts/c", "run.wn", FieldUnit.VOLT)
                .instrument("/instrument", "reading.instrument")
                .moment("/at", "reading.at")
                .person("/by", "reading.by")
                .text("/note", "inspection.note");
    }

    /** Instrument, method and temperature go on from the reading before. */
    private Conditions before(ReadingQuantity quantity) {
        return document().part(key(), Inspection.class).stream()
                .flatMap(i -> i.readings().stream())
                .filter(r -> r.quantity() == quantity)
                .reduce((first, second) -> second)
                .map(Conditions::of)
                .orElse(Conditions.NONE);
    }

    private ObjectNode newRun() {
        ObjectNode row = measuredNow();
        runGate.acknowledgedBy().ifPresent(w -> row.put("cautionsBy", w));
        return row;
    }

    @Override
    protected void judged(List<Verdict> ofJob) {
        earlier.follow();
        Map<String, Chart> asFound = new LinkedHashMap<>(InsulationCharts.of(document().job(), site().shop(), ofJob));
        asFound.keySet().removeIf(name -> !name.contains("-as-found"));
        charts.show(asFound);
    }

    @Override
    protected ObjectNode beginning() {
        ObjectNode tree = super.beginning();
        if (!tree.has("checklist")) {
            ArrayNode list = tree.putArray("checklist");
            ChecklistTemplate own = site().shop().checklist();
            (own.points().isEmpty() ? ShippedChecklist.of(words()) : own).points().forEach(p -> {
                ObjectNode row = list.addObject().put("area", p.area()).put("point", p.point());
                if (!p.work().isBlank()) {
                    row.put("work", p.work());
                }
            });
        }
        return tree;
    }
}
