package org.copperbook.jobs.customer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.copperbook.jobs.customer.BookedFor.Claim;
import org.junit.jupiter.api.Test;

/** Whose a booking is. Expected: the tests' own inputs. */
class BookedForTest {

    private static final Map<String, Customer> SHOP = Map.of(
            "north", Customer.named("Mill"),
            "south", Customer.named("MILL "),
            "quay", Customer.named("Quayside Cold Store"));

    @Test
    void ofTwoCustomersOfOneNameEachHasTheBookingsTiedToIt() {
        BookedFor north = new BookedFor(SHOP, "north", List.of());
        assertEquals(Claim.TIED, north.claim("north", "Mill"));
        assertEquals(Claim.NONE, north.claim("south", "Mill"));
        assertEquals(Claim.TIED, new BookedFor(SHOP, "south", List.of()).claim("south", "Mill"));
    }

    @Test
    void aBookingTiedToNobodyIsSharedByAllWhoBearItsName() {
        assertEquals(Claim.BY_SHARED_NAME, new BookedFor(SHOP, "north", List.of()).claim(null, " mill"));
        assertEquals(Claim.BY_SHARED_NAME, new BookedFor(SHOP, "south", List.of()).claim(null, "Mill"));
        assertEquals(Claim.BY_NAME, new BookedFor(SHOP, "quay", List.of()).claim(null, "quayside cold store"));
        assertEquals(Claim.NONE, new BookedFor(SHOP, "quay", List.of()).claim(null, "Mill"));
        assertEquals(Claim.NONE, new BookedFor(SHOP, "quay", List.of()).claim(null, null));
    }

    @Test
    void aKeyOfNobodyWhoIsHereCountsAsNone() {
        assertEquals(Claim.BY_NAME, new BookedFor(SHOP, "quay", List.of()).claim("elsewhere", "Quayside Cold Store"));
    }

    @Test
    void aNameOfThePastCountsAndIsSharedWithWhoBearsItToday() {
        BookedFor quay = new BookedFor(SHOP, "quay", List.of("Ice House", "Mill", " "));
        assertEquals(Set.of("Quayside Cold Store", "Ice House", "Mill"), quay.names());
        assertEquals(Claim.BY_NAME, quay.claim(null, "Ice House"));
        assertEquals(Claim.BY_SHARED_NAME, quay.claim(null, "Mill"));
        assertEquals(Claim.TIED, quay.claim("quay", "Mill"), "it was named so when the machine came");
    }

    @Test
    void whoWereMergedShareTheirBookingsUntilThatIsUndone() {
        Map<String, Customer> merged = Map.of("north", Customer.named("Mill"), "south", Customer.named("Mill").into("north"));
        for (String key : merged.keySet()) {
            BookedFor one = new BookedFor(merged, key, List.of());
            assertEquals(Claim.TIED, one.claim("south", "Mill"));
            assertEquals(Claim.TIED, one.claim("north", "Mill"));
            assertEquals(Claim.BY_NAME, one.claim(null, "Mill"), "nobody else bears the name");
        }
        Map<String, Customer> apart = Map.of("north", Customer.named("Mill"), "south", Customer.named("Mill"));
        assertEquals(Claim.NONE, new BookedFor(apart, "north", List.of()).claim("south", "Mill"));
        assertEquals(Claim.BY_SHARED_NAME, new BookedFor(apart, "north", List.of()).claim(null, "Mill"));
    }
}
