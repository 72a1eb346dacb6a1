package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.jobs.Job;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StageTest {

    private static final String BOOKED = "booking~{'schema':1}";
    private static final String QUOTE = "quote/1~{'schema':1,'revision':1";
    private static final String SENT = ",'sent':{'at':'2026-03-02T12:00:00Z','by':'p06'}";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        BOOKED + " | BOOKED_IN",
        BOOKED + "#inspection~{'schema':1} | BOOKED_IN",
        BOOKED + "#inspection~{'schema':1,'findings':[{'text':'burnt'}]} | INSPECTED",
        BOOKED + "#" + QUOTE + "} | QUOTE_BEGUN",
        BOOKED + "#inspection~{'schema':1,'findings':[{'text':'burnt'}]}#" + QUOTE + "} | QUOTE_BEGUN",
        BOOKED + "#" + QUOTE + SENT + "} | QUOTED",
        BOOKED + "#" + QUOTE + SENT + "}#quote/2~{'schema':1,'revision':1} | QUOTED",
        BOOKED + "#" + QUOTE + SENT + ",'approval':{'by':'station foreman'}} | QUOTED",
        BOOKED + "#quote/9~{'schema':1,'revision':1,'approval':{'agreed':false}}#quote/10~{'schema':1,'revision':1" + SENT + "} | QUOTED",
        BOOKED + "#quote/9~{'schema':1,'revision':1" + SENT + "}#quote/10~{'schema':1,'revision':1,'approval':{'agreed':false}} | DECLINED",
        BOOKED + "#" + QUOTE + ",'approval':{'agreed':false}} | DECLINED",
        BOOKED + "#" + QUOTE + ",'approval':{'by':'station foreman'}} | QUOTE_BEGUN",
        BOOKED + "#" + QUOTE + ",'approval':{'agreed':false}}#quote/2~{'schema':1,'revision':2,'approval':{'agreed':true}}"
            + " | AGREED",
        "core~{'schema':1,'burnOutHours':6} | STRIPPED",
        "winding/main-stator.as-wound~{'schema':1,'role':'main-stator','asWound':true} | WOUND",
        "impregnation~{'schema':1,'treatments':[{'resin':'x'}]} | IMPREGNATED",
        "run-up~{'schema':1,'points':[{'kind':'NO_LOAD'}]} | RUN_UP",
        BOOKED + "#standing~{'schema':1,'closure':{'reason':'sold'}} | BOOKED_IN",
        BOOKED + "#standing~{'schema':1,'closure':{'how':'COLLECTED'}} | COLLECTED",
        BOOKED + "#standing~{'schema':1,'closure':{'how':'DECLINED'}} | DECLINED_AND_RETURNED",
        BOOKED + "#standing~{'schema':1,'closure':{'how':'SCRAPPED'}} | SCRAPPED"})
    void theStageFollowsFromTheParts(String parts, Stage.At at) {
        Job job = Bench.job(parts.strip().split("[~#]"));
        assertEquals(at, Stage.of(job).at());
    }

    @Test
    void aVoidJobSaysWhy() {
        Job job = Bench.job("standing", "{'schema':1,'closure':{'how':'MERGED','reason':'booked twice','into':'2026-0007'}}");
        assertEquals("merged, number void: into 2026-0007: booked twice", Stage.of(job).words());
    }

    @Test
    void aWaitingJobSaysForWhatAndSinceWhen() {
        Job job = Bench.job("standing", "{'schema':1,'waiting':{'waitingFor':'PARTS','since':'2026-03-02T12:00:00Z',"
                + "'reason':'bearing on back order'}}");
        Stage stage = Stage.of(job);
        assertTrue(stage.waiting());
        assertEquals("booked in, waiting for parts since 2026-03-02: bearing on back order", stage.words());
    }

    @Test
    void aReopenedReleaseIsNoLongerReleased() {
        Job job = Bench.realInput();
        assertEquals(Stage.At.RELEASED, Stage.of(job).at());
        String signOffs = Bench.JSON.write(job.signOffs().orElseThrow());
        Job reopened = Bench.with(job, "sign-offs", signOffs.replace("\"cautions\"", "\"reopenings\":[{\"point\":\"RELEASE\","
                + "\"because\":\"came back hot\",\"at\":\"2026-03-22T08:00:00Z\",\"by\":\"checker-1\"}],\"cautions\"")
                .replace('"', '\''));
        assertEquals(Stage.At.RUN_UP, Stage.of(reopened).at());
    }
}
