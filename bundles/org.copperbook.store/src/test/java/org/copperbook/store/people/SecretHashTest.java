package org.copperbook.store.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class SecretHashTest {

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** RFC 7914, section 11: test vectors for PBKDF2 with HMAC-SHA-256, of which these are the first 32 octets. */
    @Test
    void itIsThePbkdf2OfTheRfc() {
        assertEquals("55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc",
                SecretHash.of("passwd".toCharArray(), 1, bytes("salt")).hash());
        assertEquals("4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56",
                SecretHash.of("Password".toCharArray(), 80_000, bytes("NaCl")).hash());
    }

    @Test
    void aNewHashHasItsOwnSaltAndAtLeastSixHundredThousandIterations() {
        SecretHash one = SecretHash.of("copper and lacquer".toCharArray());
        SecretHash two = SecretHash.of("copper and lacquer".toCharArray());
        assertNotEquals(one.salt(), two.salt());
        assertNotEquals(one.hash(), two.hash());
        assertEquals(32, one.salt().length());
        assertTrue(one.iterations() >= 600_000);
        assertFalse(one.outdated());
        assertTrue(one.matches("copper and lacquer".toCharArray()));
        assertFalse(one.matches("copper and lacquers".toCharArray()));
        assertFalse(one.toString().contains(one.hash()) || one.toString().contains(one.salt()));
    }

    @Test
    void aHashOfFewerIterationsStillMatchesAndIsOutdated() {
        SecretHash old = SecretHash.of("größe 1,6 Ω".toCharArray(), 10, bytes("NaCl"));
        assertTrue(old.matches("größe 1,6 Ω".toCharArray()));
        assertTrue(old.outdated());
    }
}
