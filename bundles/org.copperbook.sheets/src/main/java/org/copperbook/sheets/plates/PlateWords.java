package org.copperbook.sheets.plates;

import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.reading.Reading;
import org.copperbook.jobs.rectifier.DiodePosition;
import org.copperbook.jobs.rectifier.Suppressor;

/** The words of the picture, which the page and the workbook take from their own texts. */
public interface PlateWords {

    /** Heading. */
    String title();

    /** Name of a plate. */
    String plate(DiodePosition.Plate plate);

    /** What the base of a stud is. */
    String base(DiodePosition.BasePolarity base);

    /** A reading as it is shown; "-" for none. */
    String reading(Reading reading);

    /** Both directions of a diode as found. */
    String asFound(String forward, String reverse);

    /** Both directions of a diode as left. */
    String asLeft(String forward, String reverse);

    /** A torque in N m. */
    String torque(double newtonMetres);

    /** The word of a verdict. */
    String outcome(Outcome outcome);

    /** What the suppressor is. */
    String suppressor(Suppressor.Kind kind);
}
