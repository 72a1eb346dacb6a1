package org.copperbook.sheets.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.JobChecks;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.DefaultLimits;
import org.copperbook.jobs.shop.Instruments;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.shop.WireStock;
import org.copperbook.jobs.shop.Workshop;
import org.copperbook.sheets.chart.Chart;
import org.copperbook.sheets.chart.ChartPoint;
import org.copperbook.sheets.chart.ChartScene;
import org.copperbook.sheets.picture.Mark;
import org.junit.jupiter.api.Test;

class InsulationChartsTest {

    private static final PartJson JSON = new PartJson();

    private static Shop shop() {
        return new Shop(new Workshop(1, "Bench", null, null, null, null, null, null, null, null, null, null),
                new Instruments(1, List.of(), null), new WireStock(1, List.of(), null), DefaultLimits.load(JSON), Map.of());
    }

    private static String reading(int seconds, double megohm) {
        return "{'id':'i" + seconds + "','quantity':'INSULATION_RESISTANCE','place':{'winding':'main-stator','kind':'TO_EARTH'},"
                + "'observed':{'kind':'VALUE','value':" + megohm + "e6},'windingCelsius':50,'afterSeconds':" + seconds + "}";
    }

    private static Map<String, Chart> charts(String... readings) throws BadRecordException {
        Job job = new Job("j", "2026-0001", Map.of());
        job = job.with(PartKey.of(PartKind.NAMEPLATE), JSON.read(PartKey.of(PartKind.NAMEPLATE),
                "{'schema':1,'thermalClass':'A'}".replace('\'', '"')));
        job = job.with(PartKey.of(PartKind.INSPECTION), JSON.read(PartKey.of(PartKind.INSPECTION),
                ("{'schema':1,'readings':[" + String.join(",", readings) + "]}").replace('\'', '"')));
        return InsulationCharts.of(job, shop(), JobChecks.verdicts(job, shop()));
    }

    /** Thermal class A, 50 degrees: at 40 twice the reading (halving for every 10 K, IEEE 43). */
    @Test
    void aRunIsDrawnInMinutesAndMegohmAsReadAndAt40Degrees() throws Exception {
        Chart chart = charts(reading(30, 100), reading(60, 150), reading(600, 300)).get("insulation-main-stator-as-found");
        assertEquals(List.of(0.5, 1.0, 10.0), chart.series().get(0).points().stream().map(ChartPoint::x).toList());
        assertEquals(List.of(100.0, 150.0, 300.0), chart.series().get(0).points().stream().map(ChartPoint::y).toList());
        assertEquals(600, chart.series().get(1).points().get(2).y(), 1e-6);
        assertEquals("/readings/2", chart.series().get(0).points().get(2).id());
        assertTrue(chart.note().contains("Polarisation index (10 min over 1 min) 2"), chart.note());
        assertTrue(chart.note().contains("IEEE 43-2013, 6.3"), chart.note());
    }

    @Test
    void aLongNoteStaysInsideThePicture() throws Exception {
        Chart chart = charts(reading(30, 100), reading(60, 150)).get("insulation-main-stator-as-found");
        double width = 600;
        for (Mark m : ChartScene.of(chart, width, 400).marks()) {
            if (m instanceof Mark.Text t && chart.note().contains(t.text()) && t.anchor() == Mark.Anchor.START) {
                assertTrue(t.at().x() + t.width() <= width, t.text());
            }
        }
    }

    @Test
    void twoRunsOnOnePlaceAreTwoCharts() throws Exception {
        assertEquals(List.of("insulation-main-stator-as-found-1", "insulation-main-stator-as-found-2"),
                List.copyOf(charts(reading(60, 10), reading(600, 20), reading(60, 100), reading(600, 400)).keySet()));
    }
}
