package org.copperbook.sheets.record;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.Suppressor;
import org.copperbook.sheets.plates.PlateWords;

/** The words of the rectifier's picture in the workbook. */
record RecordPlateWords(RecordContext c, Amounts amounts) implements PlateWords {

    @Override
    public String title() {
        return c.say("plates.title");
    }

    @Override
    public String plate(DiodePosition.Plate plate) {
        return c.say(plate == DiodePosition.Plate.POSITIVE ? "plates.positive" : "plates.negative");
    }

    @Override
    public String base(DiodePosition.BasePolarity base) {
        return c.words().of(base);
    }

    @Override
    public String reading(Reading reading) {
        return amounts.observed(reading.observed(), reading.quantity());
    }

    @Override
    public String asFound(String forward, String reverse) {
        return c.say("plates.found", forward, reverse);
    }

    @Override
    public String asLeft(String forward, String reverse) {
        return c.say("plates.left", forward, reverse);
    }

    @Override
    public String torque(double newtonMetres) {
        return amounts.with(newtonMetres, "N m");
    }

    @Override
    public String outcome(Outcome outcome) {
        return c.words().of(outcome);
    }

    @Override
    public String suppressor(Suppressor.Kind kind) {
        return c.words().of(kind);
    }
}
