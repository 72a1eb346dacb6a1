package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.Part;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlausibilityTest {

    private static Part part(String key, String text) throws BadRecordException {
        return new PartJson().read(PartKey.parse(key), text.replace('\'', '"'));
    }

    private static List<Plausibility.Problem> impossible(String key, String text) throws BadRecordException {
        return Plausibility.impossible(PartKey.parse(key), part(key, text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "nameplate | {'schema':1,'poles':7} | poles",
        "nameplate | {'schema':1,'poles':0} | poles",
        "nameplate | {'schema':1,'speedRpm':0} | speedRpm",
        "nameplate | {'schema':1,'powerFactor':1.2} | powerFactor",
        "nameplate | {'schema':1,'voltageV':1e300} | voltageV",
        "nameplate | {'schema':1,'ambientCelsius':-300} | ambientCelsius",
        "nameplate | {'schema':1,'otherRatings':[{},{'frequencyHz':-50}]} | otherRatings[1].frequencyHz",
        "inspection | {'schema':1,'readings':[{'id':'a','quantity':'RESISTANCE','observed':{'kind':'VALUE','value':-0.3}}]}"
            + " | readings[0].observed.value",
        "inspection | {'schema':1,'readings':[{'id':'a','quantity':'INSULATION_RESISTANCE','observed':{'kind':'VALUE','value':1e300}}]}"
            + " | readings[0].observed.value",
        "inspection | {'schema':1,'readings':[{'id':'a','quantity':'RESISTANCE','windingCelsius':-280}]}"
            + " | readings[0].windingCelsius",
        "inspection | {'schema':1,'excitationRuns':[{'lineVolts':{'b':{'kind':'VALUE','value':-4}}}]}"
            + " | excitationRuns[0].lineVolts.b.value",
        "winding/main-stator | {'schema':1,'role':'main-stator','asWound':false,'slots':-48} | slots",
        "winding/main-stator | {'schema':1,'role':'main-stator','asWound':false,'slots':36,'groups':[{'number':1,'coils':"
            + "[{'goSlot':1,'returnSlot':40,'turns':5}]}]} | groups[0].coils[0].returnSlot",
        "winding/main-stator | {'schema':1,'role':'main-stator','asWound':false,'slots':36,'groups':[{'number':1,'coils':"
            + "[{'goSlot':4,'returnSlot':4,'turns':5}]}]} | groups[0].coils[0]",
        "winding/main-stator | {'schema':1,'role':'main-stator','asWound':false,'counts':[{'ordinal':1,'groups':"
            + "[{'group':1,'turns':[5,-5]}]}]} | counts[0].groups[0].turns[1]",
        "winding/main-stator | {'schema':1,'role':'main-stator','asWound':false,'wire':[{'size':'1.25 mm','strands':2,"
            + "'bareMm':1.25,'coveredMm':1.2}]} | wire[0].coveredMm",
        "rectifier | {'schema':1,'positions':[{'position':'D1','torqueNm':-1}]} | positions[0].torqueNm",
        "core | {'schema':1,'runs':[{'fluxDensityT':40}]} | runs[0].fluxDensityT",
        "run-up | {'schema':1,'withstands':[{'volts':-1800}]} | withstands[0].volts",
        "booking | {'schema':1,'spendLimit':1e-50} | spendLimit",
        "quote/1 | {'schema':1,'revision':1,'alternatives':[{'lines':[{'quantity':1e50}]}]}"
            + " | alternatives[0].lines[0].quantity",
        "impregnation | {'schema':1,'drying':[{'minutes':-1}]} | drying[0].minutes"})
    void aFigureThatCannotBeIsNamedWithItsPlace(String key, String text, String place) throws Exception {
        List<Plausibility.Problem> found = impossible(key, text);
        assertEquals(1, found.size(), found.toString());
        assertEquals(place, found.get(0).place());
        assertTrue(!found.get(0).mend().isBlank());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "booking | {'schema':1,'spendLimit':1e-999999999} | spendLimit",
        "quote/1 | {'schema':1,'revision':1,'alternatives':[{'lines':[{'quantity':1e999999999}]}]}"
            + " | alternatives[0].lines[0].quantity"})
    void anExponentThatWouldExhaustTheMemoryIsRefusedWhenItIsRead(String key, String text, String place) {
        BadRecordException refused = assertThrows(BadRecordException.class, () -> part(key, text));
        assertTrue(refused.getMessage().contains(place), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "inspection | {'schema':1,'readings':[{'id':'a','quantity':'RESISTANCE','observed':{'kind':'ABOVE_RANGE'}}]}",
        "inspection | {'schema':1,'readings':[{'id':'a','quantity':'RESISTANCE','observed':{'kind':'VALUE','value':0}}]}",
        "inspection | {'schema':1,'readings':[{'id':'a','quantity':'VOLTAGE','observed':{'kind':'VALUE','value':-12.4}}]}",
        "nameplate | {'schema':1,'poles':4,'altitudeM':-20,'powerFactor':1,'ambientCelsius':-40}",
        "nameplate | {'schema':1,'shelf':{'poles':7,'speedRpm':-1}}"})
    void findingsAndFieldsOfANewerVersionAreLeftAlone(String key, String text) throws Exception {
        assertEquals(List.of(), impossible(key, text));
    }

    @Test
    void aResistanceWithoutATemperatureIsNamed() throws Exception {
        PartKey key = PartKey.parse("inspection");
        Job job = new Job("1", "2026-0001", Map.of(key, part("inspection", "{'schema':1,'readings':["
                + "{'id':'a','quantity':'RESISTANCE','windingCelsius':20,'place':{'winding':'main-stator','kind':'WHOLE'},"
                + "'observed':{'kind':'VALUE','value':1}},"
                + "{'id':'b','quantity':'RESISTANCE','place':{'winding':'main-stator','kind':'WHOLE'},"
                + "'observed':{'kind':'VALUE','value':1}},"
                + "{'id':'c','quantity':'RESISTANCE','place':{'kind':'SUPPRESSOR'},'observed':{'kind':'VALUE','value':1}},"
                + "{'id':'d','quantity':'RESISTANCE','place':{'winding':'main-stator','kind':'WHOLE'},"
                + "'observed':{'kind':'ABOVE_RANGE'}}]}")));
        assertEquals(List.of("readings[1].windingCelsius"),
                Plausibility.missingTemperatures(job).stream().map(Plausibility.Problem::place).toList());
        assertEquals(List.of(), Plausibility.impossible(job));
    }
}
