package org.copperbook.desk.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.copperbook.calc.quantity.DecimalMark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Unit factors used here: SI prefixes (SI brochure, 9th edition, table 7); 1 r/min = 1/60 per second (ISO 80000-3). */
class EntryTest {

    private final Clock clock = Clock.fixed(Instant.parse("2026-05-04T12:00:00Z"), ZoneOffset.UTC);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0,42 mohm|0.00042|0.42 mΩ", "0.42 m|0.00042|0.42 mΩ", "1.2k|1200|1.2 kΩ",
        "3|3|3 Ω", "0.5 kohm|500|500 Ω", "-1|-1|-1 Ω"})
    void aResistanceIsKeptInOhmAndEchoedWithItsPrefix(String typed, double ohm, String echo) {
        Typed.Understood u = understood(new NumberEntry(FieldUnit.OHM, DecimalMark.DOT), typed);
        assertEquals(ohm, u.node().doubleValue(), 0);
        assertEquals(echo, u.echo());
    }

    /** 1 hp is 550 foot pounds-force a second: 0.3048 m, 0.45359237 kg (both exact by definition), 9.80665 m/s2. */
    @Test
    void aConvertedPowerIsShownShortAndKeptWhole() {
        NumberEntry power = new NumberEntry(FieldUnit.WATT.typedIn("kW"), DecimalMark.DOT);
        Typed.Understood u = understood(power, "75 hp");
        assertEquals(75 * 550 * 0.3048 * 0.45359237 * 9.80665, u.node().doubleValue(), 1e-4);
        assertEquals("55.92749 kW", u.echo());
        assertEquals(u.echo(), power.show(u.node()));
        assertEquals("1.234567 kW", understood(power, "1.234567").echo(), "every digit of the finest meter is shown");
    }

    @Test
    void theDecimalMarkOfTheLocaleIsShown() {
        NumberEntry german = new NumberEntry(FieldUnit.OHM, DecimalMark.COMMA);
        assertEquals("0,42 mΩ", understood(german, "0.42 mohm").echo());
    }

    @Test
    void aSpeedStaysAWholeNumberOfTurnsAMinute() {
        NumberEntry rpm = new NumberEntry(FieldUnit.RPM, DecimalMark.DOT);
        for (int n = 1; n <= 3600; n++) {
            assertEquals(n, understood(rpm, Integer.toString(n)).node().doubleValue(), 0);
        }
        assertEquals("1500 r/min", understood(rpm, "25 r/s").echo());
    }

    @Test
    void aLengthTypedInMillimetresIsKeptInMetres() {
        Typed.Understood u = understood(new NumberEntry(FieldUnit.METRE_AS_MM, DecimalMark.DOT), "182,5");
        assertEquals(0.1825, u.node().doubleValue(), 0);
        assertEquals("182.5 mm", u.echo());
    }

    @Test
    void percentAndFractionAreNotMixedUp() {
        assertEquals(45.0, understood(new NumberEntry(FieldUnit.PERCENT, DecimalMark.DOT), "45").node().doubleValue(), 0);
        assertEquals(0.45, understood(new NumberEntry(FieldUnit.FRACTION_AS_PERCENT, DecimalMark.DOT), "45").node()
                .doubleValue(), 1e-15);
    }

    @Test
    void whatCanBeReadTwoWaysIsAskedAndNotGuessed() {
        Typed read = new NumberEntry(FieldUnit.OHM, DecimalMark.DOT).read("1,234");
        Typed.Ambiguous a = assertInstanceOf(Typed.Ambiguous.class, read);
        assertEquals(List.of(1.234, 1234.0), a.answers().stream().map(u -> u.node().doubleValue()).sorted().toList());
        assertTrue(a.question().contains("1,234"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"abc", "1.2.3", "5 V", "5 furlongs", "--1"})
    void aWrongResistanceSaysWhatIsWrong(String typed) {
        Typed.Wrong w = assertInstanceOf(Typed.Wrong.class, new NumberEntry(FieldUnit.OHM, DecimalMark.DOT).read(typed));
        assertTrue(w.why().length() > 10);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"OL|ABOVE_RANGE|", "o.l.|ABOVE_RANGE|", "> 2 G|ABOVE_RANGE|2e9",
        ">2Gohm|ABOVE_RANGE|2e9", "< 0.01|BELOW_RESOLUTION|0.01", "unstable|UNSTABLE|", "n/p|NOT_POSSIBLE|",
        "0.37|VALUE|0.37"})
    void anAnswerThatIsAFindingIsKeptAsOne(String typed, String kind, String value) {
        Typed.Understood u = understood(new ObservedEntry(new NumberEntry(FieldUnit.OHM, DecimalMark.DOT)), typed);
        assertEquals(kind, u.node().path("kind").asText());
        if (value == null) {
            assertTrue(u.node().path("value").isMissingNode());
        } else {
            assertEquals(Double.parseDouble(value), u.node().path("value").doubleValue(), 0);
        }
        assertEquals(u.node(), understood(new ObservedEntry(new NumberEntry(FieldUnit.OHM, DecimalMark.DOT)), u.echo())
                .node(), "what is written back reads the same again");
    }

    @Test
    void aPriceBelowZeroIsRefusedInWordsAndACreditIsNot() {
        DecimalEntry price = new DecimalEntry(DecimalMark.DOT, false);
        assertInstanceOf(Typed.Wrong.class, price.read("-1.50"));
        assertEquals("0.00", understood(price, "0.00").node().decimalValue().toPlainString());
        assertEquals("-2", understood(new DecimalEntry(DecimalMark.DOT, true), "-2").node().decimalValue().toPlainString());
    }

    @Test
    void moneyKeepsItsDigits() {
        DecimalEntry money = new DecimalEntry(DecimalMark.COMMA, true);
        Typed.Understood u = understood(money, "1.234,50");
        assertEquals("1234.50", u.node().decimalValue().toPlainString());
        assertEquals("1234,50", u.echo());
        assertEquals("0.10", understood(money, "0,10").node().decimalValue().toPlainString());
        assertInstanceOf(Typed.Wrong.class, money.read("12 EUR"));
    }

    @ParameterizedTest
    @CsvSource({"2026-09-18,2026-09-18", "18.09.2026,2026-09-18", "18.9.26,2026-09-18", "+14,2026-05-18"})
    void aDateIsReadTheIsoAndTheLocalWay(String typed, String iso) {
        assertEquals(iso, understood(new DateEntry(Locale.GERMANY, clock), typed).node().asText());
    }

    @Test
    void whoTypesAUnitThatDoesNotFitIsToldFirstTheOneThatTheFieldIsReadIn() {
        NumberEntry rating = new NumberEntry(FieldUnit.VOLT_AMPERE.typedIn("kVA"), DecimalMark.DOT);
        String said = assertInstanceOf(Typed.Wrong.class, rating.read("75 furlong")).why();
        assertTrue(said.contains("kVA, VA"), said);
    }

    @Test
    void aDateThatDoesNotExistIsWrong() {
        assertInstanceOf(Typed.Wrong.class, new DateEntry(Locale.GERMANY, clock).read("2026-02-30"));
        assertInstanceOf(Typed.Wrong.class, new DateEntry(Locale.GERMANY, clock).read("soon"));
    }

    @ParameterizedTest
    @CsvSource({"2026-05-04 14:30,2026-05-04T14:30:00Z", "14:30,2026-05-04T14:30:00Z", "now,2026-05-04T12:00:00Z",
        "2026-05-04,2026-05-04T00:00:00Z", "4.5.26 9:05,2026-05-04T09:05:00Z", "04.05.2026,2026-05-04T00:00:00Z",
        "2026-05-04T14:30,2026-05-04T14:30:00Z"})
    void aMomentIsKeptInUtc(String typed, String instant) {
        Typed.Understood u = understood(new MomentEntry(Locale.GERMANY, clock), typed);
        assertEquals(instant, u.node().asText());
    }

    @Test
    void aMomentIsShownTheLocalWayAndReadAgainAsItIsShown() {
        for (Locale locale : List.of(Locale.GERMANY, Locale.US, Locale.UK, Locale.JAPAN, Locale.ROOT, Locale.forLanguageTag("cs"))) {
            MomentEntry entry = new MomentEntry(locale, clock);
            String shown = entry.show(TextNode.valueOf("2026-05-04T14:30:00Z"));
            assertEquals("2026-05-04T14:30:00Z", understood(entry, shown).node().asText(), locale + ": " + shown);
        }
        assertEquals("04.05.2026 14:30", new MomentEntry(Locale.GERMANY, clock).show(TextNode.valueOf("2026-05-04T14:30:00Z")));
    }

    @Test
    void aChoiceIsMadeByItsBeginning() {
        ChoiceEntry c = ChoiceEntry.keys(() -> Map.of("m1", "multimeter", "m2", "micro-ohm bridge", "t", "torque wrench"));
        assertEquals(TextNode.valueOf("t"), understood(c, "tor").node());
        assertEquals(TextNode.valueOf("m1"), understood(c, "M1").node());
        assertInstanceOf(Typed.Ambiguous.class, c.read("m"));
        assertInstanceOf(Typed.Wrong.class, c.read("x"));
        assertEquals("", c.show(MissingNode.getInstance()));
        assertEquals(BooleanNode.TRUE, understood(ChoiceEntry.yesNo(), "y").node());
    }

    @Test
    void aQuestionIsAnsweredByYesAndNoByTheWordsOfItsListAndByTheirBeginnings() {
        ChoiceEntry came = ChoiceEntry.answer("received", "missing");
        for (String yes : List.of("y", "Yes", "received", "r", "rec")) {
            assertEquals(BooleanNode.TRUE, understood(came, yes).node(), yes);
            assertEquals("received", understood(came, yes).echo(), yes);
        }
        for (String no : List.of("n", "NO", "missing", "mis")) {
            assertEquals(BooleanNode.FALSE, understood(came, no).node(), no);
        }
        assertInstanceOf(Typed.Wrong.class, came.read("perhaps"));
    }

    @Test
    void proposalsTakeOtherTextsToo() {
        ChoiceEntry c = ChoiceEntry.proposals(() -> Map.of("m1", "multimeter"));
        assertEquals(TextNode.valueOf("borrowed bridge"), understood(c, "borrowed bridge").node());
    }

    @Test
    void aWholeNumberStaysInItsRange() {
        IntegerEntry phases = new IntegerEntry(1, 3);
        assertEquals(3, understood(phases, " 3 ").node().intValue());
        assertInstanceOf(Typed.Wrong.class, phases.read("4"));
        assertInstanceOf(Typed.Wrong.class, phases.read("2.5"));
        assertInstanceOf(Typed.Blank.class, phases.read(" "));
    }

    private static Typed.Understood understood(Entry entry, String text) {
        return assertInstanceOf(Typed.Understood.class, entry.read(text), text);
    }
}
