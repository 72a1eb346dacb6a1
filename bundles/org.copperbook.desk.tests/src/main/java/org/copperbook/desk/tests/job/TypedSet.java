package org.copperbook.desk.tests.job;

import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import org.copperbook.desk.tests.keys.JobByKeys;
import org.copperbook.desk.tests.window.Desktop;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.winding.WindingRole;

/**
 * The 60 kW brushless set as people of a workshop type it, page after page. Single figures are typed; what would come
 * from a sheet of readings is pasted as a block. Limits are those of US Army TM 9-6115-645-24, table 4-3; readings and
 * everything else are invented.
 */
final class TypedSet {

    static final PartKey INSPECTION = PartKey.of(PartKind.INSPECTION);
    static final PartKey FOUND = PartKey.windingAsFound(WindingRole.EXCITER_STATOR);
    static final PartKey WOUND = PartKey.windingAsWound(WindingRole.EXCITER_STATOR);
    static final PartKey RUN_UP = PartKey.of(PartKind.RUN_UP);
    static final PartKey SIGN_OFFS = PartKey.of(PartKind.SIGN_OFFS);
    private static final PartKey QUOTE = PartKey.quote(1);
    private static final String MANUAL = "US Army TM 9-6115-645-24, table 4-3";
    private static final String PROBE = "contact probe after a night in the shop";

    private final Desktop desktop;
    private final JobByKeys job;

    TypedSet(Desktop desktop, JobByKeys job) {
        this.desktop = desktop;
        this.job = job;
    }

    void booking() {
        job.field("/customer", "Hill Road Pumping Station")
                .field("/orderNo", "PS-118")
                .field("/arrivedBy", "our lorry")
                .field("/bookedAt", "2026-03-02 08:10")
                .field("/bookedBy", "F. Alder")
                .field("/tag", "60-A")
                .field("/machineKind", "brushless")
                .field("/machine", "60 kW brushless set")
                .lines("/reportedFault", "Runs up but gives only about 130 V, lamps dim.")
                .field("/promised", "2026-03-24")
                .field("/priority", "normal")
                .tick("/hazards/HEAVY_LIFT")
                .field("/liftingMassKg", "410")
                .paste("/parts", 0, "/received", "received", "received", "received", "received");
    }

    void nameplate() {
        job.page(PartKey.of(PartKind.NAMEPLATE))
                .field("/duty", "S1").field("/thermalClass", "F")
                .field("/apparentPowerVA", "75").field("/powerW", "60").field("/voltageV", "208")
                .field("/connection", "parallel star").field("/currentA", "208").field("/powerFactor", "0,8")
                .field("/frequencyHz", "60").field("/speedRpm", "1800").field("/phases", "3").field("/poles", "4")
                .field("/shaftHeightMm", "225").field("/leads", "12").field("/marks", "T numbers")
                .paste("/makerLimits", 0, "/id",
                        limit("main-stator", "each winding section, T1-T4 and so on", "0.04", "0.054"),
                        limit("main-rotor", "main field, F1-F2", "0.52", "0.7"),
                        limit("exciter-stator", "exciter field, F1-F2", "24.85", "33.61"),
                        limit("exciter-rotor.line", "between two line leads", "0.202", "0.274"));
    }

    void inspection() {
        job.page(INSPECTION)
                .row("/checklist", 15, "/area", "visual", "exciter field coils", "damaged", "two coils dark, brittle")
                .paste("/readings", 0, "/place/winding",
                        asFound("main stator", "T1-T4", "45.73 m", 1), asFound("main stator", "T2-T5", "45.93 m", 2),
                        asFound("main stator", "T3-T6", "45.64 m", 3), asFound("main stator", "T7-T10", "0.04583", 4),
                        asFound("main stator", "T8-T11", "0.04573", 5), asFound("main stator", "T9-T12", "0.04603", 6),
                        asFound("main rotor", "F1-F2", "0,5955", 7), asFound("exciter rotor", "U-V", "0.2301", 8),
                        asFound("exciter rotor", "V-W", "0.2307", 9), asFound("exciter rotor", "W-U", "0.2304", 10))
                .row("/readings", 10, "/place/winding", "exciter stator", "", "F1-F2", "21.44 ohm")
                .paste(desktop.grid("/readings", "/testVolts"), 0, "/place/winding",
                        insulationFound("main stator", "180 M", 12), insulationFound("main rotor", "95", 13),
                        insulationFound("exciter stator", "60", 14), insulationFound("exciter rotor", "0.12 G", 15))
                .acknowledge("separate-excitation")
                .paste("/excitationRuns", 0, "/regulatorIsolated", String.join("\t", "yes", "1803", "1.12", "24",
                        "131.2", "131.0", "131.5", "208", "nominal", "T. Elm", "75.7", "75.8", "75.8", "volt-1",
                        "2026-03-03 13:30"))
                .row("/findings", 0, "/where", "exciter stator", "must", "below the manual's limit; poles 3 and 6 shorted",
                        "rewind the exciter stator")
                .lines("/recommendedScope", "Rewind the exciter stator, clean the rest, run up.");
    }

