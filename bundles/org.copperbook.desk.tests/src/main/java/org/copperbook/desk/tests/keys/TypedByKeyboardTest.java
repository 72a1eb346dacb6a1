package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Hazard;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.inspection.Inspection;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Each page of a job is filled, undone, done again and saved by somebody who has a keyboard and no mouse. */
class TypedByKeyboardTest {

    private static final PartKey STATOR = PartKey.windingAsFound(WindingRole.MAIN_STATOR);

    private final Desktop desktop = new Desktop();
    private final JobByKeys job = new JobByKeys(desktop);

    @BeforeEach
    void aMachineIsBookedIn() {
        desktop.session().who(tester());
        desktop.work();
        job.bookIn().field("/customer", "Alder Mill");
    }

    @AfterEach
    void leave() {
        desktop.closeAll();
    }

    @Test
    void theBookingAndTheNameplate() {
        job.undoneAndDoneAgain("/customer", "", "Alder Mill")
                .field("/machineKind", "brushless")
                .field("/machine", "mill race set")
                .lines("/reportedFault", "No volts.")
                .tick("/hazards/OIL")
                .row("/parts", 0, "/received", "received", "dented")
                .save();
        assertFalse(job.editor().document().number().isEmpty(), "the first save gives the number");
        job.page(PartKey.of(PartKind.NAMEPLATE))
                .field("/apparentPowerVA", "62,5")
                .undoneAndDoneAgain("/apparentPowerVA", "", "62.5 kVA")
                .field("/voltageV", "400")
                .row("/makerLimits", 0, "/appliesTo", "each phase", "0.04", "0.05", "ohm", "20", "the manual")
                .save();
        Job kept = kept();
        assertEquals("No volts.", kept.booking().orElseThrow().reportedFault());
        assertEquals(List.of(Hazard.OIL), List.copyOf(kept.booking().orElseThrow().hazards()));
        assertEquals("dented", kept.booking().orElseThrow().parts().get(0).note());
        assertEquals(62_500, kept.nameplate().orElseThrow().apparentPowerVA());
        assertEquals("the manual", kept.nameplate().orElseThrow().makerLimits().get(0).source());
    }

    @Test
    void theInspectionWithTheCautionsOfItsRun() {
        job.page(PartKey.of(PartKind.INSPECTION))
                .row("/checklist", 0, "/condition", "worn", "scored")
                .row("/readings", 0, "/place/winding", "main rotor", "", "F1-F2", "1.42", "21");
        assertFalse(desktop.grid("/excitationRuns").model().grows(), "no run before its cautions");
        job.acknowledge("separate-excitation")
                .row("/excitationRuns", 0, "/regulatorIsolated", "yes", "1500", "1.1")
                .lines("/recommendedScope", "Clean and dry.")
                .undoneAndDoneAgain("/recommendedScope", "", "Clean and dry.")
                .save();
        Inspection kept = kept().inspection().orElseThrow();
        assertEquals("scored", kept.checklist().get(0).note());
        assertEquals(1.42, kept.readings().get(0).observed().value());
        assertEquals(21, kept.readings().get(0).windingCelsius());
        assertEquals(tester(), kept.excitationRuns().get(0).cautionsBy());
        assertEquals("Clean and dry.", kept.recommendedScope());
    }

    @Test
    void aWindingBegunInTheOutline() {
        job.add("Add: Winding", "Main stator, as found", STATOR)
                .field("/slots", "36")
                .undoneAndDoneAgain("/slots", "", "36")
                .field("/poles", "4").field("/layers", "2").field("/span", "1-9").field("/turnsPerCoil", "6")
                .row("/wire", 0, "/size", "1.18 mm", "12")
                .press("winding.layOut", () -> desktop.grid("/groups").model().filled() == 12)
                .field("conditions.windingCelsius", "19,5")
                .choose("conditions.method", "four-wire")
                .row("/groups", 0, "/resistance", "0.0415")
                .count("1-12: 6 6 6", "12");
        job.walker().go(desktop.field("photo.add"));
        assertEquals("photo.add", job.walker().at());
        job.save();
        WindingData kept = (WindingData) kept().part(STATOR).orElseThrow();
        assertEquals(12, kept.wire().get(0).strands());
        assertEquals(0.0415, kept.groups().get(0).resistance().observed().value());
        assertEquals(19.5, kept.groups().get(0).resistance().windingCelsius());
        assertEquals(Reading.Method.FOUR_WIRE, kept.groups().get(0).resistance().method());
        assertEquals(12, kept.counts().get(0).groups().size());
    }

