package org.copperbook.runup.process;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.grid.GridColumns;
import org.copperbook.desk.grid.RecordGrid;
import org.copperbook.desk.page.CautionsGate;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.reading.Conditions;
import org.copperbook.desk.reading.NewReading;
import org.copperbook.desk.text.Words;
import org.copperbook.desk.theme.Look;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.check.Hazardous;
import org.copperbook.jobs.check.SurgeRule;
import org.copperbook.jobs.process.PolarityTest;
import org.copperbook.jobs.process.ProcessTests;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.runup.SignOffsPage;
import org.copperbook.runup.TestColumns;
import org.copperbook.runup.TestRows;
import org.copperbook.runup.core.Shown;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The tests of the new windings before they are impregnated; every attempt stays. */
public final class ProcessPage extends PartPage {

    private CautionsGate surgeGate;
    private Label levels;

    @Override
    protected Words words() {
        return Words.of(SignOffsPage.class);
    }

    @Override
    protected void build(Form here) {
        NewReading readings = new NewReading(site());
        here.words("process.groupsHint");
        here.grid("process.resistance", "/readings", TestColumns::resistance)
                .where(r -> ReadingQuantity.RESISTANCE.name().equals(r.path("quantity").asText()))
                .newRow(() -> begun(readings.of(ReadingQuantity.RESISTANCE, Place.Kind.PHASE, Reading.State.IN_PROCESS,
                        before(ReadingQuantity.RESISTANCE))));
        here.words("runup.dischargeCaution");
        here.grid("process.insulation", "/readings", this::insulation)
                .where(r -> ReadingQuantity.INSULATION_RESISTANCE.name().equals(r.path("quantity").asText()))
                .newRow(() -> begun(readings.of(ReadingQuantity.INSULATION_RESISTANCE, Place.Kind.TO_EARTH,
                        Reading.State.IN_PROCESS, before(ReadingQuantity.INSULATION_RESISTANCE))));
        surges(here);
        here.grid("process.polarities", "/polarities", columns -> columns
                .choice("/winding", "reading.winding", WindingRole.class)
                .choice("/method", "polarity.method", PolarityTest.Method.class)
                .mark("/seen", "polarity.seen")
                .either("/right", "polarity.right", "polarity.asWanted", "polarity.reversed")
                .says()
                .instrument("/instrument", "test.instrument")
                .moment("/at", "test.at")
                .person("/by", "test.by")
                .text("/note", "test.note"))
                .newRow(() -> now(Optional.empty()));
        here.section("process.noteTitle").longText("/note", "test.note");
    }

    private void insulation(GridColumns columns) {
        TestColumns.insulation(columns.choice("/place/winding", "reading.winding", WindingRole.class)
                .choice("/place/kind", "reading.place", Place.Kind.class));
    }

    private void surges(Form here) {
        surgeGate = new CautionsGate(here, "runup.surgeCautions", site(), Hazardous.SURGE);
        Composite area = here.area("process.levels");
        GridLayoutFactory.fillDefaults().applyTo(area);
        Look look = Look.of(area);
        levels = look.as(Look.Role.TEXT, new Label(area, SWT.WRAP));
        GridDataFactory.fillDefaults().grab(true, false).hint(look.chars(60), SWT.DEFAULT).applyTo(levels);
        RecordGrid grid = here.grid("runup.surges", "/surges", columns -> TestColumns.surge(columns,
                rule -> rule.proposals("/levelRule", "surge.rule", this::rules)));
        surgeGate.opens(() -> grid.newRow(() -> now(surgeGate.acknowledgedBy())));
    }

    /** Windings wound anew on this job; the one on the plate while none is begun. */
    private List<WindingRole> windings() {
        List<WindingRole> roles = new ArrayList<>();
        for (WindingRole role : WindingRole.values()) {
            if (document().part(PartKey.windingAsWound(role)).isPresent()) {
                roles.add(role);
            }
        }
        return roles.isEmpty() ? List.of(mainWinding()) : roles;
    }

    private WindingRole mainWinding() {
        boolean motor = document().job().booking().map(b -> b.machineKind())
                .map(k -> k.name().contains("MOTOR")).orElse(false);
        return motor ? WindingRole.MOTOR_STATOR : WindingRole.MAIN_STATOR;
    }

    @Override
    protected void changed() {
        String now = windings().stream().filter(role -> !role.isField())
                .map(role -> words().text("process.ofWinding", words().of(role), levels(role)))
                .collect(Collectors.joining("\n"));
        if (!now.equals(levels.getText())) {
            levels.setText(now);
            form().relayout();
        }
    }

    private String levels(WindingRole role) {
        return SurgeRule.forWinding(role, document().job(), site().shop()).stream()
                .map(r -> words().text("process.level", r.name(), r.peakVolts()
                        .map(v -> Shown.of(v, FieldUnit.VOLT)).orElse(words().text("process.levelOpen"))))
                .collect(Collectors.joining("; "));
    }

    private Map<String, String> rules() {
        Map<String, String> rules = new LinkedHashMap<>();
        SurgeRule.forWinding(mainWinding(), document().job(), site().shop())
                .forEach(r -> rules.put(r.name(), r.name()));
        return rules;
    }

    private ObjectNode begun(ObjectNode reading) {
        List<WindingRole> roles = windings();
        if (roles.size() == 1) {
            ((ObjectNode) reading.path("place")).put("winding", roles.get(0).word());
        }
        return reading;
    }

    private ObjectNode now(Optional<String> cautionsBy) {
        ObjectNode row = TestRows.begin(site(), cautionsBy);
        row.put("at", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
        List<WindingRole> roles = windings();
        if (roles.size() == 1) {
            row.put("winding", roles.get(0).word());
        }
        return row;
    }

    private Conditions before(ReadingQuantity quantity) {
        return document().part(key(), ProcessTests.class).stream().flatMap(r -> r.readings().stream())
                .filter(r -> r.quantity() == quantity).reduce((first, second) -> second).map(Conditions::of)
                .orElse(Conditions.NONE);
    }
}
