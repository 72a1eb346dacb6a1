package org.copperbook.jobs.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProvisionalTagTest {

    private static final String KEY = "0b7c91d2-55aa-4e21-9c40-1234567890af";

    @Test
    void itsCodeLeadsBackToTheJob() {
        ProvisionalTag tag = new ProvisionalTag(KEY);
        String scanned = JobCode.number(JobCode.of(tag.inCode())).orElseThrow();
        assertEquals("T-0B7C91D255AA4E219C401234567890AF", scanned);
        assertEquals(KEY, ProvisionalTag.read(scanned).orElseThrow().jobId());
    }

    @Test
    void peopleCallItByTheEndOfTheKey() {
        assertEquals("T-90AF", new ProvisionalTag(KEY).name());
    }

    @Test
    void aJobNumberIsNoProvisionalTag() {
        assertEquals(Optional.empty(), ProvisionalTag.read("2026-0001"));
        assertEquals(Optional.empty(), ProvisionalTag.read("T-126"));
        assertEquals(Optional.empty(), ProvisionalTag.read(null));
    }

    @Test
    void aKeyThatIsNoneIsRefused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new ProvisionalTag("2026-0001"))
                .getMessage().contains("2026-0001"));
    }
}