    @Test
    void theRectifierSet() {
        job.page(PartKey.of(PartKind.RECTIFIER))
                .lines("/note", "seen in place")
                .undoneAndDoneAgain("/note", "", "seen in place")
                .choose("conditions.isolated", "isolated (lifted)")
                .row("/positions", 0, "/asFoundForward", "0.52", "OL")
                .field("/fitted/torqueMinNm", "2.2")
                .row("/positions", 1, "/torqueNm", "2.3")
                .field("/suppressor/kind", "varistor")
                .save();
        RectifierSet kept = kept().rectifier().orElseThrow();
        assertEquals(0.52, kept.positions().get(0).asFoundForward().observed().value());
        assertEquals(Boolean.TRUE, kept.positions().get(0).asFoundReverse().isolated());
        assertEquals(2.3, kept.positions().get(1).torqueNm());
        assertEquals(2.2, kept.fitted().torqueMinNm());
    }

    @Test
    void theCoreTestAfterItsCautions() {
        job.page(PartKey.of(PartKind.CORE))
                .field("/burnOutHours", "6")
                .undoneAndDoneAgain("/burnOutHours", "", "6 h")
                .acknowledge("core-loop")
                .row("/runs", 0, "/stage", "before", "4", "24.2", "41", "310")
                .save();
        assertEquals(310, ((CoreTest) kept().part(PartKey.of(PartKind.CORE)).orElseThrow()).runs().get(0).watts());
    }

    @Test
    void theImpregnation() {
        job.page(PartKey.of(PartKind.IMPREGNATION))
                .row("/treatments", 0, "/winding", "main stator", "dip", "polyester", "L-7", "110", "90")
                .row("/drying", 0, "/minutes", "0", "22", "1.5")
                .lines("/note", "second dip after a night")
                .undoneAndDoneAgain("/note", "", "second dip after a night")
                .save();
        Impregnation kept = (Impregnation) kept().part(PartKey.of(PartKind.IMPREGNATION)).orElseThrow();
        assertEquals(110, kept.treatments().get(0).preheatCelsius());
        assertEquals(1.5e6, kept.drying().get(0).insulationOhm());
    }

    @Test
    void theRunUpAfterItsCautions() {
        job.page(PartKey.of(PartKind.RUN_UP))
                .row("/readings", 0, "/observed", "0.0414", "20")
                .acknowledge("withstand")
                .row("/withstands", 0, "/winding", "main stator", "ac", "1800", "60", "held")
                .acknowledge("live-run-up")
                .row("/points", 0, "/kind", "no load", "own", "1500", "50")
                .field("/phaseSequence", "U V W")
                .undoneAndDoneAgain("/phaseSequence", "", "U V W")
                .row("/vibration", 0, "/end", "drive", "axial", "0.9")
                .save();
        RunUp kept = kept().runUp().orElseThrow();
        assertEquals(0.0414, kept.readings().get(0).observed().value());
        assertEquals(tester(), kept.withstands().get(0).cautionsBy());
        assertEquals(50, kept.points().get(0).frequencyHz());
        assertEquals(0.9, kept.vibration().get(0).mmPerSecond());
    }

    @Test
    void aQuoteBegunInTheOutline() {
        PartKey quote = PartKey.quote(1);
        job.add("Add: Quote", null, quote)
                .row("/alternatives/0/lines", 0, "/kind", "labour", "strip and rewind", "40", "h", "55.00")
                .row("/taxes", 0, "/code", "v20", "standard", "20")
                .field("/approval/how", "by telephone")
                .undoneAndDoneAgain("/approval/how", "", "by telephone")
                .save();
        Quote kept = (Quote) kept().part(quote).orElseThrow();
        assertEquals("55.00", kept.alternatives().get(0).lines().get(0).unitPrice().setScale(2).toPlainString());
        assertEquals("by telephone", kept.approval().how());
    }

    @Test
    void theJobIsClosedWithAReason() {
        job.page(PartKey.of(PartKind.STANDING))
                .choose("closing.how", "cancelled")
                .field("closing.reason", "sold for scrap")
                .press("closing.close", () -> kindOfClosure() != null)
                .save();
        assertEquals("CANCELLED", kindOfClosure());
        assertEquals("sold for scrap", kept().standing().orElseThrow().closure().reason());
    }

    private String kindOfClosure() {
        return job.editor().document().job().standing().map(s -> s.closure()).map(c -> c.how().name()).orElse(null);
    }

    private String tester() {
        return desktop.session().shop().people().values().stream().filter(p -> p.active() && p.roles().stream()
                .anyMatch(r -> r.name().equals("TESTER"))).findFirst().orElseThrow().key();
    }

    private Job kept() {
        return desktop.session().store().load(job.editor().document().id());
    }
}
