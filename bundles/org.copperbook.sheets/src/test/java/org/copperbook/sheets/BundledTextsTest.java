package org.copperbook.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.booking.Booking;
import org.copperbook.jobs.booking.Hazard;
import org.copperbook.jobs.booking.MachineKind;
import org.copperbook.jobs.booking.Standing;
import org.copperbook.jobs.check.HoldPointState;
import org.copperbook.jobs.core.CoreTest;
import org.copperbook.jobs.impregnation.Impregnation;
import org.copperbook.jobs.inspection.BearingFit;
import org.copperbook.jobs.inspection.ChecklistItem;
import org.copperbook.jobs.inspection.ExcitationRun;
import org.copperbook.jobs.inspection.Finding;
import org.copperbook.jobs.inspection.Runout;
import org.copperbook.jobs.nameplate.Nameplate;
import org.copperbook.jobs.reading.Observed;
import org.copperbook.jobs.reading.Place;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.reading.ReadingQuantity;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.RectifierSet;
import org.copperbook.jobs.rectifier.Suppressor;
import org.copperbook.jobs.runup.RunPoint;
import org.copperbook.jobs.runup.RunUp;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.jobs.winding.WindingData;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.sheets.page.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BundledTextsTest {

    private static Properties load(String name) throws Exception {
        Properties p = new Properties();
        try (Reader in = new InputStreamReader(BundledTextsTest.class.getResourceAsStream(name + ".properties"),
                StandardCharsets.UTF_8)) {
            p.load(in);
        }
        return p;
    }

    @ParameterizedTest
    @ValueSource(strings = {"quote", "quote_de", "record"})
    void everyTextCanBeFilledAndHasNoStrayBlanks(String name) throws Exception {
        Properties texts = load(name);
        texts.forEach((key, value) -> {
            String text = (String) value;
            assertEquals(text.strip(), text, key + " has blanks at its ends");
            assertFalse(text.isEmpty(), key + " is empty");
            Object[] numbers = {1, 2, 3, 4};
            assertFalse(new MessageFormat(text, Locale.ENGLISH).format(numbers).contains("{"), key + " is not filled");
        });
    }

    @Test
    void bothLanguagesOfTheQuoteHaveTheSameTextsWithTheSameBlanks() throws Exception {
        Properties english = load("quote");
        Properties german = load("quote_de");
        assertEquals(english.stringPropertyNames(), german.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertEquals(blanks(english.getProperty(key)), blanks(german.getProperty(key)), key);
        }
    }

    @Test
    void everyMemberOfARecordsEnumerationsHasAWord() {
        Words words = new Words(JobRecordWorkbook.class, "record", Locale.ENGLISH);
        List<Class<? extends Enum<?>>> types = List.of(Outcome.class, HoldPoint.class, HoldPointState.State.class, Role.class,
                MachineKind.class, Booking.Priority.class, Hazard.class, Standing.WaitingFor.class, Standing.How.class,
                Nameplate.TerminalMarks.class, ChecklistItem.Condition.class, Finding.Severity.class,
                ExcitationRun.ExpectedFrom.class, ReadingQuantity.class, Place.Kind.class, Observed.Kind.class,
                Reading.Method.class, Reading.State.class, WindingRole.class, WindingData.CoilType.class,
                WindingData.Conductor.class, WindingData.Connection.class, RectifierSet.Circuit.class,
                DiodePosition.Plate.class, DiodePosition.BasePolarity.class, Suppressor.Kind.class, CoreTest.CorePlate.class,
                CoreTest.Stage.class, Impregnation.Method.class, RunPoint.Kind.class, RunPoint.Source.class, RunUp.End.class,
                BearingFit.Seat.class, Runout.Place.class,
                RunUp.Direction.class, RunUp.Mounting.class);
        for (Class<? extends Enum<?>> type : types) {
            for (Enum<?> member : type.getEnumConstants()) {
                assertFalse(words.of(member).isBlank(), member.toString());
            }
        }
    }

    private static String blanks(String text) {
        return Arrays.stream(text.replaceAll("[^{}0-9]", "").split("(?<=})")).sorted().toList().toString();
    }
}
