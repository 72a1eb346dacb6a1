package org.copperbook.jobs.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartJsonTest {

    private final PartJson json = new PartJson();

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "booking | {'schema':2,'customer':'Harbour Ice','bookedAt':'2026-03-02T08:15:00Z','spendLimit':1200.50,"
            + "'parts':[{'name':'fan','received':true,'colour':'grey'}],'shelf':{'row':4,'bay':'C'}}",
        "winding/main-stator | {'schema':1,'role':'main-stator','asWound':false,'slots':48,"
            + "'groups':[{'number':1,'phase':'U','coils':[{'goSlot':1,'returnSlot':11,'turns':5,'tape':'glass'}]}]}",
        "stock-item/w-1.00 | {'schema':1,'code':'W-1.00','kind':'WIRE','name':'Wire','size':'1.00 mm','grade':2,'unit':'KG',"
            + "'onHand':9.5,'reserved':{'j1':2.25},'movement':{'id':'m1','kind':'RESERVE','quantity':2.25,'unit':'KG',"
            + "'job':'j1','at':'2026-03-02T08:15:00Z','scale':'B'},'bin':{'row':4}}",
        "hours | {'schema':1,'entries':[{'who':'p1','trade':'winder','date':'2026-03-02','hours':1.50,'shift':'late'}],"
            + "'running':[{'who':'p1','trade':'winder','since':'2026-03-02T08:15:00Z','x':1}],'y':2}",
        "inspection | {'schema':1,'readings':[{'id':'r1','quantity':'RESISTANCE','place':{'winding':'main-stator',"
            + "'kind':'TERMINAL_PAIR','mark':'U-V'},'observed':{'kind':'ABOVE_RANGE'},'probe':'long'}]}"})
    void everyFieldOfANewerVersionSurvivesARoundTrip(String key, String text) throws Exception {
        String original = text.replace('\'', '"');
        PartKey k = PartKey.parse(key);
        Part part = json.read(k, original);
        ObjectMapper plain = new ObjectMapper();
        assertEquals(plain.readTree(original), plain.readTree(json.write(part)));
        assertEquals(part, json.read(k, json.write(part)));
        assertEquals(part, json.readKept(k, original));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "", "[]", "null", "{\"schema\":1", "{\"schema\":1}x", "{\"schema\":0}", "{}",
        "{\"schema\":1,\"schema\":1}"})
    void brokenTextIsRefusedWithThePartNamed(String text) {
        BadRecordException e = assertThrows(BadRecordException.class, () -> json.read(PartKey.parse("booking"), text));
        assertTrue(e.getMessage().startsWith("booking"), e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "", "[]", "null", "{\"schema\":1", "{\"schema\":1}x", "{\"schema\":0}", "{}",
        "{\"schema\":1,\"spendLimit\":1e999999999}"})
    void keptTextThatIsBrokenIsRefusedInTheSameWords(String text) {
        PartKey key = PartKey.parse("booking");
        assertEquals(assertThrows(BadRecordException.class, () -> json.read(key, text)).getMessage(),
                assertThrows(BadRecordException.class, () -> json.readKept(key, text)).getMessage());
    }

    @Test
    void aWrongTypeIsRefusedWithItsPlace() {
        BadRecordException e = assertThrows(BadRecordException.class, () -> json.read(PartKey.parse("nameplate"),
                "{\"schema\":1,\"otherRatings\":[{\"voltageV\":400},{\"voltageV\":\"about 400\"}]}"));
        assertEquals("otherRatings[1].voltageV", e.place());
        assertTrue(!e.getMessage().contains("java.lang"), e.getMessage());
    }

    @Test
    void numbersThatAreNotNumbersAreRefused() {
        assertThrows(BadRecordException.class,
                () -> json.read(PartKey.parse("nameplate"), "{\"schema\":1,\"voltageV\":NaN}"));
        assertThrows(BadRecordException.class, () -> json.read(PartKey.parse("inspection"),
                "{\"schema\":1,\"readings\":[{\"id\":\"a\",\"observed\":{\"kind\":\"VALUE\",\"value\":1e999}}]}"));
    }

    @Test
    void aJobFileComesBackAsItWas() throws Exception {
        JobFile files = new JobFile(json);
        String text = "{\"copperbookJob\":1,\"id\":\"7b\",\"number\":\"2026-0001\",\"parts\":{"
                + "\"quote/1\":{\"schema\":1,\"revision\":1,\"currency\":\"EUR\"},\"booking\":{\"schema\":1}}}";
        Job job = files.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        Job again = files.read(new ByteArrayInputStream(files.write(job).getBytes(StandardCharsets.UTF_8)));
        assertEquals(job, again);
        assertEquals("2026-0001", again.number());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"parts\":{}}", "{\"copperbookJob\":1}", "{\"copperbookJob\":1,\"parts\":{\"boat\":{}}}",
        "{\"copperbookJob\":1,\"parts\":{\"quote\":{\"schema\":1}}}",
        "{\"copperbookJob\":1,\"parts\":{\"wire-stock\":{\"schema\":1}}}"})
    void aFileThatIsNotAJobIsRefused(String text) {
        assertThrows(BadRecordException.class,
                () -> new JobFile(json).read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))));
    }
}
