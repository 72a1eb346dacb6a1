package org.copperbook.inspection;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.form.Form;
import org.copperbook.desk.page.PartPage;
import org.copperbook.desk.text.Words;
import org.copperbook.inspection.before.SameSerial;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.check.PlateWords;
import org.copperbook.jobs.limits.Limit;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.nameplate.PlateCrossCheck;
import org.copperbook.jobs.winding.WindingRole;

/** The rating plate, as read, with its figures checked against each other. */
public final class NameplatePage extends PartPage {

    private static final String RESISTANCE = "resistance.";
    private static final List<WindingRole> ALL_ROLES = List.of(WindingRole.values());

    private SameSerial sameSerial;

    @Override
    protected Words words() {
        return Words.of(NameplatePage.class);
    }

    @Override
    protected void build(Form here) {
        here.section("plate.machine")
                .text("/maker", "plate.maker")
                .text("/type", "plate.type")
                .text("/serial", "plate.serial")
                .integer("/year", "plate.year", PlateCrossCheck.FIRST_YEAR, 2200)
                .text("/duty", "plate.duty")
                .text("/standard", "plate.standard")
                .text("/thermalClass", "plate.thermalClass")
                .text("/riseLimit", "plate.riseLimit");
        sameSerial = new SameSerial(here.area(), site(), words());
        here.section("plate.rating")
                .number("/apparentPowerVA", "plate.apparentPower", FieldUnit.VOLT_AMPERE.typedIn("kVA"))
                .number("/powerW", "plate.power", FieldUnit.WATT.typedIn("kW"))
                .number("/voltageV", "plate.voltage", FieldUnit.VOLT)
                .text("/connection", "plate.connection")
                .number("/currentA", "plate.current", FieldUnit.AMPERE)
                .number("/powerFactor", "plate.powerFactor", FieldUnit.NUMBER)
                .number("/frequencyHz", "plate.frequency", FieldUnit.HERTZ)
                .number("/speedRpm", "plate.speed", FieldUnit.RPM)
                .integer("/phases", "plate.phases", 1, 3)
                .integer("/poles", "plate.poles", 2, 200)
                .computed("plate.crossCheck", "plate.crossCheck", this::crossChecked);
        here.section("plate.excitation")
                .number("/excitationV", "plate.excitationV", FieldUnit.VOLT)
                .number("/excitationA", "plate.excitationA", FieldUnit.AMPERE)
                .number("/mainFieldV", "plate.mainFieldV", FieldUnit.VOLT)
                .number("/mainFieldA", "plate.mainFieldA", FieldUnit.AMPERE)
                .number("/rotorV", "plate.rotorV", FieldUnit.VOLT)
                .number("/rotorA", "plate.rotorA", FieldUnit.AMPERE)
                .text("/regulator", "plate.regulator");
        here.section("plate.build")
                .text("/ip", "plate.ip")
                .text("/ic", "plate.ic")
                .text("/im", "plate.im")
                .number("/ambientCelsius", "plate.ambient", FieldUnit.CELSIUS)
                .number("/minAmbientCelsius", "plate.minAmbient", FieldUnit.CELSIUS)
                .number("/altitudeM", "plate.altitude", FieldUnit.METRE)
                .number("/coolantCelsius", "plate.coolant", FieldUnit.CELSIUS)
                .text("/rotation", "plate.rotation")
                .number("/overspeedRpm", "plate.overspeed", FieldUnit.RPM)
                .number("/inertiaKgM2", "plate.inertia", FieldUnit.NUMBER)
                .number("/massKg", "plate.mass", FieldUnit.KILOGRAM)
                .number("/shaftHeightMm", "plate.shaftHeight", FieldUnit.MILLIMETRE)
                .text("/bearingDE", "plate.bearingDE")
                .text("/bearingNDE", "plate.bearingNDE")
                .integer("/leads", "plate.leads", 2, 24)
                .choice("/marks", "plate.marks", Nameplate.TerminalMarks.class);
        here.grid("plate.others", "/otherRatings", columns -> columns
                .number("/voltageV", "plate.voltage", FieldUnit.VOLT)
                .text("/connection", "plate.connection")
                .computedText("plate.check", "plate.check", this::ofRating)
                .number("/frequencyHz", "plate.frequency", FieldUnit.HERTZ)
                .number("/speedRpm", "plate.speed", FieldUnit.RPM)
                .number("/apparentPowerVA", "plate.apparentPower", FieldUnit.VOLT_AMPERE.typedIn("kVA"))
                .number("/powerW", "plate.power", FieldUnit.WATT.typedIn("kW"))
                .number("/currentA", "plate.current", FieldUnit.AMPERE)
                .number("/powerFactor", "plate.powerFactor", FieldUnit.NUMBER))
                .newRow(() -> site().json().mapper().createObjectNode());
        here.words("plate.limitsHint");
        here.grid("plate.limits", "/makerLimits", columns -> columns
                .proposals("/id", "limit.id", this::limitIds)
                .text("/appliesTo", "limit.appliesTo")
                .number("/lower", "limit.lower", FieldUnit.NUMBER)
                .number("/upper", "limit.upper", FieldUnit.NUMBER)
                .mark("/unit", "limit.unit")
                .number("/atCelsius", "limit.at", FieldUnit.CELSIUS)
                .text("/source", "limit.source"))
                .newRow(() -> site().json().mapper().createObjectNode().put("id", RESISTANCE + ALL_ROLES.get(0).word())
                        .put("unit", "ohm").put("standing", Limit.Standing.MAKER.name()));
    }

    @Override
    protected void changed() {
        sameSerial.follow();
    }

    /** What a maker's manual usually limits: the resistance of each winding. */
    private Map<String, String> limitIds() {
        Map<String, String> ids = new LinkedHashMap<>();
        for (WindingRole role : ALL_ROLES) {
            ids.put(RESISTANCE + role.word(), words().text("limit.resistance", words().of(role)));
            if (!role.isField()) {
                ids.put(RESISTANCE + role.word() + ".line", words().text("limit.resistanceLine", words().of(role)));
            }
        }
        return ids;
    }

    /** What the figures of the plate say about each other; a contradiction is shown and never refused. */
    private String crossChecked() {
        return document().part(key(), Nameplate.class).map(p -> String.join("\n", PlateWords.of(p, kind()))).orElse("");
    }

    /** What the machine was booked in as, or null. */
    private MachineKind kind() {
        return document().job().booking().map(Booking::machineKind).orElse(null);
    }

    /** What the figures of one further rating say, beside them. */
    private String ofRating(JsonNode row) {
        int at = 0;
        for (JsonNode r : document().rows(key(), "/otherRatings")) {
            at++;
            if (r.equals(row) && !row.isEmpty()) {
                int rating = at;
                return document().part(key(), Nameplate.class).map(p -> ofRating(p, rating)).orElse("");
            }
        }
        return "";
    }

    private String ofRating(Nameplate plate, int rating) {
        List<String> said = PlateWords.of(plate, kind(), rating);
        String notCompared = PlateWords.notCompared(plate, kind(), rating);
        return !said.isEmpty() ? String.join(" ", said) : notCompared.isEmpty() ? words().text("plate.rowAgrees") : notCompared;
    }
}
