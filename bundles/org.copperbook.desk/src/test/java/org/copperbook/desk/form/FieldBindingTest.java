package org.copperbook.desk.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.copperbook.desk.document.Change;
import org.copperbook.desk.document.JobDocument;
import org.copperbook.desk.entry.FieldUnit;
import org.copperbook.desk.entry.NumberEntry;
import org.copperbook.desk.entry.TextEntry;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.BadRecordException;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.nameplate.Nameplate;
import org.junit.jupiter.api.Test;

class FieldBindingTest {

    private static final PartKey PLATE = PartKey.of(PartKind.NAMEPLATE);

    private static final class Field implements FieldBinding.View {
        private String text = "";
        private Note note = new Note.None();

        @Override
        public String text() {
            return text;
        }

        @Override
        public void show(String shown) {
            text = shown;
        }

        @Override
        public void say(Note said) {
            note = said;
        }
    }

    private final Field field = new Field();
    private final JobDocument document = opened();
    private final FieldBinding volts =
            new FieldBinding(document, PLATE, "/voltageV", new NumberEntry(FieldUnit.VOLT), field);

    FieldBindingTest() {
        document.addListener(c -> {
            if (c.what() == Change.What.DRAFT) {
                volts.refresh();
            }
        });
        volts.refresh();
        volts.enter();
    }

    @Test
    void everyKeyThatMakesSenseIsInTheDraftAtOnce() {
        type("6");
        assertEquals(6.0, plate().voltageV());
        type("69");
        type("690");
        assertEquals(690.0, plate().voltageV());
        assertEquals("690", field.text, "the text stays as typed until the field is left");
    }

    @Test
    void leavingTheFieldWritesTheValueBackNormalised() {
        type("0,69 kV");
        assertTrue(volts.commit());
        assertEquals("690 V", field.text);
    }

    @Test
    void aWrongTextStaysAndIsExplainedOnlyWhenTheFieldIsLeft() {
        type("4oo V");
        assertInstanceOf(Note.None.class, field.note);
        assertFalse(volts.commit());
        assertInstanceOf(Note.Problem.class, field.note);
        assertEquals("4oo V", field.text);
        assertEquals(null, plate().voltageV());
    }

    @Test
    void escGoesBackToWhatStoodThereOnEntering() {
        type("4oo");
        volts.restore();
        assertEquals("400 V", field.text);
        assertEquals(400.0, plate().voltageV());
        assertInstanceOf(Note.None.class, field.note);
    }

    @Test
    void escKeepsAWrongTextThatStoodThereBefore() {
        type("4oo");
        volts.commit();
        volts.enter();
        type("500");
        volts.restore();
        assertEquals("4oo", field.text);
        assertInstanceOf(Note.Problem.class, field.note);
    }

    @Test
    void anAnswerToAQuestionIsTaken() {
        type(alienThousands());
        assertFalse(volts.commit());
        Note.Question q = assertInstanceOf(Note.Question.class, field.note);
        volts.answer(q.answers().stream().filter(a -> a.node().doubleValue() == 1234).findFirst().orElseThrow());
        assertEquals(1234.0, plate().voltageV());
        assertInstanceOf(Note.None.class, field.note);
    }

    @Test
    void undoShowsTheFieldAsItWas() {
        type("690");
        volts.commit();
        document.undo(PLATE);
        assertEquals("400 V", field.text);
    }

    @Test
    void clearingTheFieldTakesTheValueOut() {
        type("");
        assertTrue(volts.commit());
        assertEquals(null, plate().voltageV());
    }

    /** The mark that is not this locale's decimal mark before three digits can mean thousands or a fraction. */
    private static String alienThousands() {
        char own = java.text.DecimalFormatSymbols.getInstance().getDecimalSeparator();
        return own == ',' ? "1.234" : "1,234";
    }

    private void type(String text) {
        field.text = text;
        volts.typed();
    }

    private Nameplate plate() {
        return document.part(PLATE, Nameplate.class).orElseThrow();
    }

    private static JobDocument opened() {
        PartJson json = new PartJson();
        try {
            return new JobDocument(new Job("id", "1", Map.of(PLATE,
                    json.read(PLATE, "{\"schema\":1,\"maker\":\"A\",\"voltageV\":400.0}"))), Map.of(), json);
        } catch (BadRecordException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whatHangsOnATextGoesWithAnotherTextInOneStepAndComesBackWithUndoOrEsc() {
        document.change(PLATE, "/maker", t -> t.put("maker", "Alder").put("type", "A7"));
        Field makerField = new Field();
        FieldBinding maker = new FieldBinding(document, PLATE, "/maker", new TextEntry(), makerField).takesOff("/type");
        maker.refresh();
        maker.enter();
        assertTrue(maker.commit(), "left as it was");
        assertEquals("A7", plate().type());
        for (String text : new String[] {"B", "Bi", "Birch"}) {
            makerField.text = text;
            maker.typed();
        }
        maker.commit();
        assertNull(plate().type());
        document.undo(PLATE);
        assertEquals("Alder", plate().maker());
        assertEquals("A7", plate().type());
        maker.refresh();
        maker.enter();
        makerField.text = "";
        maker.typed();
        assertNull(plate().type(), "nothing typed is another text too");
        maker.restore();
        assertEquals("A7", plate().type());
        assertEquals("Alder", makerField.text);
    }
}