    void quote() {
        job.add("Add: Quote", null, QUOTE)
                .field("/date", "2026-03-04")
                .field("/validUntil", "2026-04-04")
                .field("/alternatives/0/name", "rewind of the exciter stator")
                .row("/alternatives/0/lines", 0, "/kind", "labour", "rewind eight field coils", "22", "h", "54.00")
                .field("/approval/agreed", "agreed")
                .field("/approval/alternative", "rewind of the exciter stator")
                .field("/approval/by", "station foreman")
                .field("/approval/how", "order PS-118")
                .field("/approval/at", "2026-03-05 09:00");
    }

    /** The old winding: coils 3 and 6 are shorted. Both photos are put as the system's own file dialog hands them over. */
    void oldWinding() {
        job.add("Add: Winding", "Exciter stator, as found", FOUND)
                .field("/poles", "8").field("/layers", "12").field("/turnsPerCoil", "306").field("/circuits", "1")
                .field("/connection", "poles in series").field("/leads", "2").field("/meanTurnM", "0.3")
                .field("/conductor", "round").field("/polaritySequence", "N S N S N S N S")
                .row("/wire", 0, "/size", "0.75 mm", "1", "2", "0.75", "0.834")
                .field("conditions.windingCelsius", "18")
                .chooseWith("conditions.instrument", "four-wire resistance bridge")
                .choose("conditions.method", "four-wire")
                .paste("/groups", 0, "/number", IntStream.rangeClosed(1, 8).mapToObj(n -> n + "\t\t\t"
                        + (n % 2 == 0 ? "yes" : "no") + "\tx306\t\t" + (n == 3 ? "60.5 m" : n == 6 ? "54.6 m" : "3.5545"))
                        .toArray(String[]::new))
                .field("/thermalClass", "F");
        photo("drive end");
        photo("non-drive end");
        job.count("1-8: 306", "1").somebody("winder-2").count("1-8: 306", "1").somebody("winder-1");
    }

    void newWinding() {
        job.page(WOUND)
                .field("conditions.windingCelsius", "21")
                .chooseWith("conditions.instrument", "four-wire resistance bridge")
                .choose("conditions.method", "four-wire")
                .paste("/groups", 0, "/resistance", "3.6002", "3.5895", "3.6038", "3.5966", "3.5931", "3.6074", "3.5931",
                        "3.5966")
                .row("/readings", 0, "/place/kind", "terminal pair", "F1-F2", "28.77");
    }

    /** What is tested between winding and impregnation; both stand on the run-up page as tests in process. */
    void provingTheNewWinding() {
        job.page(RUN_UP)
                .paste(desktop.grid("/readings", "/testVolts"), 0, "/state",
                        "in process\texciter stator\t\t850\t500\t60\t21\tir-tester-1\t2026-03-12 11:10")
                .acknowledge("withstand")
                .paste("/withstands", 0, "/winding",
                        "exciter stator\tac\t1500\t60\theld\t1\tyes\thipot-1\t2026-03-16 09:00");
    }

    void impregnation() {
        job.page(PartKey.of(PartKind.IMPREGNATION))
                .paste("/treatments", 0, "/winding",
                        "exciter stator\tdip\tpolyester-imide\tL-0312\t110\t90\t20\t150\t300\t\t\tW. Birch\t2026-03-13 08:00");
    }

    void rectifier() {
        job.page(PartKey.of(PartKind.RECTIFIER))
                .chooseWith("conditions.instrument", "multimeter")
                .choose("conditions.isolated", "isolated (lifted)")
                .paste("/positions", 0, "/basePolarity", "cathode\tU\t10.0 ohm\t180 kohm", "cathode\tV\t10.1 ohm\t185 kohm",
                        "cathode\tW\t10.2 ohm\t190 kohm", "anode\tU\t10.3 ohm\t195 kohm", "anode\tV\t10.4 ohm\t200 kohm",
                        "anode\tW\t10.5 ohm\t205 kohm")
                .field("/suppressor/kind", "varistor")
                .field("/suppressor/asFound", "OL");
    }

