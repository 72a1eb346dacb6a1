package org.copperbook.jobs.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DefaultLimitsTest {

    private final PartJson json = new PartJson();
    private final LimitProfile profile = DefaultLimits.load(json);

    @Test
    void everyLimitNamesWhatItLimitsWhereAndByWhom() {
        Set<String> ids = new HashSet<>();
        for (Limit l : profile.limits()) {
            assertTrue(ids.add(l.id()), "twice: " + l.id());
            assertFalse(l.title().isBlank(), l.id());
            assertFalse(l.appliesTo() == null || l.appliesTo().isBlank(), l.id() + " says nowhere where it applies");
            assertFalse(l.source() == null || l.source().isBlank(), l.id() + " has no source");
            assertNotNull(l.standing(), l.id());
            boolean bounded = l.lower() != null || l.upper() != null || l.formula() != null;
            assertTrue(bounded || l.appliesTo().startsWith("rule") || l.id().equals("rectifier.torque"), l.id());
            assertNull(l.original(), l.id());
        }
    }

    @Test
    void commonPracticeIsNeverDressedAsAStandard() {
        for (Limit l : profile.limits()) {
            boolean practice = l.source().equals("common practice, no source");
            assertTrue(!practice || l.standing() == Limit.Standing.COMMON_PRACTICE, l.id());
        }
    }

    /** IEC 60034-1:2004 table 16 and the text after it; ANSI/EASA AR100-2020 tables 4-4 and 4-5. Volts ac rms. */
    @ParameterizedTest
    @CsvSource({"withstand.iec.armature, 230, 1500", "withstand.iec.armature, 400, 1800",
        "withstand.iec.armature, 480, 1960", "withstand.iec.armature, 3300, 7600",
        "withstand.iec.armature-small, 48, 596", "withstand.iec.armature-small, 24, 548",
        "withstand.iec.synchronous-field, 40, 1500", "withstand.iec.synchronous-field, 150, 1500",
        "withstand.iec.synchronous-field, 200, 2000", "withstand.iec.synchronous-field-high, 600, 5200",
        "withstand.iec.separate-field, 60, 1500", "withstand.iec.separate-field, 300, 1600",
        "withstand.overhaul, 400, 1000", "withstand.overhaul, 3300, 4950", "withstand.overhaul-low, 48, 500",
        "withstand.ar100.field, 100, 1500", "withstand.ar100.field, 300, 3000", "withstand.ar100.field-high, 400, 3600",
        "withstand.ar100.field-low, 35, 500", "withstand.ar100.armature, 480, 1960"})
    void withstandLevelsAreThoseOfTheTables(String id, double u, double volts) {
        Limit l = profile.find(id).orElseThrow();
        assertEquals(volts, Formula.parse(l.formula()).value(Map.of("U", u)), 1e-9);
        assertTrue(Formula.parse(l.formula()).isLower());
    }

    /** IEEE 43 (kV + 1 megohm; 5 and 100 megohm), seen in public guides that quote it. */
    @ParameterizedTest
    @CsvSource({"0.4, 1.4e6", "0.48, 1.48e6", "3.3, 4.3e6", "11, 12e6"})
    void insulationMinimumGrowsWithTheVoltage(double kilovolts, double ohms) {
        Limit l = profile.find("insulation.ieee43.old-or-field").orElseThrow();
        assertEquals(ohms, Formula.parse(l.formula()).value(Map.of("kV", kilovolts)), 1e-3);
    }

    /** IEC 60034-14:2003, table 1, velocity in mm/s rms. */
    @ParameterizedTest
    @CsvSource({"a.free.56-132, 1.6", "a.free.132-280, 2.2", "a.free.above-280, 2.8", "a.rigid.56-132, 1.3",
        "a.rigid.132-280, 1.8", "a.rigid.above-280, 2.3", "b.free.56-132, 0.7", "b.free.132-280, 1.1",
        "b.free.above-280, 1.8", "b.rigid.132-280, 0.9", "b.rigid.above-280, 1.5"})
    void vibrationLimitsAreThoseOfTheTable(String id, double velocity) {
        assertEquals(velocity, profile.find("vibration." + id).orElseThrow().upper());
    }

    @Test
    void gradeBHasNoRigidLimitForSmallMachines() {
        assertTrue(profile.find("vibration.b.rigid.56-132").isEmpty());
    }

    @Test
    void anOverrideKeepsTheFirstOriginalBesideIt() {
        Limit own = override("insulation.practice", 2e6, "customer's rule");
        LimitProfile once = profile.override(own);
        LimitProfile twice = once.override(override("insulation.practice", 3e6, "stricter still"));
        Limit now = twice.find("insulation.practice").orElseThrow();
        assertEquals(3e6, now.lower());
        assertEquals(1e6, now.original().lower());
        assertEquals("common practice, no source", now.original().source());
        assertEquals(profile.limits().size(), twice.limits().size());
    }

    @Test
    void anOverrideWithoutAReasonIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> profile.override(override("insulation.practice", 2e6, " ")));
    }

    @Test
    void aShopsOwnProfileGetsWhatALaterVersionShips() {
        LimitProfile own = new LimitProfile(1, "ours", List.of(override("core.hot-spot", 5, "thin steel")), null);
        LimitProfile laid = own.laidOn(profile);
        assertEquals(profile.limits().size(), laid.limits().size());
        assertEquals(5, laid.find("core.hot-spot").orElseThrow().lower());
        assertEquals(10, laid.find("core.hot-spot").orElseThrow().original().upper());
        assertEquals(laid, laid.laidOn(profile));
    }

    @Test
    void theProfileSurvivesARoundTrip() throws Exception {
        LimitProfile changed = profile.override(override("core.hot-spot", 5, "thin steel"));
        assertEquals(changed, json.read(PartKey.of(PartKind.LIMITS), json.write(changed)));
    }

    private static Limit override(String id, double lower, String why) {
        return new Limit(id, "ours", lower, null, "ohm", null, "here", "our own rule", null, Limit.Standing.WORKSHOP,
                true, null, null, why, null);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"at least 2 * U + 1000 | 1800", "at most max(1500, 10 * U) | 4000",
        "AT LEAST (U - 100) / 3 | 100", "at least min(U, 100) | 100", "at most -U + 1e3 | 600", "at least 1.5 | 1.5"})
    void formulasAreComputed(String text, double value) {
        assertEquals(value, Formula.parse(text).value(Map.of("U", 400.0)), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"at least", "at least 2 *", "at least (2", "at least 2 3", "at least max(1)",
        "at most U / 0", "at least 2 ** 3"})
    void brokenFormulasAreRefusedInWords(String text) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class,
                () -> Formula.parse(text).value(Map.of("U", 1.0)));
        assertTrue(e.getMessage().startsWith("the formula"), e.getMessage());
    }

    @Test
    void aFormulaNamesTheQuantityItLacks() {
        Formula.UnknownQuantity e = assertThrows(Formula.UnknownQuantity.class,
                () -> Formula.parse("at least 10 * U").value(Map.of()));
        assertEquals("U", e.quantity());
        assertThrows(IllegalArgumentException.class, () -> Formula.parse("about 10"));
    }
}
