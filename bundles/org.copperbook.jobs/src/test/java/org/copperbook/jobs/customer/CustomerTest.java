package org.copperbook.jobs.customer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.json.PersonalFields;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A customer as a record. Expected: the tests' own inputs. */
class CustomerTest {

    private static final Customer ICE = new Customer(1, "Harbour Ice", "Quay 7\n20457 Otter", "1", "a@b.example",
            List.of(new Contact("Ada", "2", "c@d.example"), new Contact("Bo", "", "")), "DE1", "de", "EUR", "30 days",
            "note", true, "other", Map.of());

    @Test
    void whatIsWrittenIsReadBack() throws Exception {
        PartJson json = new PartJson();
        assertEquals(ICE, json.read(Customer.key("k"), json.write(ICE)));
        String newer = "{\"schema\":1,\"name\":\"x\",\"colour\":\"red\"}";
        assertEquals(newer, json.write(json.read(Customer.key("k"), newer)));
    }

    @ParameterizedTest
    @CsvSource({"Ada,1,a@b", "Ada,'',a@b", "'',1,''", "Ada,'',''", "'A\tB',' 1 ','x\ny'"})
    void aContactIsOneTextAndComesBack(String name, String phone, String mail) {
        Contact c = new Contact(name, phone, mail);
        assertEquals(c, Contact.parse(c.text()));
        assertFalse(c.name().contains("\t"));
    }

    @Test
    void contactsThatSayNothingAreLeftOut() {
        assertEquals(List.of(), new Customer(1, "x", null, null, null, List.of(new Contact(" ", null, "")), null, null,
                null, null, null, null, null, Map.of()).contacts());
    }

    @Test
    void everyTextOfACustomerThatIsNoTermIsPersonal() {
        TreeSet<String> seen = new TreeSet<>();
        PersonalFields.replace(PartKind.CUSTOMER, new PartJson().tree(ICE), text -> {
            seen.add(text);
            return text;
        });
        assertEquals(new TreeSet<>(List.of("Harbour Ice", "Quay 7\n20457 Otter", "1", "a@b.example",
                "Ada\t2\tc@d.example", "Bo", "DE1", "note")), seen);
    }

    @Test
    void whoIsOutOfUseOrMergedIsNotOffered() {
        assertTrue(Customer.named("x").offered());
        assertFalse(Customer.named("x").into("y").offered());
        assertTrue(Customer.named("x").into("y").into(null).offered());
        assertFalse(ICE.into(null).offered());
    }
}
