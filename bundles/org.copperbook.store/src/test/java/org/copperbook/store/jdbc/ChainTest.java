package org.copperbook.store.jdbc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ChainTest {

    /** NIST, FIPS 180-4 example values: SHA-256 of "abc". */
    @Test
    void bytesHashAsTheStandardSays() {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                Chain.hash("abc".getBytes(StandardCharsets.US_ASCII)));
    }

    @Test
    void fieldsDoNotRunTogether() {
        assertNotEquals(Chain.hash(Chain.START, "ab", "c", "p", 1, "t", "w", "y", "j"),
                Chain.hash(Chain.START, "a", "bc", "p", 1, "t", "w", "y", "j"));
        assertNotEquals(Chain.hash(Chain.START, "a", "b", "p", 1, "t", "w", "", "yj"),
                Chain.hash(Chain.START, "a", "b", "p", 1, "t", "w", "y", "j"));
    }
}