    void runUp() {
        job.page(RUN_UP)
                .paste("/readings", 0, "/state",
                        asLeft("main stator", "T1-T4", "0.04646", 31), asLeft("main stator", "T2-T5", "0.04666", 32),
                        asLeft("main stator", "T3-T6", "0.04636", 33), asLeft("main stator", "T7-T10", "0.04656", 34),
                        asLeft("main stator", "T8-T11", "0.04646", 35), asLeft("main stator", "T9-T12", "0.04675", 36),
                        asLeft("main rotor", "F1-F2", "0.6049", 37), asLeft("exciter rotor", "U-V", "0.2338", 38),
                        asLeft("exciter rotor", "V-W", "0.2344", 39), asLeft("exciter rotor", "W-U", "0.2341", 40),
                        asLeft("exciter stator", "F1-F2", "28.89", 41))
                .paste(desktop.grid("/readings", "/testVolts"), 1, "/state",
                        insulationLeft("main stator", "420", 42), insulationLeft("main rotor", "210", 43),
                        insulationLeft("exciter stator", "900", 44), insulationLeft("exciter rotor", "300", 45))
                .acknowledge("live-run-up")
                .paste("/points", 0, "/kind",
                        String.join("\t", "no load", "own regulator", "1800", "60", "22.1", "0.74", "", "208.1", "207.9",
                                "208.3", "120.1", "120.0", "120.3", "", "", "", "volt-1", "2026-03-20 10:00"),
                        String.join("\t", "on load", "own regulator", "1798", "59.9", "52.0", "1.74", "", "207.4", "207.1",
                                "207.6", "", "", "", "60", "45", "208", "volt-1", "2026-03-20 11:00"))
                .field("/phaseSequence", "U V W").field("/sequenceRight", "yes")
                .field("/regulation/setPointV", "208").field("/regulation/lowestV", "207.1")
                .field("/regulation/highestV", "208.6").field("/regulation/responseSeconds", "0.8")
                .field("/mounting", "rigid")
                .paste("/vibration", 0, "/end", "drive end\thorizontal\t1.1\tvib-1", "drive end\tvertical\t0.9\tvib-1",
                        "drive end\taxial\t0.7\tvib-1", "non-drive end\thorizontal\t1.0\tvib-1",
                        "non-drive end\tvertical\t0.8\tvib-1", "non-drive end\taxial\t0.7\tvib-1")
                .paste("/bearingTemperatures", 0, "/minutes", "0\t22\t22\t21", "60\t51\t47\t22", "120\t58\t53\t22.5",
                        "150\t58.5\t53.4\t22.7")
                .lines("/conditions", "Coupled to the test-bay drive, shop air 22 degrees Celsius.")
                .field("/durationMinutes", "150");
    }

    private void photo(String caption) {
        String hash = desktop.session().store().keepPhoto(caption.getBytes(StandardCharsets.UTF_8));
        var photo = desktop.session().json().mapper().createObjectNode().put("hash", hash)
                .put("name", caption + ".jpg").put("caption", caption);
        job.editor().document().insertRow(FOUND, "/photos",
                job.editor().document().rows(FOUND, "/photos").size(), photo);
    }

    private static String limit(String id, String appliesTo, String lower, String upper) {
        return String.join("\t", "resistance." + id, appliesTo, lower, upper, "ohm", "25", MANUAL);
    }

    private static String asFound(String winding, String mark, String ohms, int minute) {
        return String.join("\t", winding, "terminal pair", mark, ohms, "18", "bridge-1", "four-wire", "", PROBE,
                "2026-03-03 09:%02d".formatted(minute));
    }

    private static String insulationFound(String winding, String megohms, int minute) {
        return String.join("\t", winding, "to earth", "", megohms, "500", "1 min", "18", "", "ir-tester-1",
                "2026-03-03 09:%02d".formatted(minute));
    }

    private static String asLeft(String winding, String mark, String ohms, int minute) {
        return String.join("\t", "as left", winding, "terminal pair", mark, ohms, "22", "bridge-1", "four-wire",
                "2026-03-20 08:%02d".formatted(minute));
    }

    private static String insulationLeft(String winding, String megohms, int minute) {
        return String.join("\t", "as left", winding, "", megohms, "500", "60", "22", "ir-tester-1",
                "2026-03-20 08:%02d".formatted(minute));
    }
}
