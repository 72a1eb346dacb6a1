package org.copperbook.calc.winding.design;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Doubt of a first winding, against the law of propagation written out by hand (JCGM 100, 5.1.2, eq. 12). */
class FirstWindingDoubtTest {

    /** B = phi p/(D L): relative variances of bore and length add; 0.5/300 and 1/250. */
    @Test
    void theGapOwesBoreAndLength() {
        FirstWindingDoubt doubt = FirstWindingDoubt.of(new CoreGeometry(36, 0.30, 0.25, 0.2375, 0.013, 0.045, 160e-6));
        assertEquals(Math.sqrt(0.5 / 300 * (0.5 / 300) + 1.0 / 250 * (1.0 / 250)), doubt.gap(), 1e-12);
    }

    /** A tooth of 13 mm measured to half a millimetre is 3.8 % in doubt before anything else. */
    @Test
    void aNarrowToothDecidesItsDensity() {
        FirstWindingDoubt doubt = FirstWindingDoubt.of(new CoreGeometry(36, 0.30, 0.25, 0.2375, 0.013, 0.045, 160e-6));
        assertEquals(Math.sqrt(Math.pow(0.5 / 13, 2) + Math.pow(0.02, 2) + Math.pow(1.0 / 250, 2)), doubt.tooth(), 1e-12);
        assertEquals(Math.sqrt(Math.pow(0.5 / 45, 2) + Math.pow(0.02, 2) + Math.pow(1.0 / 250, 2)), doubt.yoke(), 1e-12);
    }
}
