package org.copperbook.jobs.handback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.booking.Standing.How;
import org.copperbook.jobs.booking.Standing.WaitingFor;
import org.copperbook.jobs.check.HandingBack;
import org.copperbook.jobs.check.Stage;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What came is what goes back; the records are written here by hand. */
class HandingBackTest {

    private static final PartKey KEY = PartKey.of(PartKind.HAND_BACK);
    private static final String BOOKING = "{'schema':1,'machine':'pump set','parts':[{'name':'Fan','received':true},"
            + "{'name':'keys','received':false},{'name':'feet'}]}";
    private static final String ALL = "'items':[{'name':'pump set, cleaned','machine':true,'back':true},{'name':' fan','back':true}]";

    private static final String SAID = ",'unreleased':'the owner takes it as it is'";

    private final PartJson json = new PartJson();

    private HandingBack of(String fields) throws BadRecordException {
        PartKey booking = PartKey.of(PartKind.BOOKING);
        Job job = new Job("id", "2026-0001", Map.of(booking, json.read(booking, BOOKING.replace('\'', '"'))));
        return new HandingBack(fields == null ? job
                : job.with(KEY, json.read(KEY, ("{'schema':1," + fields + "}").replace('\'', '"'))));
    }

    @Test
    void theMachineAndWhatCameAreExpectedBack() throws BadRecordException {
        List<String> differences = of(null).differences();
        assertEquals(2, differences.size());
        assertTrue(differences.get(0).contains("pump set") && differences.get(1).contains("Fan"), differences.toString());
    }

    @Test
    void nothingDiffersWhenAllIsTicked() throws BadRecordException {
        assertEquals(List.of(), of(ALL).differences());
        assertEquals(Optional.empty(), of(ALL + SAID).refused(How.COLLECTED));
        assertEquals(Optional.empty(), of(ALL).refused(How.DECLINED));
    }

    @Test
    void whatGoesBackWithoutHavingComeIsADifference() throws BadRecordException {
        List<String> differences = of(ALL.replace("]", ",{'name':'keys','back':true}]")).differences();
        assertEquals(1, differences.size());
        assertTrue(differences.get(0).contains("keys"), differences.toString());
    }

    @Test
    void aDifferenceKeepsTheJobOpenUntilItIsExplained() throws BadRecordException {
        String one = "'items':[{'name':'pump set','machine':true,'back':true},{'name':'Fan','back':false}]";
        assertTrue(of(one + SAID).refused(How.COLLECTED).orElseThrow().contains("Fan"));
        assertTrue(of(one + ",'difference':' '").refused(How.DECLINED).isPresent());
        assertEquals(Optional.empty(), of(one + SAID + ",'difference':'replaced by a new one'").refused(How.COLLECTED));
    }

    @Test
    void aMachineThatWasNotReleasedIsNotHandedBackAsDoneUnlessSomebodySaysWhy() throws BadRecordException {
        assertTrue(of(ALL).refused(How.COLLECTED).orElseThrow().contains("not released"));
        assertTrue(of(ALL + ",'unreleased':' '").refused(How.COLLECTED).isPresent());
        assertEquals(Optional.empty(), of(ALL + SAID).refused(How.COLLECTED));
        assertEquals(Optional.of("the owner takes it as it is"), of(ALL + SAID).unreleased());
        assertEquals(Optional.empty(), of(ALL).refused(How.COLLECTED, "taken back for spares"));
        assertTrue(of(ALL).refused(How.COLLECTED, " ").isPresent());
        assertEquals(Optional.empty(), of(ALL).refused(How.DECLINED), "unrepaired needs no release");
    }

    @Test
    void aReleasedMachineGoesBackWithoutMoreWords() throws BadRecordException {
        PartKey booking = PartKey.of(PartKind.BOOKING);
        PartKey signs = PartKey.of(PartKind.SIGN_OFFS);
        Job job = new Job("id", "2026-0001", Map.of(booking, json.read(booking, "{\"schema\":1,\"machine\":\"pump set\"}"),
                KEY, json.read(KEY, ("{'schema':1,'items':[{'machine':true,'back':true}]}").replace('\'', '"')),
                signs, json.read(signs, ("{'schema':1,'signatures':[{'point':'RELEASE','by':'p05','role':'QUALITY_CHECKER',"
                        + "'at':'2026-05-04T09:00:00Z'}]}").replace('\'', '"'))));
        assertEquals(Stage.At.RELEASED, Stage.of(job).at(), "as the register says it");
        assertEquals(Optional.empty(), new HandingBack(job).refused(How.COLLECTED));
    }

