package org.copperbook.jobs.inspection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;

class ChecklistTemplateTest {

    @Test
    void aLineIsAPointAndComesBackAsItWas() throws Exception {
        String text = "mechanical: bearings: change both bearings\nvisual: burns\nגוף: צבע";
        ChecklistTemplate t = ChecklistTemplate.of(text);
        assertEquals(List.of("bearings", "burns", "צבע"), t.points().stream().map(ChecklistTemplate.Point::point).toList());
        assertEquals("change both bearings", t.points().get(0).work());
        assertEquals(text, t.text());
    }

    @Test
    void theWorkMayHoldColonsAndBlankLinesArePassedOver() throws Exception {
        ChecklistTemplate t = ChecklistTemplate.of("a: b: clean: dry: test\r\n\r\n  c :d  ");
        assertEquals("clean: dry: test", t.points().get(0).work());
        assertEquals(new ChecklistTemplate.Point("c", "d", "", null), t.points().get(1));
    }

    @Test
    void linesThatAreNoPointAreNamedByTheirNumbers() {
        assertEquals(List.of(2, 3), assertThrows(ChecklistTemplate.BadLinesException.class,
                () -> ChecklistTemplate.of("a: b\nno point\n : x")).lines());
    }

    @Test
    void whatANewerVersionKeepsInItStaysWhereThePointDoes() throws Exception {
        PartKey key = PartKey.of(PartKind.CHECKLIST);
        ChecklistTemplate kept = (ChecklistTemplate) new PartJson().read(key, "{\"schema\":1,\"points\":["
                + "{\"area\":\"a\",\"point\":\"b\",\"icon\":7},{\"area\":\"a\",\"point\":\"gone\",\"icon\":8}],\"colour\":\"x\"}");
        ChecklistTemplate edited = ChecklistTemplate.of("a: new\na: b: work").madeFrom(kept);
        assertEquals("{\"schema\":1,\"points\":[{\"area\":\"a\",\"point\":\"new\"},"
                + "{\"area\":\"a\",\"point\":\"b\",\"work\":\"work\",\"icon\":7}],\"colour\":\"x\"}",
                new PartJson().write(edited));
    }
}
