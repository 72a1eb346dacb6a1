package org.copperbook.office.registers;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;

/**
 * Until when an instrument's calibration holds, in words.
 *
 * @param text    what to say
 * @param warning whether it is overdue or soon will be
 */
record CalibrationWords(String text, boolean warning) {

    static CalibrationWords of(Instrument i, LocalDate today, Words words) {
        if (!i.inUse()) {
            return new CalibrationWords(words.text("instruments.outOfUse"), false);
        }
        if (i.calibrationDue() == null) {
            return new CalibrationWords(words.text("instruments.noDue"), false);
        }
        long days = ChronoUnit.DAYS.between(today, i.calibrationDue());
        if (days < 0) {
            return new CalibrationWords(words.text("instruments.overdue", i.calibrationDue().toString()), true);
        }
        return days <= Instruments.SOON_DAYS
                ? new CalibrationWords(words.text("instruments.soon", days, i.calibrationDue().toString()), true)
                : new CalibrationWords(words.text("instruments.holds", i.calibrationDue().toString()), false);
    }
}
