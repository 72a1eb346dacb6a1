package org.copperbook.desk.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.copperbook.jobs.booking.JobCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys with times that the tests make up: what a field gets of them, and which numbers were scanned. */
class CodeKeysTest {

    private final CodeKeys keys = new CodeKeys();
    private final StringBuilder field = new StringBuilder();
    private final List<String> scanned = new ArrayList<>();
    private int now = Integer.MAX_VALUE - 40;

    private void key(char c, int after) {
        now += after;
        CodeKeys.Answer a = keys.key(c, now);
        if (a instanceof CodeKeys.Answer.Scanned s) {
            scanned.add(s.number());
        } else if (a instanceof CodeKeys.Answer.Held h) {
            field.append(h.letGo());
        } else if (a instanceof CodeKeys.Answer.Typed t) {
            field.append(t.letGo()).append(c);
        }
    }

    private void keys(String text, int gap) {
        text.chars().forEach(c -> key((char) c, gap));
    }

    private String field() {
        return field + keys.letGo();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5, 16, 28})
    void aScannedCodeLeavesNothingInTheField(int gap) {
        keys("burnt at ", 90);
        keys(JobCode.of("2026-0004") + "\r", gap);
        keys(" both ends", 90);
        assertEquals(List.of("2026-0004"), scanned);
        assertEquals("burnt at  both ends", field());
    }

    @ParameterizedTest
    @ValueSource(ints = {45, 60, 91, 200})
    void whatAPersonTypesStaysAlsoWhenItLooksLikeACode(int gap) {
        String text = "CPBJOB2026-0004\rCCCPBJO CPBJOB\rcpbjobx\r";
        keys(text, gap);
        assertEquals(List.of(), scanned);
        assertEquals(text, field());
    }

    @Test
    void aCodeRightAfterAPersonsCapitalIsReadAndTheCapitalStays() {
        keys("C", 80);
        keys(JobCode.of("7") + "\r", 3);
        assertEquals(List.of("7"), scanned);
        assertEquals("C", field());
    }

    @Test
    void twoCodesOneAfterTheOtherAreBothRead() {
        keys(JobCode.of("2026-0001") + "\r" + JobCode.of("A/17 b") + "\r", 4);
        assertEquals(List.of("2026-0001", "A/17 b"), scanned);
        assertEquals("", field());
    }

    /** Limits of the class's own: 90 ms once is a hiccup, at every key it is a person. */
    @Test
    void aHiccupOfTheMachineDoesNotSpoilACode() {
        keys("CPBJ", 4);
        key('O', 90);
        keys("B2026-0004\r", 4);
        assertEquals(List.of("2026-0004"), scanned);
        assertEquals("", field());
    }

    @Test
    void theCapsLockDoesNotSpoilACode() {
        keys("cpbjobl-000123\r", 4);
        assertEquals(List.of("L-000123"), scanned);
    }

    @Test
    void otherCodesGoIntoTheFieldAsTheyAre() {
        keys("4006381333931\r", 4);
        keys("CPB12\r", 4);
        keys("CPBJOB\r", 4);
        assertEquals(List.of(), scanned);
        assertEquals("4006381333931\rCPB12\rCPBJOB\r", field());
    }

    @Test
    void aCodeBrokenOffIsLetGoWhole() {
        keys("CPBJOB20", 4);
        key('2', 100);
        assertEquals("CPBJOB202", field());
        assertTrue(keys.isEmpty());
    }

    @Test
    void noCharacterIsEverLostOrMovedWhateverTheTimes() {
        Random random = new Random(12);
        for (int round = 0; round < 3_000; round++) {
            field.setLength(0);
            scanned.clear();
            StringBuilder typed = new StringBuilder();
            for (int i = random.nextInt(30); i > 0; i--) {
                String bit = List.of("C", "CPB", "CPBJOB", "c", "2026-1", "x", "\r", "CPBJOB9\r").get(random.nextInt(8));
                typed.append(bit);
                int gap = List.of(0, 3, 30, 45, 90, 91).get(random.nextInt(6));
                keys(bit, gap);
            }
            StringBuilder rest = new StringBuilder(field());
            // What is not in the field is whole codes and nothing else.
            int lacking = typed.length() - rest.length();
            assertEquals(lacking, scanned.stream().mapToInt(n -> JobCode.of(n).length() + 1).sum(), typed.toString());
            assertTrue(isWithin(rest.toString(), typed.toString()), typed + " gave " + rest);
        }
    }

    /** Whether a text can be had from another by leaving characters out. */
    private static boolean isWithin(String part, String whole) {
        int at = 0;
        for (char c : whole.toCharArray()) {
            if (at < part.length() && part.charAt(at) == c) {
                at++;
            }
        }
        return at == part.length();
    }
}