    @Test
    void ofTwoPartsOfOneNameBothHaveToGoBack() throws BadRecordException {
        PartKey booking = PartKey.of(PartKind.BOOKING);
        String two = "{'schema':1,'machine':'pump set','parts':[{'name':'key','received':true},{'name':'Key','received':true}]}";
        String machine = "{'schema':1,'items':[{'machine':true,'back':true},{'name':'key','back':true}%s]}";
        for (String[] more : new String[][] {{"", "1"}, {",{'name':'key','back':false}", "1"}, {",{'name':'key','back':true}", "0"},
                {",{'name':'key','back':true},{'name':'key','back':true}", "1"}}) {
            Job job = new Job("id", "2026-0001", Map.of(booking, json.read(booking, two.replace('\'', '"')),
                    KEY, json.read(KEY, machine.formatted(more[0]).replace('\'', '"'))));
            assertEquals(Integer.parseInt(more[1]), new HandingBack(job).differences().size(), more[0]);
        }
    }

    @Test
    void nothingIsScrappedWithoutTheWholeConsent() throws BadRecordException {
        assertTrue(of(ALL).refused(How.SCRAPPED).isPresent());
        String consent = "'scrapping':{'consentBy':'K. Ames','how':'letter','at':'2026-05-04','copper':'credited'}";
        assertEquals(Optional.empty(), of(consent).refused(How.SCRAPPED));
        for (String without : List.of("'consentBy':'K. Ames',", "'how':'letter',", "'at':'2026-05-04',", ",'copper':'credited'")) {
            assertTrue(of(consent.replace(without, "")).refused(How.SCRAPPED).isPresent(), without);
        }
    }

    @Test
    void whatIsOutOrHasNotComeIsAReasonToWait() throws BadRecordException {
        List<HandingBack.Open> open = of("'outside':[{'what':'shaft','firm':'Grind & Co','out':'2026-05-01','expected':'2026-05-09'},"
                + "{'what':'rotor','out':'2026-05-01','back':'2026-05-03'},{'what':'later'}],"
                + "'deliveries':[{'what':'bearings','quantity':2,'came':1},{'what':'diodes','quantity':6,'came':6}]").open();
        assertEquals(List.of(new HandingBack.Open(WaitingFor.OUTSIDE_WORK, "shaft, Grind & Co, expected 2026-05-09"),
                new HandingBack.Open(WaitingFor.PARTS, "1 of bearings missing")), open);
    }

    @ParameterizedTest
    @EnumSource(names = {"COLLECTED", "DECLINED", "SCRAPPED"})
    void noJobEndsWhileSomethingOfItIsOut(How how) throws BadRecordException {
        assertTrue(of("'outside':[{'what':'shaft','out':'2026-05-01'}]," + ALL + ",'scrapping':{'consentBy':'K','how':'l',"
                + "'at':'2026-05-04','copper':'c'}").refused(how).orElseThrow().contains("shaft"));
    }

    @Test
    void aVoidJobNeedsNoHandingBack() throws BadRecordException {
        assertEquals(Optional.empty(), of(null).refused(How.CANCELLED));
        assertEquals(Optional.empty(), of(null).refused(How.MERGED));
    }

    @Test
    void theRecordKeepsWhatItDoesNotKnowAndComesBackTheSame() throws BadRecordException {
        String text = "{'schema':1,'outside':[{'what':'shaft','mark':7}],'takenBy':'K. Ames','later':true}".replace('\'', '"');
        var part = json.read(KEY, text);
        assertEquals(part, json.read(KEY, json.tree(part)));
        assertEquals(7, json.tree(part).at("/outside/0/mark").asInt());
        assertTrue(json.tree(part).at("/later").asBoolean());
    }
}
