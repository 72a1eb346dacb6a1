package org.copperbook.jobs.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What differs between two revisions. Expected: the test's own inputs. */
class FieldChangeTest {

    private static JsonNode json(String text) throws Exception {
        return new ObjectMapper().readTree(text.replace('\'', '"'));
    }

    private static List<FieldChange> between(String before, String after) throws Exception {
        return FieldChange.between(json(before), json(after));
    }

    @Test
    void aFieldIsNamedWithBothValues() throws Exception {
        assertEquals(List.of(new FieldChange(List.of("a"), "1", "2"), new FieldChange(List.of("b"), "x", ""),
                new FieldChange(List.of("c"), "", "true")), between("{'a':1,'b':'x','d':0}", "{'a':2,'d':0,'c':true}"));
        assertEquals(List.of(), between("{'a':[1,{'b':2}]}", "{'a':[1,{'b':2}]}"));
    }

    @Test
    void aRowPutInBeforeOthersChangesNoneOfThem() throws Exception {
        assertEquals(List.of(new FieldChange(List.of("list", "A"), "", "A, 7"),
                        new FieldChange(List.of("list", "B", "v"), "1", "2")).stream().map(FieldChange::path).sorted(
                                (x, y) -> x.toString().compareTo(y.toString())).toList(),
                between("{'list':[{'id':'B','v':1},{'id':'C','v':1}]}",
                        "{'list':[{'id':'A','v':7},{'id':'B','v':2},{'id':'C','v':1}]}").stream().map(FieldChange::path)
                        .sorted((x, y) -> x.toString().compareTo(y.toString())).toList());
    }

    @Test
    void ratesOfOneTradeAreToldApartByTheirFirstDay() throws Exception {
        assertEquals(List.of(new FieldChange(List.of("rates", "winder, 2026-01-01", "perHour"), "60", "61")), between(
                "{'rates':[{'trade':'winder','perHour':50},{'trade':'winder','perHour':60,'validFrom':'2026-01-01'}]}",
                "{'rates':[{'trade':'winder','perHour':50},{'trade':'winder','perHour':61,'validFrom':'2026-01-01'}]}"));
    }

    @Test
    void rowsWithoutANameGoByTheirPlaceOrAsAWhole() throws Exception {
        assertEquals(List.of(new FieldChange(List.of("l", "2"), "b", "c")), between("{'l':['a','b']}", "{'l':['a','c']}"));
        assertEquals(List.of(new FieldChange(List.of("l"), "a; b", "a")), between("{'l':['a','b']}", "{'l':['a']}"));
    }
}
