package org.copperbook.jobs.rights;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of rights against one written down here by hand, role by role. Common practice, no source. */
class RightsTest {

    /** A column each: foreman, winder, tester, quality checker, office, owner. */
    private static final List<Role> COLUMNS = List.of(Role.FOREMAN, Role.WINDER, Role.TESTER, Role.QUALITY_CHECKER,
            Role.OFFICE, Role.OWNER);

    private static final String TABLE = """
            BOOK_IN           x . . . x x
            COPY_NAMEPLATE    x x x x x x
            QUOTE             x . . . x x
            WORK_AT_BENCH     x x x x . x
            TEST              x . x x . x
            SIGN              x x x x . x
            ISSUE_COPIES      x x x x x x
            BOOK_HOURS        x x x x x x
            KEEP_INSTRUMENTS  x . x x . x
            KEEP_WIRE_STOCK   x x . . x x
            ISSUE_STOCK       x x x . x x
            KEEP_STOCK        x . . . x x
            KEEP_CAPACITIES   x . . . x x
            KEEP_LABOUR_RATES . . . . x x
            KEEP_QUOTE_TEMPLATE . . . . x x
            SET_LIMITS        . . . x . x
            SET_UP_WORKSHOP   . . . . . x
            TAKE_IN_JOBS      x . . . . x
            TAKE_IN_CARDS     x x . . x x
            KEEP_CONTACTS     x . . . x x
            KEEP_PEOPLE       . . . . . x
            ERASE             . . . . . x
            """;

    private static Person person(boolean active, Role... roles) {
        return new Person("p", "Ada", Set.of(roles), null, null, active);
    }

    @ParameterizedTest
    @EnumSource(Right.class)
    void eachRoleHasTheRightsOfTheTableAndNoOthers(Right right) {
        String[] row = TABLE.lines().map(l -> l.split(" +")).filter(l -> l[0].equals(right.name())).findFirst()
                .orElseThrow(() -> new AssertionError(right + " is not in the test's own table"));
        assertEquals(Role.values().length, COLUMNS.size());
        for (int i = 0; i < COLUMNS.size(); i++) {
            boolean may = row[i + 1].equals("x");
            Person p = person(true, COLUMNS.get(i));
            assertEquals(may, Rights.has(p, right), right + " of " + COLUMNS.get(i));
            assertEquals(may, Rights.refusal(p, right).isEmpty());
        }
    }

    @ParameterizedTest
    @EnumSource(Right.class)
    void whoHasLeftOrHasNoRoleMayNothing(Right right) {
        assertFalse(Rights.has(person(false, Role.values()), right));
        assertFalse(Rights.has(person(true), right));
        assertTrue(Rights.refusal(person(false, Role.values()), right).orElseThrow().contains("no longer works here"));
    }

    @Test
    void aPersonHasTheRightsOfEveryRole() {
        assertTrue(Rights.has(person(true, Role.WINDER, Role.OFFICE), Right.QUOTE));
        assertTrue(Rights.has(person(true, Role.WINDER, Role.OFFICE), Right.WORK_AT_BENCH));
    }

    @Test
    void aRefusalSaysWhatAndWhoMay() {
        assertEquals("Ada may not quote. Nothing was changed. Who may: foreman, office, owner.",
                Rights.refusal(person(true, Role.WINDER), Right.QUOTE).orElseThrow());
        assertTrue(Rights.signInFirst(Right.QUOTE).contains("foreman, office, owner"));
    }

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void savingAnyPartNeedsARight(PartKind kind) {
        assertNotNull(Right.toSave(kind));
    }

    @Test
    void everyRightIsInTheTestsTable() {
        assertEquals(Arrays.stream(Right.values()).map(Enum::name).collect(Collectors.toSet()),
                TABLE.lines().map(l -> l.split(" +")[0]).collect(Collectors.toSet()));
    }
}
