package org.copperbook.runup;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.CautionsGate;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.winding.WindingRole;

/** The core loop test before and after burn-out, and the burn-out. */
public final class CorePage extends PartPage {

    private CautionsGate gate;

    @Override
    protected Words words() {
        return Words.of(CorePage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("core.title")
                .choice("/winding", "core.winding", WindingRole.class)
                .choice("/corePlate", "core.plate", CoreTest.CorePlate.class)
                .number("/burnOutHours", "core.burnOutHours", FieldUnit.HOUR)
                .number("/burnOutMaxCelsius", "core.burnOutMax", FieldUnit.CELSIUS)
                .text("/note", "test.note");
        here.words("core.burnOutCaution");
        gate = new CautionsGate(here, "core.cautions", site(), Hazardous.CORE_LOOP);
        RecordGrid runs = here.grid("core.runs", "/runs", columns -> columns
                .choice("/stage", "core.stage", CoreTest.Stage.class)
                .integer("/turns", "core.turns", 1, 10_000)
                .number("/volts", "core.volts", FieldUnit.VOLT)
                .number("/amps", "core.amps", FieldUnit.AMPERE)
                .number("/watts", "core.watts", FieldUnit.WATT)
                .says()
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

    private ObjectNode newRun() {
        return TestRows.begin(site(), gate.acknowledgedBy()).put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS)
                .toString());
    }
}
