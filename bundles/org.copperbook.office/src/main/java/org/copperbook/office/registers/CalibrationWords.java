package org.copperbook.office.registers;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.shop.Instrument;
import org.copperbook.jobs.shop.Instruments;

/**
 * Until when an instrument's calibration holds, in words.
 *
 * @param text    what to say
 * @param state   the same without the date, for tables that have the date beside it
 * @param warning whether it is overdue or soon will be
 */
record CalibrationWords(String text, String state, boolean warning) {

    static CalibrationWords of(Instrument i, LocalDate today, Words words) {
        if (!i.inUse()) {
            return undated("outOfUse", words);
        }
        if (i.calibrationDue() == null) {
            return undated("noDue", words);
        }
        String due = Days.ofLocale().day(i.calibrationDue());
        long days = ChronoUnit.DAYS.between(today, i.calibrationDue());
        if (days < 0) {
            return new CalibrationWords(words.text("instruments.overdue", due), words.text("instruments.isOverdue"), true);
        }
        return days <= Instruments.SOON_DAYS
                ? new CalibrationWords(words.text("instruments.soon", days, due), words.text("instruments.isSoon", days), true)
                : new CalibrationWords(words.text("instruments.holds", due), words.text("instruments.isHolding"), false);
    }

    private static CalibrationWords undated(String key, Words words) {
        String said = words.text("instruments." + key);
        return new CalibrationWords(said, said, false);
    }
}
