package org.copperbook.calc.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.copperbook.calc.quantity.Parsed.Ambiguous;
import org.copperbook.calc.quantity.Parsed.Problem;
import org.copperbook.calc.quantity.Parsed.Value;
import org.copperbook.calc.quantity.Parsed.Wrong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Text at the edge. Factors are those of NIST SP 811, appendix B. */
class QuantityTextTest {

    private static Value value(String text, Dimension d) {
        return assertInstanceOf(Value.class, QuantityText.parse(text, d), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "0,42 mohm; RESISTANCE; 0.00042; 0.42 mΩ", "0.42mΩ; RESISTANCE; 0.00042; 0.42 mΩ",
        "0.8m; RESISTANCE; 0.0008; 0.8 mΩ", "1.2k; RESISTANCE; 1200; 1.2 kΩ", "5 Mohm; RESISTANCE; 5e6; 5 MΩ",
        "5 mohm; RESISTANCE; 5e-3; 5 mΩ", "5 MOHM; RESISTANCE; 5e6; 5 MΩ", "2 megohm; RESISTANCE; 2e6; 2 MΩ",
        "300 KOHM; RESISTANCE; 3e5; 300 kΩ", "120 uohm; RESISTANCE; 1.2e-4; 120 µΩ", "4.6e-3; RESISTANCE; 0.0046; 0.0046 Ω",
        "0.8m; LENGTH; 0.8; 0.8 m", "1.6 mm; LENGTH; 0.0016; 1.6 mm", "0.5in; LENGTH; 0.0127; 0.5 in",
        "68 F; TEMPERATURE; 20; 68 °F", "88F; TEMPERATURE; 31.1111111111111; 88 °F", "31C; TEMPERATURE; 31; 31 °C",
        "-5 °C; TEMPERATURE; -5; -5 °C", "−5; TEMPERATURE; -5; -5 °C",
        "1500 rpm; ROTATIONAL_SPEED; 25; 1500 r/min", "400V; VOLTAGE; 400; 400 V", "11 kV; VOLTAGE; 11000; 11 kV",
        "30 lbf.in; TORQUE; 3.38954487; 30 lbf·in", "10 %; RATIO; 0.1; 10 %", "4 W/lb; SPECIFIC_LOSS; 8.81849049; 4 W/lb",
        "1 hp; POWER; 745.699872; 1 hp", "85 klines/in2; FLUX_DENSITY; 1.31750263500527; 85 kline/in²",
        "1 234,5; VOLTAGE; 1234.5; 1234.5 V", "1'234.5; VOLTAGE; 1234.5; 1234.5 V", "1.234,5; VOLTAGE; 1234.5; 1234.5 V",
        "1,234.5; VOLTAGE; 1234.5; 1234.5 V", "1,234,567; VOLTAGE; 1234567; 1234567 V", "0,420; VOLTAGE; 0.42; 0.420 V",
        "12,34; VOLTAGE; 12.34; 12.34 V", "1234,567; VOLTAGE; 1234.567; 1234.567 V", ".5; VOLTAGE; 0.5; 0.5 V",
        "1.234; VOLTAGE; 1.234; 1.234 V"
    })
    void readsWhatPeopleType(String text, Dimension d, double si, String echo) {
        Value v = value(text, d);
        assertEquals(si, v.quantity().si(), 1e-9 * Math.max(1e-6, Math.abs(si)));
        assertEquals(echo, v.normalised());
        assertEquals(d, v.quantity().dimension());
    }

    @Test
    void milliohmIsTheNearestDouble() {
        assertEquals(0.00042, value("0,42 mohm", Dimension.RESISTANCE).quantity().si());
    }

    @Test
    void groupOrDecimalMarkIsAskedNotGuessed() {
        Ambiguous a = assertInstanceOf(Ambiguous.class, QuantityText.parse("1,234 ohm", Dimension.RESISTANCE));
        assertEquals("1.234 Ω", a.readings().get(0).normalised());
        assertEquals("1234 Ω", a.readings().get(1).normalised());
        assertInstanceOf(Ambiguous.class, QuantityText.parse("1.234", Dimension.VOLTAGE, "V", DecimalMark.COMMA));
        Value settled = assertInstanceOf(Value.class,
                QuantityText.parse("1,234", Dimension.VOLTAGE, "V", DecimalMark.COMMA));
        assertEquals(1.234, settled.quantity().si());
        assertEquals("1,234 V", settled.normalised());
    }

    @ParameterizedTest
    @CsvSource({
        "'', EMPTY", "abc, NO_NUMBER", "5 volts, OTHER_QUANTITY", "5 furlong, UNKNOWN_UNIT", "'1,23,4', BAD_GROUPING",
        "1.2.3, BAD_GROUPING", "12 34, BAD_GROUPING", "18SWG, UNKNOWN_UNIT"
    })
    void saysWhatIsWrong(String text, Problem problem) {
        Wrong w = assertInstanceOf(Wrong.class, QuantityText.parse(text, Dimension.RESISTANCE));
        assertEquals(problem, w.problem());
        assertTrue(!w.explanation().isBlank());
    }

    @Test
    void impliedUnitIsTheOneAsked() {
        Value v = assertInstanceOf(Value.class, QuantityText.parse("1.6", Dimension.LENGTH, "mm", DecimalMark.DOT));
        assertEquals(0.0016, v.quantity().si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "RESISTANCE; 0.00042; 0.42 mΩ", "RESISTANCE; 0.42; 0.42 Ω", "RESISTANCE; 0.042; 42 mΩ", "RESISTANCE; 1200; 1.2 kΩ",
        "RESISTANCE; 5e6; 5 MΩ", "RESISTANCE; 999.96; 1 kΩ", "RESISTANCE; 4.2e-5; 42 µΩ", "RESISTANCE; 0; 0 Ω",
        "VOLTAGE; 400; 400 V", "LENGTH; 0.0016; 1.6 mm", "LENGTH; 1200; 1200 m", "TEMPERATURE; 31.25; 31.25 °C",
        "MASS; 0.05; 0.05 kg", "VOLTAGE; -1500; -1.5 kV"
    })
    void showsWithTheUsualPrefix(Dimension d, double si, String shown) {
        assertEquals(shown, QuantityText.format(Quantity.of(d, si)));
    }

    @Test
    void showsInTheUnitAndMarkAsked() {
        assertEquals("0,42 mΩ", QuantityText.format(new Resistance(0.00042), 4, DecimalMark.COMMA));
        assertEquals("1500 r/min", QuantityText.formatIn(new RotationalSpeed(25), "r/min", 4, DecimalMark.DOT));
        assertEquals("68 °F", QuantityText.formatIn(new Temperature(20), "°F", 4, DecimalMark.DOT));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void whatIsShownIsReadBack(Dimension d) {
        Random random = new Random(101);
        for (int i = 0; i < 200; i++) {
            double si = Math.pow(10, 12 * random.nextDouble() - 6) * (random.nextBoolean() ? 1 : -1);
            String shown = QuantityText.format(Quantity.of(d, si), 12, DecimalMark.DOT);
            Value back = value(shown, d);
            assertEquals(si, back.quantity().si(), 1e-11 * Math.abs(si), shown);
        }
    }

    @Test
    void everyUnitReadsUnderItsOwnSymbol() {
        for (Dimension d : Dimension.values()) {
            for (String name : UnitTable.names(d)) {
                assertEquals(name, UnitTable.unit(d, name).symbol());
            }
        }
    }
}
