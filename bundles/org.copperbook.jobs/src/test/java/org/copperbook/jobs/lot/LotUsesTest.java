package org.copperbook.jobs.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LotUsesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2026-18 | 2026-18 | true", "2026-18 | 18 | false", " k7 / A9 | a9 | true",
        "K7, A9 | K7, A9 | true", "date code 2618 | 2618 | true", "2026-18 | '' | false"})
    void aFieldNamesALotAsAWhole(String field, String lot, boolean named) {
        assertEquals(named, LotText.names(field, lot));
    }

    private static List<LotUse> uses(String key, String part, String lot) throws BadRecordException {
        PartKey k = PartKey.parse(key);
        return LotUses.in("j", "2026-0001", k, new PartJson().read(k, part.replace('\'', '"')), lot);
    }

    @Test
    void aSetAndSinglePositionsAreFound() throws BadRecordException {
        LotUse set = uses("rectifier", "{'schema':1,'fitted':{'makersPart':'SD-40','lot':'B2'}}", "b2").get(0);
        assertEquals(List.of(), set.positions());
        assertEquals("SD-40", set.makersPart());
        LotUse one = uses("rectifier", "{'schema':1,'positions':[{'position':'D1','lot':'X9'},{'position':'D2'}],"
                + "'fitted':{'lot':'B2'}}", "X9").get(0);
        assertEquals(List.of("D1"), one.positions());
        assertEquals("X9", one.lot());
    }

    @Test
    void resinIsFoundByItsLotToo() throws BadRecordException {
        assertEquals("Clear", uses("impregnation", "{'schema':1,'treatments':[{'resin':'Clear','lot':'R1'},{'lot':'R2'}]}",
                "R1").get(0).makersPart());
        assertEquals(List.of(), uses("booking", "{'schema':1,'customer':'R1'}", "R1"));
    }
}
